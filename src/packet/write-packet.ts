import { posix, win32 } from 'node:path'
import type { PacketFile } from '../documents/document.ts'
import type { Files } from '../ports/files.ts'
import type { RandomId } from '../ports/random-id.ts'
import { writeNew } from '../ports/write-new.ts'
import type { Day } from '../units/day.ts'
import { PACKET_MOST_BYTES, readZip } from './read-zip.ts'
import { sha256 } from './sha256.ts'
import { zipOf } from './zip.ts'

export interface PacketTarget {
  readonly files: Files
  readonly randomId: RandomId
  /** Full path of the zip. */
  readonly path: string
  readonly date: Day
}

const ID_LETTERS = 8

/** Writes a packet whole or not at all: built beside its target, read back and compared file by file, then renamed. Throws DiskProblem. */
export async function writePacket(contents: readonly PacketFile[], target: PacketTarget): Promise<void> {
  const { files, path } = target
  const { dirname } = path.includes('\\') ? win32 : posix
  await writeNew({
    files,
    folder: dirname(path),
    temporary: `.nichework-${target.randomId(ID_LETTERS)}.part`,
    target: path,
    bytes: await zipOf(contents, target.date),
    check: async (written) => checkWritten(contents, await files.read(written, PACKET_MOST_BYTES)),
  })
}

async function checkWritten(contents: readonly PacketFile[], bytes: Uint8Array): Promise<void> {
  const sizes = new Map(contents.map((file) => [file.path, file.bytes.length]))
  const entries = await readZip(bytes, 'the new packet', { entries: contents.length, bytes: (name) => sizes.get(name) })
  for (const { path, bytes: meant } of contents) {
    const found = entries.get(path)
    if (found === undefined || sha256(found) !== sha256(meant))
      throw new Error(`${path} did not arrive whole in the packet`)
  }
}
