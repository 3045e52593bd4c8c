import { fieldById } from '../job/fields.ts'
import { type Job, withOwnFigures } from '../job/job.ts'
import { unrecorded } from '../things/formula.ts'
import type { Used } from '../things/used.ts'
import type { PlanContext } from './context.ts'
import type { Settle } from './settle.ts'

/**
 * What was used for each question, with the person's own marked: a suggestion that would be another one with the published
 * figures. `usedIn` gives what a plan of a job uses. What nobody has measured yet stays assumed.
 */
export function ownMarked(
  { job, figures, settle }: PlanContext,
  usedIn: (published: Job) => Settle['used'],
): Settle['used'] {
  if (figures.own.length === 0) return settle.used
  const published = unrecorded(() => usedIn(withOwnFigures(job, {})))
  return new Map(
    [...settle.used].map(([key, used]) => [key, isOwn(used, published.get(key)) ? yours(used) : used] as const),
  )
}

function isOwn(used: Used, published: Used | undefined): boolean {
  const measured = fieldById(used.key.slice(used.key.indexOf('.') + 1))?.missing !== 'suggest'
  if (published === undefined || measured) return false
  return JSON.stringify(used.suggested) !== JSON.stringify(published.suggested)
}

const yours = (used: Used): Used => ({
  ...used,
  origin: used.origin === 'answered' ? 'answered' : 'yours',
  suggestedOrigin: 'yours',
  because: `${used.because}; by your own figures`,
})
