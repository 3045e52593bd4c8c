import { formula } from '../../things/formula.ts'
import { type Length, less, over, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'

/** Margins of the leaves of one box at its two sides. */
export interface LeafMargins {
  readonly left: Length
  readonly right: Length
}

/** At a box joint half the gap; at the run's end the outer reveal; against a flush gable a whole gap. */
export function leafMargins(context: PlanContext, box: Box, plan: BoxPlan): LeafMargins {
  const { figures } = context
  const gap = figures.length('door.gap')
  const last = plan.boxes.filter((b) => b.run.bay.id === box.run.bay.id).length
  const outer = (fit: Box['run']['left']['fit']) => (fit === 'gable' ? gap : figures.length('door.reveal-outer'))
  return {
    left: box.number === 1 ? outer(box.run.left.fit) : over(gap, 2),
    right: box.number === last ? outer(box.run.right.fit) : over(gap, 2),
  }
}

/** Fewest leaves on a box with each not wider than the widest allowed. */
export const fewestLeaves = formula<{ room: Length; gap: Length; most: Length }, number>(
  {
    id: 'fronts.leaves',
    plain: 'fewest with (room − gaps) ÷ leaves ≤ widest leaf',
    source: 'common practice, no source',
  },
  ({ room, gap, most }) => Math.max(1, Math.ceil((room + gap) / (most + gap))),
)

/** Width of each leaf of a box. */
export const leafWidth = formula<{ room: Length; gap: Length; count: number; cut: CutStep }, Length>(
  { id: 'fronts.leaf-width', plain: '(box − margins − gaps) ÷ leaves, down to half a step', source: 'geometry' },
  ({ room, gap, count, cut }) => cut.downHalf(over(less(room, times(gap, count - 1)), count)),
)
