import { baseboard } from '../../src/job/chapters/wall.ts'
import type { Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { dropAt, partsOf, reading, solidOf } from './placed.ts'
import { HAIR, heightsOf, recessOf } from './recess.ts'

/** Fillers too narrow for their gap, or wider than it when finished. */
export function fillerFaults(job: Job, plan: Plan, bay: string, step: number): readonly string[] {
  const recess = recessOf(job, bay)
  const run = plan.slots.runs.find((r) => r.bay.id === bay)
  if (recess === undefined || run === undefined) return []
  const y = recess.mouth ?? 0
  return partsOf(plan, bay)
    .filter((p) => p.name === 'wall filler')
    .flatMap((part) => {
      const at = solidOf(job, part)
      const gap = (z: number) =>
        part.id.endsWith('left') ? run.startX - recess.left(z, y) : recess.right(z, y) - (run.startX + run.width)
      const gaps = heightsOf(recess, at.z0, at.z1).map(gap)
      const finished = Math.max(gap(at.z0), gap(at.z1))
      return [
        ...(part.roughWidth < Math.max(...gaps) - HAIR ? [`${part.id} is cut too narrow for its gap`] : []),
        ...(Math.abs(part.width - finished) > 2 * step ? [`${part.id} is ${part.width} for a gap of ${finished}`] : []),
      ]
    })
}

/** Kick plates that do not reach from wall to wall or down to the floor, or that stand in one or the other when finished. */
export function kickFaults(job: Job, plan: Plan, bay: string, step: number): readonly string[] {
  const plates = partsOf(plan, bay).filter((p) => p.name === 'kick plate')
  const solids = plates.map((p) => solidOf(job, p))
  const [first] = solids
  const last = solids.at(-1)
  if (first === undefined || last === undefined) return []
  const floor = solids.flatMap((s, i) => {
    const part = plates[i]!
    const xs = Array.from({ length: 21 }, (_, k) => s.x0 + ((s.x1 - s.x0) * k) / 20)
    const deepest = Math.max(...xs.map((x) => dropAt(job, bay, x)))
    const ends = Math.max(dropAt(job, bay, s.x0), dropAt(job, bay, s.x1))
    return [
      ...(part.roughWidth < s.z1 + deepest - HAIR ? [`${part.id} does not reach the floor`] : []),
      ...(s.z0 < -ends - HAIR ? [`${part.id} stands in the floor`] : []),
      ...(s.z0 > -ends + 2 * step ? [`${part.id} hangs ${s.z0 + ends} over the floor`] : []),
    ]
  })
  return [...floor, ...acrossFaults(job, plan, bay, { from: first.x0, to: last.x1 })]
}

function acrossFaults(
  job: Job,
  plan: Plan,
  bay: string,
  plates: { readonly from: number; readonly to: number },
): readonly string[] {
  const recess = recessOf(job, bay)
  const own = partsOf(plan, bay).filter((p) => p.name === 'kick plate')
  const [one, ...others] = own
  if (recess === undefined || one === undefined || others.length > 0) return []
  const at = solidOf(job, one)
  const kept = plan.used.get('job.baseboardFate')?.value === 'keep'
  const boards = kept ? 2 * (reading(job, baseboard, bay)?.[1] ?? 0) : 0
  const free = heightsOf(recess, 0, at.z1).map((z) => recess.right(z, at.y0) - recess.left(z, at.y0) - boards)
  return [
    ...(one.roughLength < Math.max(...free) - HAIR ? [`${one.id} does not reach from wall to wall`] : []),
    ...(plates.to - plates.from > Math.min(free[0]!, free[40]!) + HAIR ? [`${one.id} is too long to stand`] : []),
  ]
}
