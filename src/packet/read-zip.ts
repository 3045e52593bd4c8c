import { crc32 } from 'node:zlib'
import type { Entry, ZipFile } from 'yauzl'
import { InputUnreadable } from '../things/failure.ts'
import { outlineFault } from './zip-outline.ts'

/** What may come out of a zip, counted on the bytes that come out and not on what its headers claim. */
export interface ZipLimits {
  readonly entries: number
  /** Bytes of an entry by its name; entries not named are not read. */
  readonly bytes: (name: string) => number | undefined
}

export const PACKET_MOST_BYTES = 64 * 1024 * 1024

/**
 * The wanted entries of a zip, read into memory; nothing is written and nothing else is looked into. Throws
 * InputUnreadable for anything but the plain kind of zip this program writes itself: stored or deflated, each name once,
 * no links, no passwords, nothing before, between or after.
 */
export async function readZip(
  bytes: Uint8Array,
  file: string,
  limits: ZipLimits,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const refuse = (fault: string): never => {
    throw new InputUnreadable(file, [`${fault} Ask for the packet again, or open the job file instead.`])
  }
  if (bytes.length > PACKET_MOST_BYTES)
    refuse(`this packet has ${bytes.length} bytes; at most ${PACKET_MOST_BYTES} are read.`)
  // Loaded only when a packet is read or checked.
  const { default: yauzl } = await import('yauzl')
  try {
    const zip = await yauzl.fromBufferPromise(Buffer.from(bytes), {
      lazyEntries: true,
      strictFileNames: true,
      validateEntrySizes: true,
    })
    const entries = await entriesOf(zip, limits.entries, refuse)
    const fault = await outlineFault(bytes, zip, entries)
    if (fault !== undefined) refuse(fault)
    return await contentsOf(zip, entries, limits, refuse)
  } catch (cause) {
    if (cause instanceof InputUnreadable) throw cause
    const reason = cause instanceof Error ? cause.message : String(cause)
    throw new InputUnreadable(file, [`this zip cannot be read (${reason}). It may be cut short: fetch it again.`], {
      cause,
    })
  }
}

type Refuse = (fault: string) => never

async function entriesOf(zip: ZipFile, most: number, refuse: Refuse): Promise<readonly Entry[]> {
  if (zip.entryCount > most) refuse(`this zip holds ${zip.entryCount} files; a packet has at most ${most}.`)
  const entries: Entry[] = []
  const names = new Set<string>()
  for await (const entry of zip.eachEntry()) {
    const name = entry.fileName.toLowerCase()
    if (names.has(name)) refuse(`${shownName(entry)} is in it twice.`)
    names.add(name)
    checkEntry(entry, refuse)
    entries.push(entry)
    if (entries.length > most) refuse(`this zip holds more than ${most} files.`)
  }
  return entries
}

const STORED = 0
const DEFLATED = 8
const ENCRYPTED = 1
const NAME_MOST = 255
const ZIP64_FIELD = 1
/** Unix file type in the upper half of the attributes: nothing said, or a plain file or folder. */
const FILE_TYPES: ReadonlySet<number> = new Set([0, 0x8000, 0x4000])

function checkEntry(entry: Entry, refuse: Refuse): void {
  const name = shownName(entry)
  if (!/^[\x20-\x7e]+$/.test(entry.fileName) || entry.fileName.length > NAME_MOST)
    refuse(`the file name ${name} is not plain.`)
  if ((entry.generalPurposeBitFlag & ENCRYPTED) !== 0) refuse(`${name} is locked with a password.`)
  if (entry.compressionMethod !== STORED && entry.compressionMethod !== DEFLATED)
    refuse(`${name} is packed in a way that is not read.`)
  if (!FILE_TYPES.has((entry.externalFileAttributes >>> 16) & 0xf000)) refuse(`${name} is a link or a device.`)
  if (entry.fileName.endsWith('/') && entry.uncompressedSize > 0) refuse(`the folder ${name} holds data of its own.`)
  if (entry.extraFields.some((field) => field.id === ZIP64_FIELD)) refuse(`${name} is packed for very large zips.`)
}

const shownName = (entry: Entry): string => JSON.stringify(entry.fileName.slice(0, 80))

async function contentsOf(
  zip: ZipFile,
  entries: readonly Entry[],
  limits: ZipLimits,
  refuse: Refuse,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const contents = new Map<string, Uint8Array>()
  for (const entry of entries) {
    const most = limits.bytes(entry.fileName)
    if (most !== undefined) contents.set(entry.fileName, await contentOf(zip, entry, most, refuse))
  }
  return contents
}

async function contentOf(zip: ZipFile, entry: Entry, most: number, refuse: Refuse): Promise<Uint8Array> {
  const pieces: Buffer[] = []
  let length = 0
  for await (const piece of await zip.openReadStreamPromise(entry)) {
    pieces.push(piece)
    length += piece.length
    if (length > most) refuse(`${shownName(entry)} unpacks to more than ${most} bytes.`)
  }
  const bytes = Buffer.concat(pieces)
  if (crc32(bytes) !== entry.crc32) refuse(`${shownName(entry)} is damaged.`)
  return bytes
}
