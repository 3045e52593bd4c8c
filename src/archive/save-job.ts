import { diskProblem, writeNew } from '../ports/write-new.ts'
import { highestNumber } from './job-folder.ts'
import { takeLock } from './job-lock.ts'
import type { KeptJob } from './job-store.ts'
import { prune } from './prune.ts'
import { SAVING, type SaveHeader, saveName, writeSave } from './save-file.ts'
import type { StorePorts } from './store-ports.ts'

const ID_LETTERS = 8

/** What this window knows of a job it has open. */
export interface OpenJob {
  parent: string
  readonly openedAt: number
  /** Its folder is made, flushed and locked. */
  ready: boolean
  readonly headers: Map<string, SaveHeader>
}

/** Writes the next save of a job: a new file, flushed and renamed. Throws DiskProblem; the earlier saves stay as they were. */
export async function saveJob(ports: StorePorts, folder: string, kept: KeptJob, known: OpenJob): Promise<void> {
  const { files } = ports
  const header = await nextHeader(ports, folder, known)
  const name = saveName(header)
  const target = `${folder}/${name}`
  const bytes = writeSave(header, kept)
  await writeNew({ files, folder, temporary: `${SAVING}${header.id}`, target, bytes }).catch(async (error: unknown) => {
    // Whatever part of it arrived is dropped: the answer stays in memory, and the next save is a file of its own.
    known.ready = false
    await files.remove(target).catch(() => undefined)
    throw error
  })
  known.parent = header.id
  known.headers.set(name, header)
  // The answer is on disk: what tidying up cannot do now it does after the next one.
  await prune({ files, folder, headers: known.headers, newest: name, openedAt: known.openedAt }).catch(() => undefined)
}

async function nextHeader(ports: StorePorts, folder: string, known: OpenJob): Promise<SaveHeader> {
  const { files, randomId, clock } = ports
  try {
    if (!known.ready) await prepareFolder(ports, folder)
    known.ready = true
    const number = (await highestNumber(files, folder)) + 1
    return { number, id: randomId(ID_LETTERS), parent: known.parent, savedAt: clock.minute() }
  } catch (error) {
    known.ready = false
    throw diskProblem(folder, error)
  }
}

/** Makes the job's folder, flushes the folders its name stands in, and takes the lock. */
async function prepareFolder(ports: StorePorts, folder: string): Promise<void> {
  await ports.files.makeFolder(folder)
  for (const above of foldersAbove(folder)) await ports.files.flushFolder(above)
  await takeLock(ports, folder)
}

/** `…/jobs` and the data folder itself. */
const foldersAbove = (folder: string): readonly string[] => {
  const jobs = folder.slice(0, folder.lastIndexOf('/'))
  return [jobs, jobs.slice(0, jobs.lastIndexOf('/'))]
}
