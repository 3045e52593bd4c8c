import { lstat, mkdir, open, readdir, rename, rm } from 'node:fs/promises'
import type { Files, FolderEntry, NewFile } from '../files.ts'

const OWNER_ONLY = 0o600
const OWNER_FOLDER = 0o700

/** The real disk. */
export const nodeFiles: Files = {
  openNew: async (path) => newFile(await open(path, 'wx', OWNER_ONLY)),
  rename,
  remove: (path) => rm(path),
  flushFolder,
  makeFolder: async (folder) => {
    await mkdir(folder, { recursive: true, mode: OWNER_FOLDER })
  },
  read: readAtMost,
  sizeOf: async (path) => (await lstat(path)).size,
  list,
}

type Handle = Awaited<ReturnType<typeof open>>

const newFile = (handle: Handle): NewFile => ({
  // `writeFile` loops: a single `write` on a nearly full disk may take part of the bytes without an error.
  writeAll: (bytes) => handle.writeFile(bytes),
  flush: () => handle.sync(),
  close: () => handle.close(),
})

async function flushFolder(folder: string): Promise<void> {
  // Windows has no flush of a folder.
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

async function readAtMost(path: string, atMost: number): Promise<Uint8Array> {
  const handle = await open(path, 'r')
  try {
    const { size } = await handle.stat()
    if (size > atMost) throw Object.assign(new Error(`${path} is larger than ${atMost} bytes.`), { code: 'EFBIG' })
    return await handle.readFile()
  } finally {
    await handle.close()
  }
}

async function list(folder: string): Promise<readonly FolderEntry[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return []
    throw error
  })
  return entries
    .map((e) => ({ name: e.name, kind: e.isFile() ? 'file' : e.isDirectory() ? 'folder' : 'other' }) as const)
    .sort((a, b) => (a.name < b.name ? -1 : 1))
}
