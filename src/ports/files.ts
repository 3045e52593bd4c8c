/** A new file being written. Every call resolves only when the system says it is done. */
export interface NewFile {
  /** Writes all the bytes, however many pieces the system takes them in. */
  readonly writeAll: (bytes: Uint8Array) => Promise<void>
  /** Resolves when the bytes are on the disk itself. */
  readonly flush: () => Promise<void>
  readonly close: () => Promise<void>
}

export interface FolderEntry {
  readonly name: string
  /** Links are `other`: they are never followed. */
  readonly kind: 'file' | 'folder' | 'other'
}

/**
 * All that is asked of a disk: seven operations that change it, and reading. Everything that must survive a crash goes
 * through here, so that a test can cut or fail at any one operation.
 */
export interface Files {
  /** Makes a new file only its owner can read; an error when the name is taken. */
  readonly openNew: (path: string) => Promise<NewFile>
  /** Gives a file another name, over a file that had it. */
  readonly rename: (from: string, to: string) => Promise<void>
  readonly remove: (path: string) => Promise<void>
  /** Resolves when the names in the folder are on the disk itself. */
  readonly flushFolder: (folder: string) => Promise<void>
  /** Makes a folder and those above it, only for its owner; nothing when it is there. */
  readonly makeFolder: (folder: string) => Promise<void>
  /** The bytes of a file, at most so many. Throws when it is larger. */
  readonly read: (path: string, atMost: number) => Promise<Uint8Array>
  /** Size in bytes. */
  readonly sizeOf: (path: string) => Promise<number>
  /** What stands in a folder, by code unit of the name; nothing when the folder is not there. */
  readonly list: (folder: string) => Promise<readonly FolderEntry[]>
}

/** The code of a system error (`ENOSPC`), or undefined. */
export function errorCode(error: unknown): string | undefined {
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  return typeof code === 'string' ? code : undefined
}
