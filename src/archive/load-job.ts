import { InputUnreadable, JobTooNew } from '../things/failure.ts'
import { takeLock } from './job-lock.ts'
import type { KeptJob } from './job-store.ts'
import { readKeptJob } from './kept-job.ts'
import { type FoundSave, newestSave, notesOn, otherWindowNotes } from './newest-save.ts'
import { SAVE_FORMAT_VERSION, SAVING, type SaveHeader } from './save-file.ts'
import type { StorePorts } from './store-ports.ts'

export interface LoadedJob {
  readonly kept: KeptJob
  readonly header: SaveHeader
  readonly notes: readonly string[]
}

/** Opens a job: the newest save that verifies, with what was set aside or found beside it in words. */
export async function loadJob(ports: StorePorts, folder: string): Promise<LoadedJob> {
  const { files } = ports
  const found = await newestSave(files, folder)
  const newer = found.newer[0]
  if (newer !== undefined) throw new JobTooNew(`${folder}/${newer.name}`, 'of saves', SAVE_FORMAT_VERSION)
  const holder = await takeLock(ports, folder)
  if (holder === undefined) await removeLeftovers(ports, folder)
  const notes = await notesOn(files, folder, found)
  if (found.save === undefined) throw nothingLeft(folder, found, notes)
  const { save } = found
  const busy =
    holder === undefined
      ? []
      : [
          `This job is open in another window since ${holder.since.replace('T', ' ').replace('Z', ' UTC')} (process ${holder.pid} on ${holder.host}). Close one of the two: what both save is kept, but not joined.`,
        ]
  return {
    kept: readKeptJob(save.body, folder),
    header: save.header,
    notes: [...busy, ...notes, ...(await otherWindowNotes(files, folder, save))],
  }
}

/** Saves that were cut off while they were written; with the lock ours, nobody is writing them now. */
async function removeLeftovers({ files }: StorePorts, folder: string): Promise<void> {
  const left = (await files.list(folder)).filter(({ name }) => name.startsWith(SAVING))
  // A disk that can only be read keeps them; they are never taken for a save.
  for (const { name } of left) await files.remove(`${folder}/${name}`).catch(() => undefined)
}

function nothingLeft(folder: string, found: FoundSave, notes: readonly string[]): InputUnreadable {
  const empty = found.damaged.length + found.unreadable.length === 0
  return new InputUnreadable(
    folder,
    empty
      ? ['there is no saved job in this folder.']
      : [...notes, 'no save of this job can be read. A packet made from it opens in its place.'],
  )
}
