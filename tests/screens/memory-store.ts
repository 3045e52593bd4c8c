import type { JobStore, KeptJob } from '../../src/archive/job-store.ts'
import { title } from '../../src/job/chapters/job.ts'
import { answerOf } from '../../src/job/job.ts'
import { DiskProblem } from '../../src/things/failure.ts'

/** A store in memory, newest save of each job; `full` makes it refuse as a full disk does. */
export function memoryStore(): JobStore & { readonly saves: KeptJob[]; full: boolean } {
  const saves: KeptJob[] = []
  const newest = () => [...new Map(saves.map((k) => [k.job.id, k])).values()].toReversed()
  const store = {
    saves,
    full: false,
    folder: '/memory',
    list: async () =>
      newest().map(({ job, at, where }) => ({
        id: job.id,
        title: String(answerOf(job, title, 'job') ?? ''),
        at,
        where,
        answers: Object.keys({ ...job.facts.job, ...job.choices.job }).length,
        damaged: false,
      })),
    load: async (id: string) => {
      const kept = newest().find((k) => k.job.id === id)
      if (kept === undefined) throw new DiskProblem(id, 'read')
      return { kept, notes: [] }
    },
    save: async (kept: KeptJob) => {
      if (store.full) throw new DiskProblem('/memory/job', 'write')
      saves.push(kept)
    },
  }
  return store
}
