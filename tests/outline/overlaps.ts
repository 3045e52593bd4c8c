import type { Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { partsOf, type Solid, solidOf } from './placed.ts'

/** Pieces that are set in others (tongues, ledgers), move (loose shelves) or are drawn at their first place only (quantity > 1). */
const apart = /\/(?:box-\d+\/(?:side|bottom|top|rail|back|nailer)|plinth|kick-plate|counter|gable|filler)/

/** Fixed pieces of one bay that would stand in one another by more than a cut step. */
export function overlapFaults(job: Job, plan: Plan, bay: string, step: number): readonly string[] {
  const solids = partsOf(plan, bay)
    .filter((p) => apart.test(p.id) && p.quantity === 1)
    .map((p) => solidOf(job, p))
  return solids.flatMap((a, i) =>
    solids
      .slice(i + 1)
      .filter((b) => shared(a, b) > (inGroove(plan, a, b) ? GROOVE : step))
      .map((b) => `${a.id} stands in ${b.id} by ${shared(a, b)}`),
  )
}

/** A grooved back stands in the four panels round it by the depth of the groove. */
const GROOVE = 6_350_000
const inGroove = (plan: Plan, a: Solid, b: Solid): boolean =>
  plan.boxes.make.backFit === 'grooved' && (a.id.endsWith('/back') || b.id.endsWith('/back'))

/** Least of the three overlaps: > 0 when the solids share space. */
const shared = (a: Solid, b: Solid): number =>
  Math.min(
    Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0),
    Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0),
    Math.min(a.z1, b.z1) - Math.max(a.z0, b.z0),
  )
