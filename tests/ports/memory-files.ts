import type { Files, FolderEntry } from '../../src/ports/files.ts'

/** One operation that changes the disk, as it was asked for. */
export type Operation =
  | { readonly kind: 'open'; readonly path: string; readonly inode: number }
  | { readonly kind: 'write'; readonly inode: number; readonly bytes: Uint8Array }
  | { readonly kind: 'flush'; readonly inode: number }
  | { readonly kind: 'close'; readonly inode: number }
  | { readonly kind: 'rename'; readonly from: string; readonly to: string }
  | { readonly kind: 'remove'; readonly path: string }
  | { readonly kind: 'flush-folder'; readonly folder: string }
  | { readonly kind: 'make-folder'; readonly folder: string }

export interface Disk {
  /** Full paths of folders. */
  readonly folders: ReadonlySet<string>
  /** Full path of each file, and its bytes. */
  readonly files: ReadonlyMap<string, Uint8Array>
}

export const EMPTY_DISK: Disk = { folders: new Set(['/data']), files: new Map() }

export interface MemoryFiles extends Files {
  readonly operations: Operation[]
  /** What a program without a crash would see now. */
  readonly disk: () => Disk
}

export const systemError = (code: string): Error => Object.assign(new Error(code), { code })

/**
 * A disk in memory that records each operation. `refuse` is asked before each one; an error it gives back is what the
 * operation fails with, and nothing of it happens (a refused write leaves half of its bytes).
 */
export function memoryFiles(
  start: Disk = EMPTY_DISK,
  refuse: (operation: Operation, index: number) => Error | undefined = () => undefined,
): MemoryFiles {
  const operations: Operation[] = []
  const folders = new Set(start.folders)
  const names = new Map<string, number>()
  const inodes = new Map<number, Uint8Array>()
  for (const [path, bytes] of start.files) put(path, bytes)
  let asked = 0

  function put(path: string, bytes: Uint8Array): number {
    const inode = inodes.size
    inodes.set(inode, bytes)
    names.set(path, inode)
    return inode
  }
  function perform(operation: Operation, happens: () => void): void {
    const error = refuse(operation, asked++)
    if (error !== undefined) throw error
    happens()
    operations.push(operation)
  }
  const bytesAt = (path: string): Uint8Array => {
    const inode = names.get(path)
    if (inode === undefined) throw systemError(folders.has(path) ? 'EISDIR' : 'ENOENT')
    return inodes.get(inode) ?? new Uint8Array()
  }

  return {
    operations,
    disk: () => ({
      folders,
      files: new Map([...names].map(([path, inode]) => [path, inodes.get(inode) ?? new Uint8Array()])),
    }),
    openNew: async (path) => {
      if (names.has(path)) throw systemError('EEXIST')
      if (!folders.has(parentOf(path))) throw systemError('ENOENT')
      const inode = inodes.size
      perform({ kind: 'open', path, inode }, () => put(path, new Uint8Array()))
      return {
        writeAll: async (bytes) => {
          try {
            perform({ kind: 'write', inode, bytes }, () => inodes.set(inode, bytes))
          } catch (error) {
            inodes.set(inode, bytes.slice(0, bytes.length / 2))
            throw error
          }
        },
        flush: async () => perform({ kind: 'flush', inode }, () => undefined),
        close: async () => perform({ kind: 'close', inode }, () => undefined),
      }
    },
    rename: async (from, to) => {
      const inode = names.get(from)
      if (inode === undefined && !folders.has(from)) throw systemError('ENOENT')
      perform({ kind: 'rename', from, to }, () => {
        if (inode === undefined) {
          folders.delete(from)
          folders.add(to)
        } else {
          names.delete(from)
          names.set(to, inode)
        }
      })
    },
    remove: async (path) => {
      bytesAt(path)
      perform({ kind: 'remove', path }, () => names.delete(path))
    },
    flushFolder: async (folder) => {
      if (!folders.has(folder)) throw systemError('ENOENT')
      perform({ kind: 'flush-folder', folder }, () => undefined)
    },
    makeFolder: async (folder) => {
      for (const each of withParents(folder)) {
        if (!folders.has(each)) perform({ kind: 'make-folder', folder: each }, () => folders.add(each))
      }
    },
    read: async (path, atMost) => {
      const bytes = bytesAt(path)
      if (bytes.length > atMost) throw systemError('EFBIG')
      return bytes
    },
    sizeOf: async (path) => bytesAt(path).length,
    list: async (folder) => entriesOf(folder, folders, names.keys()),
  }
}

function entriesOf(folder: string, folders: Iterable<string>, files: Iterable<string>): readonly FolderEntry[] {
  const inside = (paths: Iterable<string>, kind: FolderEntry['kind']) =>
    [...paths]
      .filter((path) => parentOf(path) === folder)
      .map((path) => ({ name: path.slice(folder.length + 1), kind }))
  return [...inside(folders, 'folder'), ...inside(files, 'file')].sort((a, b) => (a.name < b.name ? -1 : 1))
}

export const parentOf = (path: string): string => path.slice(0, path.lastIndexOf('/'))

function withParents(folder: string): readonly string[] {
  const steps = folder.split('/').slice(1)
  return steps.map((_, index) => `/${steps.slice(0, index + 1).join('/')}`)
}
