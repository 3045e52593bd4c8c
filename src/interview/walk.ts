import type { Job } from '../job/job.ts'
import type { QuestionKey } from '../things/field.ts'
import { everyQuestion, type Question } from './asked.ts'

/** Where the interview can stand: at a question, or at the check-answers page. */
export type Stand = QuestionKey | 'review'

/** The question asked after this one; the review after the last. A question no longer asked is passed over by its order. */
export function nextStand(job: Job, asked: readonly Question[], from: Stand | undefined): Stand {
  if (from === undefined) return asked[0]?.key ?? 'review'
  const order = orderOf(job)
  const here = order.get(from) ?? -1
  return asked.find((q) => (order.get(q.key) ?? -1) > here)?.key ?? 'review'
}

/** The question asked before this one; undefined at the first. */
export function previousStand(job: Job, asked: readonly Question[], from: Stand): Stand | undefined {
  const order = orderOf(job)
  const here = from === 'review' ? Number.POSITIVE_INFINITY : (order.get(from) ?? 0)
  return asked.findLast((q) => (order.get(q.key) ?? 0) < here)?.key
}

/** The stand itself when it is asked now, or else the next that is. */
export const standOrNext = (job: Job, asked: readonly Question[], at: Stand | undefined): Stand =>
  at === 'review' || asked.some((q) => q.key === at) ? (at ?? 'review') : nextStand(job, asked, at)

const orderOf = (job: Job): ReadonlyMap<Stand, number> => new Map(everyQuestion(job).map((q, index) => [q.key, index]))
