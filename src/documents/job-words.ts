import { title } from '../job/chapters/job.ts'
import { answerOf } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'
import { lookAt } from '../plan/settle.ts'
import { type Field, NOT_MEASURED } from '../things/field.ts'
import type { Show } from '../things/show.ts'

/** The title of the job, or the word for one without. */
export const titleOf = (plan: Plan): string => usedValue(plan, title) ?? 'Built-ins'

/** An answer of text; undefined when nothing was typed. */
export function textAnswer(plan: Plan, field: Field<string>): string | undefined {
  const answer = answerOf(plan.job, field, 'job')
  const text = answer === NOT_MEASURED ? '' : (answer ?? '').trim()
  return text === '' ? undefined : text
}

/** The value the plan goes by: answered or suggested. */
export const usedValue = <T>(plan: Plan, field: Field<T>): T | undefined =>
  lookAt(plan.job, plan.used, undefined)(field)

/** How sizes and masses are written; nothing of money. */
export type PlainShow = Omit<Show, 'currency'>

/** The same ways of writing, without the currency. */
export const plainShow = ({ units, length, withUnit, mass, area, volume }: Show): PlainShow => ({
  units,
  length,
  withUnit,
  mass,
  area,
  volume,
})
