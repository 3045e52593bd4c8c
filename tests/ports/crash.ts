import { type Disk, type Operation, parentOf } from './memory-files.ts'

/** What a power cut makes of bytes that were not flushed. */
export const LOSSES = ['kept', 'absent', 'half', 'zeros', 'garbage'] as const
export type Loss = (typeof LOSSES)[number]

type NameChange = Extract<Operation, { kind: 'open' | 'rename' | 'remove' | 'make-folder' }>

/**
 * Every disk a power cut right after the first `count` operations may leave: bytes that were not flushed are lost in one
 * of five ways, and of the names not yet flushed with their folder any may be there or not, in the order they were made
 * or out of it. This is how a file system with delayed data and reordered names may behave.
 */
export function* disksAfterCrash(start: Disk, operations: readonly Operation[], count: number): Generator<Disk> {
  const done = operations.slice(0, count)
  const { sure, open } = splitNames(done)
  for (const loss of LOSSES) {
    for (const seen of subsets(open.length)) {
      const names = [...sure, ...open.filter((_, index) => seen[index])]
      yield diskWith(start, done, names, loss)
    }
  }
}

/** Name changes made sure by a flush of their folder, and those still open, each in order. */
function splitNames(done: readonly Operation[]): {
  readonly sure: readonly NameChange[]
  readonly open: readonly NameChange[]
} {
  const changes = done.flatMap((operation, index) => {
    if (!('path' in operation) && operation.kind !== 'rename' && operation.kind !== 'make-folder') return []
    const folder = folderOf(operation)
    const flushed = done.slice(index).some((later) => later.kind === 'flush-folder' && later.folder === folder)
    return [{ operation, flushed }]
  })
  return {
    sure: changes.filter((change) => change.flushed).map((change) => change.operation),
    open: changes.filter((change) => !change.flushed).map((change) => change.operation),
  }
}

function folderOf(change: NameChange): string {
  if (change.kind === 'rename') return parentOf(change.to)
  return parentOf(change.kind === 'make-folder' ? change.folder : change.path)
}

const MOST_OPEN = 6
/** Each way to choose among the open name changes; with many open, only the ways that keep a beginning. */
function* subsets(count: number): Generator<readonly boolean[]> {
  if (count > MOST_OPEN) {
    for (let kept = 0; kept <= count; kept++) yield Array.from({ length: count }, (_, index) => index < kept)
    return
  }
  for (let bits = 0; bits < 2 ** count; bits++)
    yield Array.from({ length: count }, (_, index) => (bits & (1 << index)) !== 0)
}

function diskWith(start: Disk, done: readonly Operation[], changes: readonly NameChange[], loss: Loss): Disk {
  const folders = new Set(start.folders)
  const files = new Map(start.files)
  const inodeAt = new Map<string, number>()
  for (const change of changes) {
    if (change.kind === 'make-folder') folders.add(change.folder)
    else if (change.kind === 'open') {
      inodeAt.set(change.path, change.inode)
      files.set(change.path, contentOf(done, change.inode, loss))
    } else if (change.kind === 'remove') files.delete(change.path)
    else moveName(change, files, done, loss)
  }
  return { folders, files: new Map([...files].filter(([path]) => folders.has(parentOf(path)))) }
}

/** A rename seen without the file's first name: the file is there under the new one. */
function moveName(
  { from, to }: { readonly from: string; readonly to: string },
  files: Map<string, Uint8Array>,
  done: readonly Operation[],
  loss: Loss,
): void {
  const opened = done.find((operation) => operation.kind === 'open' && operation.path === from)
  const bytes = files.get(from) ?? (opened?.kind === 'open' ? contentOf(done, opened.inode, loss) : undefined)
  files.delete(from)
  if (bytes !== undefined) files.set(to, bytes)
}

function contentOf(done: readonly Operation[], inode: number, loss: Loss): Uint8Array {
  const written = done.findLastIndex((operation) => operation.kind === 'write' && operation.inode === inode)
  const write = done[written]
  if (write?.kind !== 'write') return new Uint8Array()
  const flushed = done.slice(written).some((operation) => operation.kind === 'flush' && operation.inode === inode)
  return flushed ? write.bytes : lost(write.bytes, loss)
}

function lost(bytes: Uint8Array, loss: Loss): Uint8Array {
  switch (loss) {
    case 'kept':
      return bytes
    case 'absent':
      return new Uint8Array()
    case 'half':
      return bytes.slice(0, bytes.length / 2)
    case 'zeros':
      return new Uint8Array(bytes.length)
    case 'garbage':
      return bytes.map((byte, index) => (byte + 7 * index + 1) & 0xff)
  }
}
