import type { JobStore } from './job-store.ts'
import { listJobs } from './list-jobs.ts'
import { NO_PARENT, saveName } from './save-file.ts'
import type { OpenJob } from './save-job.ts'
import type { StorePorts } from './store-ports.ts'

/**
 * The jobs of one data folder, each in a folder of its own under `jobs`. What opens and saves a job is loaded with the
 * first one: the list of jobs stands on the screen before it.
 */
export function createStore(ports: StorePorts, folder: string): JobStore {
  const jobs = `${folder}/jobs`
  const open = new Map<string, OpenJob>()
  const folderOf = (id: string) => `${jobs}/${id}`
  let turn: Promise<unknown> = Promise.resolve()
  return {
    folder,
    list: () => listJobs(ports, jobs),
    load: async (id) => {
      const { loadJob } = await import('./load-job.ts')
      const loaded = await loadJob(ports, folderOf(id))
      open.set(id, {
        parent: loaded.header.id,
        openedAt: loaded.header.number,
        ready: false,
        headers: new Map([[saveName(loaded.header), loaded.header]]),
      })
      return { kept: loaded.kept, notes: loaded.notes }
    },
    save: (kept) => {
      // One at a time, in the order asked for; a save that was refused does not hold up the next.
      const saved = turn.then(async () => {
        const { saveJob } = await import('./save-job.ts')
        return saveJob(ports, folderOf(kept.job.id), kept, openJobIn(open, kept.job.id))
      })
      turn = saved.catch(() => undefined)
      return saved
    },
  }
}

function openJobIn(open: Map<string, OpenJob>, id: string): OpenJob {
  const known = open.get(id) ?? { parent: NO_PARENT, openedAt: 0, ready: false, headers: new Map() }
  open.set(id, known)
  return known
}
