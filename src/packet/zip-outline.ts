import type { Entry, ZipFile } from 'yauzl'

const END_BYTES = 22
const END_MARK = 0x06054b50
const SIZE_AT = 12
const OFFSET_AT = 16
/** A packed file may be followed by its sizes and check sum. */
const DESCRIPTOR_BYTES = 24

/**
 * What is wrong with the outline of a zip, in words, or undefined. Two readers can see different files in a zip whose
 * entries overlap, whose two headers of a file differ, or that has something before, between or after its files.
 */
export async function outlineFault(
  bytes: Uint8Array,
  zip: ZipFile,
  entries: readonly Entry[],
): Promise<string | undefined> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const end = bytes.length - END_BYTES
  if (end < 0 || view.getUint32(end, true) !== END_MARK) return 'this zip has something after its end.'
  const list = view.getUint32(end + OFFSET_AT, true)
  if (list + view.getUint32(end + SIZE_AT, true) !== end)
    return 'this zip has something before its beginning or its end.'
  let from = 0
  for (const entry of [...entries].sort((a, b) => a.relativeOffsetOfLocalHeader - b.relativeOffsetOfLocalHeader)) {
    const name = JSON.stringify(entry.fileName)
    const local = await zip.readLocalFileHeaderPromise(entry)
    if (!local.fileName.equals(entry.fileNameRaw) || local.compressionMethod !== entry.compressionMethod) {
      return `the two headers of ${name} differ.`
    }
    if (!follows(entry.relativeOffsetOfLocalHeader, from)) return `something overlaps ${name} or stands before it.`
    from = local.fileDataStart + entry.compressedSize
  }
  return follows(list, from) ? undefined : 'something stands between its files and its list.'
}

const follows = (start: number, end: number): boolean =>
  start >= end && start - end <= (end === 0 ? 0 : DESCRIPTOR_BYTES)
