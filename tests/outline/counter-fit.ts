import type { Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Part } from '../../src/things/part.ts'
import { parseLength } from '../../src/units/parse-length.ts'
import { type Board, endGap, gapFaults, seatFaults, slidesIn, tipsIn } from './board-fit.ts'
import { lowestCeiling, partsOf, solidOf } from './placed.ts'
import { type Recess, recessOf } from './recess.ts'

/** What of a counter in one piece does not fit: on its way in (straight or tipped), seated, or by what its joints say. */
export function counterFaults(job: Job, plan: Plan, bay: string, step: number): readonly string[] {
  const recess = recessOf(job, bay)
  const pieces = partsOf(plan, bay).filter((p) => p.name === 'counter')
  const [whole, ...others] = pieces
  if (recess === undefined || whole === undefined || others.length > 0) return []
  const board = counterBoard(job, plan, whole, recess)
  const inWay = slidesIn(recess, board) || tipsIn(recess, board, lowestCeiling(job, bay))
  return [
    ...seatFaults(recess, board, whole.id),
    ...(inWay ? [] : [`${whole.id} goes in neither straight nor tipped`]),
    ...(recess.mouth !== undefined && whole.width > recess.mouth ? [`${whole.id} stands proud of its recess`] : []),
    ...(['left', 'right'] as const).flatMap((side) => {
      const joint = plan.joints.joints.find((j) => j.id === `${bay}/top-${side}`)
      if (joint === undefined) return [`${whole.id} has no joint at its ${side} end`]
      return [
        ...gapFaults({ says: `${joint.id} front`, said: joint.gap1, step }, endGap(recess, board, side, board.depth)),
        ...gapFaults({ says: `${joint.id} back`, said: joint.gap2, step }, endGap(recess, board, side, 0)),
      ]
    }),
  ]
}

/** The counter as printed: the longer end is its length, the other one stands in its taper. */
function counterBoard(job: Job, plan: Plan, part: Part, recess: Recess): Board {
  const at = solidOf(job, part)
  const other = taperOf(plan, part)
  const back = other?.end === 'back' ? other.length : part.length
  const front = other?.end === 'front' ? other.length : part.length
  const middle = (y: number) => (recess.left(at.z1, y) + recess.right(at.z1, y)) / 2
  return {
    x: at.x0,
    back,
    front,
    shift: middle(part.width) - middle(0) - (front - back) / 2,
    depth: part.width,
    from: at.z0,
    to: at.z1,
  }
}

function taperOf(plan: Plan, part: Part): { readonly end: string; readonly length: number } | undefined {
  if (part.taper === undefined) return undefined
  const space = part.taper.indexOf(' ')
  const read = parseLength(part.taper.slice(space + 1), plan.figures.units)
  if (read.kind === 'not-read') throw new Error(`the taper ${part.taper} cannot be read`)
  return { end: part.taper.slice(0, space), length: read.value }
}
