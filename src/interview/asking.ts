import { answerOf, type Job } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'
import type { Show } from '../things/show.ts'
import type { Used } from '../things/used.ts'
import type { Day } from '../units/day.ts'
import type { Question } from './asked.ts'

/** All that reading a typed answer needs to know. */
export interface Asking {
  readonly question: Question
  readonly show: Show
  /** Days are counted from it: `thu`, `+3 days`. */
  readonly today: Day
  /** Ids of bays that are taken, also by answers of bays no longer on the wall. */
  readonly takenIds: readonly string[]
  /** The answer as it stands; undefined when there is none. */
  readonly answer: unknown
  /** What the plan uses, with its suggestion. */
  readonly used: Used | undefined
}

/** The facts round one question of a planned job. */
export const askingOf = (question: Question, job: Job, plan: Pick<Plan, 'show' | 'used'>, today: Day): Asking => ({
  question,
  show: plan.show,
  today,
  takenIds: takenIds(job),
  answer: answerOf(job, question.field, question.place),
  used: plan.used.get(question.key),
})

const takenIds = (job: Job): readonly string[] => [
  ...new Set([job.facts, job.choices, job.private].flatMap((section) => Object.keys(section))),
]
