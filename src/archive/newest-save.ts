import type { Files } from '../ports/files.ts'
import { type NamedSave, readSaveAt, savesIn, setAside } from './job-folder.ts'
import type { Save } from './save-file.ts'

/** What looking for the newest good save found. */
export interface FoundSave {
  readonly save: Save | undefined
  readonly damaged: readonly NamedSave[]
  /** Written by a newer nichework, in a form this one cannot read. */
  readonly newer: readonly NamedSave[]
  /** Could not be read just now; left as they are. */
  readonly unreadable: readonly NamedSave[]
}

/** The newest save that verifies, and those above it that did not. Changes nothing. */
export async function newestSave(files: Files, folder: string): Promise<FoundSave> {
  const bad: Record<'damaged' | 'newer' | 'unreadable', NamedSave[]> = { damaged: [], newer: [], unreadable: [] }
  for (const named of await savesIn(files, folder)) {
    const save = await readSaveAt(files, folder, named)
    if (typeof save !== 'string') return { save, ...bad }
    bad[save].push(named)
  }
  return { save: undefined, ...bad }
}

/** Sets the damaged ones aside, and says in words what was found. */
export async function notesOn(files: Files, folder: string, found: FoundSave): Promise<readonly string[]> {
  const notes: string[] = []
  const back = found.save === undefined ? '' : ` The answers as saved at ${timeWords(found.save)} are back.`
  for (const { name } of found.damaged) {
    const aside = await setAside(files, folder, name, 'damaged')
    const kept = aside === undefined ? `It is still at ${folder}/${name}.` : `It is kept as ${folder}/${aside}.`
    notes.push(`The save ${name} was damaged. ${kept}${back}`)
  }
  for (const { name } of found.unreadable) {
    notes.push(`The save ${folder}/${name} could not be read just now and is left as it is.${back}`)
  }
  return notes
}

const timeWords = (save: Save): string => save.header.savedAt.replace('T', ' ').replace('Z', ' UTC')

/** Sets aside other saves made from the same one as this save was, which are another window's work; in words. */
export async function otherWindowNotes(files: Files, folder: string, save: Save): Promise<readonly string[]> {
  const notes: string[] = []
  for (const named of (await savesIn(files, folder)).slice(0, LOOKED_AT)) {
    const other = await readSaveAt(files, folder, named)
    if (typeof other === 'string' || other.header.id === save.header.id || other.header.parent !== save.header.parent) {
      continue
    }
    const name = (await setAside(files, folder, named.name, 'other-window')) ?? named.name
    notes.push(
      `This job was also saved in another window. That save is kept as ${folder}/${name}; the answers shown are those saved last.`,
    )
  }
  return notes
}

/** Rivals stand among the latest saves; older ones were set aside when they were found. */
const LOOKED_AT = 5
