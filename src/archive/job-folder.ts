import type { Files } from '../ports/files.ts'
import { errorCode } from '../ports/files.ts'
import { readSave, readSaveName, type Save } from './save-file.ts'

/** Largest save read, in bytes: a job of 8 MiB and its undo steps. */
const SAVE_MOST_BYTES = 64 * 1024 * 1024

/** A save by its file name, before it is read. */
export interface NamedSave {
  readonly name: string
  readonly number: number
  readonly id: string
}

/** Every file with a save's name, newest first; equal numbers by id, so that the order is always the same. */
export async function savesIn(files: Files, folder: string): Promise<readonly NamedSave[]> {
  const entries = await files.list(folder)
  const saves = entries.flatMap(({ name }) => {
    const read = readSaveName(name)
    return read === undefined ? [] : [{ name, ...read }]
  })
  return saves.sort((a, b) => b.number - a.number || (a.id < b.id ? 1 : -1))
}

/** Highest number any file of the folder carries, set-aside ones included, so that no number is given twice. */
export async function highestNumber(files: Files, folder: string): Promise<number> {
  const entries = await files.list(folder)
  return Math.max(0, ...entries.map(({ name }) => Number(/^(\d{6,})-/.exec(name)?.[1] ?? 0)))
}

/** What reading one save came to. */
export type ReadSave = Save | 'damaged' | 'newer' | 'unreadable'

/** Reads one save and checks it, its own name included. */
export async function readSaveAt(files: Files, folder: string, named: NamedSave): Promise<ReadSave> {
  try {
    const save = readSave(await files.read(`${folder}/${named.name}`, SAVE_MOST_BYTES))
    if (typeof save === 'string') return save
    return save.header.number === named.number && save.header.id === named.id ? save : 'damaged'
  } catch (error) {
    // A folder in place of the file is damage; a disk that does not answer is not.
    return errorCode(error) === 'EISDIR' ? 'damaged' : 'unreadable'
  }
}

/** Gives a save another name that says why, so that it is kept and never read again. Says the new name, or undefined. */
export async function setAside(
  files: Files,
  folder: string,
  name: string,
  why: 'damaged' | 'other-window',
): Promise<string | undefined> {
  const taken = new Set((await files.list(folder)).map((entry) => entry.name))
  let aside = `${name}.${why}`
  for (let copy = 2; taken.has(aside); copy++) aside = `${name}.${why}-${copy}`
  try {
    await files.rename(`${folder}/${name}`, `${folder}/${aside}`)
    await files.flushFolder(folder)
    return aside
  } catch {
    // A disk that refuses the rename keeps the file under its own name; the save before it is read all the same.
    return undefined
  }
}
