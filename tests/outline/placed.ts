import { breastSize, ceiling, flatLength, floor } from '../../src/job/chapters/wall.ts'
import { answerOf, baysOf, type Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import type { Part } from '../../src/things/part.ts'
import { recessOf } from './recess.ts'

/** A solid in a bay's own axes, in plain nanometres. */
export interface Solid {
  readonly id: string
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

/** What was measured at a bay; undefined where it was not. */
export function reading<T>(job: Job, field: Field<T>, place: string): T | undefined {
  const answer = answerOf(job, field, place)
  return answer === undefined || answer === NOT_MEASURED ? undefined : answer
}

/** x of a bay's left end in the wall's axes: the widths of the bays before it. */
export function originOf(job: Job, bay: string): number {
  const list = baysOf(job)
  return list
    .slice(
      0,
      list.findIndex((b) => b.id === bay),
    )
    .reduce((x, b) => x + widthOf(job, b.id), 0)
}

export function widthOf(job: Job, bay: string): number {
  return (
    recessOf(job, bay)?.widthAtFoot ?? reading(job, flatLength, bay) ?? reading(job, breastSize, bay)?.[0] ?? Number.NaN
  )
}

export const lowestCeiling = (job: Job, bay: string): number =>
  Math.min(...(reading(job, ceiling, bay) ?? [Number.NaN]))

/** Floor below the level line at x, straight between readings, held beyond them. */
export function dropAt(job: Job, bay: string, x: number): number {
  const rows = [...(reading(job, floor, bay) ?? [])].sort((a, b) => a.x - b.x)
  const above = rows.findIndex((r) => r.x >= x)
  if (rows.length === 0) return 0
  if (above === -1) return rows.at(-1)!.drop
  if (above === 0) return rows[0]!.drop
  const [a, b] = [rows[above - 1]!, rows[above]!]
  return a.drop + ((b.drop - a.drop) * (x - a.x)) / (b.x - a.x)
}

/** A part where the plan puts it, in its bay's axes. */
export function solidOf(job: Job, part: Part): Solid {
  const { x, y, z, dx, dy, dz } = part.placement
  const left = x - originOf(job, part.bay)
  return { id: part.id, x0: left, x1: left + dx, y0: y, y1: y + dy, z0: z, z1: z + dz }
}

export const partsOf = (plan: Plan, bay: string): readonly Part[] => plan.parts.filter((p) => p.bay === bay)

/** Bays where a stop was raised: there the plan says itself that something does not fit. */
export const stopped = (plan: Plan, bay: string): boolean =>
  plan.messages.some((m) => m.weight === 'stop' && (m.about.startsWith(`${bay}.`) || m.about.startsWith('job.')))
