import type { PacketFile } from '../documents/document.ts'
import type { Day } from '../units/day.ts'

const MODE = 0o644

/** The zip of some files: sorted names, one date for all, no trace of machine or moment. Same input, same bytes. */
export async function zipOf(files: readonly PacketFile[], date: Day): Promise<Uint8Array> {
  // Loaded only when a packet is written: the library costs more to load than all the rest of a command.
  const { ZipArchive } = await import('archiver')
  const zip = new ZipArchive({ zlib: { level: 9 } })
  const collected = collect(zip)
  for (const { path, bytes } of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) {
    // One at a time: the archive keeps the order in which entries are finished.
    const entered = new Promise((resolve) => zip.once('entry', resolve))
    zip.append(Buffer.from(bytes), { name: path, date: new Date(`${date}T12:00:00Z`), mode: MODE })
    await Promise.race([entered, collected])
  }
  await zip.finalize()
  return collected
}

function collect(zip: NodeJS.ReadableStream): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const pieces: Buffer[] = []
    zip.on('data', (piece: Buffer) => pieces.push(piece))
    zip.on('end', () => resolve(Buffer.concat(pieces)))
    zip.on('warning', reject)
    zip.on('error', reject)
  })
}
