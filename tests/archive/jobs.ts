import type { KeptJob } from '../../src/archive/job-store.ts'
import { title } from '../../src/job/chapters/job.ts'
import { emptyJob, withAnswer } from '../../src/job/job.ts'

export const JOB_ID = 'abcd-1'

/** The nth state of a small job: its title says which. */
export const keptJob = (nth: number, id = JOB_ID): KeptJob => ({
  job: withAnswer(emptyJob(id, '2026-11-25'), title, 'job', `state ${nth}`),
  at: 'job.units',
  undo: [{ key: 'job.title', before: nth === 0 ? undefined : `state ${nth - 1}`, after: `state ${nth}` }],
})

/** Which state a kept job is. */
export const stateOf = (kept: KeptJob): number => Number(String(kept.job.facts.job?.title).replace('state ', ''))
