import type { Job } from '../../job/job.ts'
import { recording } from '../../things/formula.ts'
import { makePlan, type Plan } from '../plan.ts'
import { type OriginIndex, originIndex } from './origin-index.ts'
import { subjectNames } from './subjects.ts'
import type { Writer } from './written.ts'

/** A plan with everything that was noted while it was made. */
export interface Tracing extends Writer {
  readonly plan: Plan
  readonly index: OriginIndex
  readonly subject: (about: string) => string
}

/** Makes the plan of a job once more and notes each number's working. */
export function tracing(job: Job): Tracing {
  const { result: plan, workings } = recording(() => makePlan(job, 'thorough'))
  return {
    plan,
    index: originIndex(workings),
    show: plan.show,
    figures: plan.figures,
    subject: subjectNames(plan),
  }
}
