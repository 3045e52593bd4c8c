import { boxDepth } from '../../src/job/chapters/cabinets.ts'
import { baseboard, bow, crown, flatLength } from '../../src/job/chapters/wall.ts'
import type { Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { lowestCeiling, partsOf, reading, type Solid, solidOf } from './placed.ts'
import { HAIR, heightsOf, recessOf } from './recess.ts'

/** Panels of the boxes of a bay where they stand: no leaves and no drawer fronts. */
export const carcassSolids = (job: Job, plan: Plan, bay: string): readonly Solid[] =>
  partsOf(plan, bay)
    .filter((p) => p.id.startsWith(`${bay}/box-`) && !/-(?:D|Y)\d*$/.test(p.mark))
    .map((p) => solidOf(job, p))

/** What of the boxes of a bay does not fit: between its walls at every height (and through the mouth), under the ceiling, off the hump. */
export function boxFaults(job: Job, plan: Plan, bay: string): readonly string[] {
  const solids = carcassSolids(job, plan, bay)
  return [
    ...solids.flatMap((s) => sideways(job, bay, s)),
    ...solids.flatMap((s) => upright(job, plan, bay, s)),
    ...tilted(job, plan, bay),
    ...fromBehind(job, plan, bay, solids),
  ]
}

function sideways(job: Job, bay: string, s: Solid): readonly string[] {
  const recess = recessOf(job, bay)
  if (recess === undefined) {
    const length = reading(job, flatLength, bay) ?? Number.NaN
    return s.x0 < -HAIR || s.x1 > length + HAIR ? [`${s.id} stands past the wall's end`] : []
  }
  const depths = [0, s.y0, s.y1, recess.mouth ?? 0].filter((y) => y <= (recess.mouth ?? 0))
  const jams = heightsOf(recess, s.z0, s.z1).flatMap((z) =>
    depths.filter((y) => s.x0 < recess.left(z, y) - HAIR || s.x1 > recess.right(z, y) + HAIR).map(() => z),
  )
  return jams.length > 0 ? [`${s.id} jams between the returns at ${jams[0]}`] : []
}

const keeps = (plan: Plan, what: 'baseboardFate' | 'crownFate') => plan.used.get(`job.${what}`)?.value !== 'cut'

function upright(job: Job, plan: Plan, bay: string, s: Solid): readonly string[] {
  const board = reading(job, baseboard, bay)?.[0] ?? 0
  const kept = plan.used.get('job.baseboardFate')?.value === 'keep'
  const crownDrop = keeps(plan, 'crownFate') ? (reading(job, crown, bay)?.[0] ?? 0) : 0
  return [
    ...(kept && s.z0 < board ? [`${s.id} stands on the kept baseboard`] : []),
    ...(s.z0 < 0 ? [`${s.id} stands in the floor`] : []),
    ...(s.z1 > lowestCeiling(job, bay) - crownDrop + HAIR ? [`${s.id} stands in the ceiling`] : []),
  ]
}

/** Stood up on the floor in front, a box turns about its lower back edge. */
const tilted = (job: Job, plan: Plan, bay: string): readonly string[] =>
  plan.boxes.boxes
    .filter((b) => b.run.bay.id === bay && Math.hypot(b.height, b.depth) > lowestCeiling(job, bay))
    .map((b) => `${b.id} cannot be stood up`)

function fromBehind(job: Job, plan: Plan, bay: string, solids: readonly Solid[]): readonly string[] {
  const proud = reading(job, bow, bay)?.[1] ?? 0
  const mouth = recessOf(job, bay)?.mouth
  const asked = reading(job, boxDepth, bay) !== undefined
  const leaves = plan.fronts.leaves.filter((l) => l.box.run.bay.id === bay)
  const front = Math.max(0, ...solids.map((s) => s.y1), ...leaves.map((l) => l.box.backGap + l.box.depth + l.thickness))
  return [
    ...solids.filter((s) => s.y0 < proud).map((s) => `${s.id} stands on the hump of the wall`),
    ...(mouth !== undefined && !asked && front > mouth ? [`the fronts of ${bay} stand proud of the return`] : []),
  ]
}
