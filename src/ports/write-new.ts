import { DiskProblem } from '../things/failure.ts'
import { errorCode, type Files } from './files.ts'

export interface NewContent {
  readonly files: Files
  readonly folder: string
  /** Name while it is being written; unlike any finished name. */
  readonly temporary: string
  /** Full path it gets once it is whole. */
  readonly target: string
  readonly bytes: Uint8Array
  /** Looks at the closed temporary file before it gets its name; throws to refuse it. */
  readonly check?: (temporaryPath: string) => Promise<void>
}

/**
 * Writes a file so that it is whole or absent whatever happens: temporary file, all bytes, flush, close, size check,
 * rename, flush of the folder. Throws DiskProblem; a flush that failed is never tried again on the same file, because a
 * second one can report success with the data gone.
 */
export async function writeNew(content: NewContent): Promise<void> {
  const { files, folder, target } = content
  const path = `${folder}/${content.temporary}`
  try {
    await writeTemporary(content, path)
    await content.check?.(path)
    await files.rename(path, target)
  } catch (error) {
    await files.remove(path).catch(() => undefined)
    throw diskProblem(target, error)
  }
  await files.flushFolder(folder).catch((error: unknown) => {
    throw diskProblem(target, error)
  })
}

async function writeTemporary({ files, bytes }: NewContent, path: string): Promise<void> {
  const file = await files.openNew(path)
  try {
    await file.writeAll(bytes)
    await file.flush()
  } finally {
    await file.close()
  }
  const size = await files.sizeOf(path)
  if (size !== bytes.length) throw new Error(`only ${size} of ${bytes.length} bytes arrived`)
}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  EROFS: 'the disk can only be read',
  EACCES: 'this account may not write there',
  EPERM: 'this account may not write there',
  EIO: 'the disk reports a fault',
  EMFILE: 'too many files are open',
  ENOENT: 'the folder is not there',
  ENOTDIR: 'a file stands where the folder should be',
  EISDIR: 'a folder has that name',
  EXDEV: 'the folder lies on two disks',
  ENAMETOOLONG: 'the name is too long',
}

/** The planned failure for an error of the disk, with its reason in words. */
export function diskProblem(path: string, error: unknown): DiskProblem {
  if (error instanceof DiskProblem) return error
  const reason = REASONS[errorCode(error) ?? ''] ?? (error instanceof Error ? error.message : 'the reason is not known')
  return new DiskProblem(path, 'write', { cause: new Error(reason, { cause: error }) })
}
