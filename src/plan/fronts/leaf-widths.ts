import { leavesPerBox } from '../../job/chapters/hardware.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { BOX_WIDTH } from './box-refs.ts'

/** Margins of the fronts of one box at its two sides. */
export interface LeafMargins {
  readonly left: Length
  readonly right: Length
}

/** Half the gap at a joint between two boxes. */
export const jointMargin = formula<{ gap: Length }, Length>(
  { id: 'fronts.joint-margin', plain: 'gap between leaves ÷ 2', source: 'geometry' },
  ({ gap }) => over(gap, 2),
)

/** At a box joint half the gap; at the run's end the outer reveal; against a flush gable a whole gap. */
export function leafMargins(context: PlanContext, box: Box, plan: BoxPlan): LeafMargins {
  const { figures } = context
  const gap = figures.length('door.gap')
  const last = Math.max(...plan.boxes.filter((b) => b.run.bay.id === box.run.bay.id).map((b) => b.number))
  const outer = (fit: Box['run']['left']['fit']) => (fit === 'gable' ? gap : figures.length('door.reveal-outer'))
  return {
    left: box.number === 1 ? outer(box.run.left.fit) : jointMargin({ gap }),
    right: box.number === last ? outer(box.run.right.fit) : jointMargin({ gap }),
  }
}

const MARGINS = [jointMargin, { id: 'door.reveal-outer' }, { id: 'door.gap' }] as const

/** Room for the fronts of one box, between its margins. */
export const leafRoom = formula<{ boxWidth: Length; marginLeft: Length; marginRight: Length }, Length>(
  {
    id: 'fronts.leaf-room',
    plain: 'box − margin at its left − margin at its right',
    source: 'geometry',
    from: { boxWidth: BOX_WIDTH, marginLeft: MARGINS, marginRight: MARGINS },
  },
  ({ boxWidth, marginLeft, marginRight }) => less(boxWidth, marginLeft, marginRight),
)

/** Fewest leaves on a box with each not wider than the widest allowed. */
export const fewestLeaves = formula<{ leafRoom: Length; gap: Length; leafMost: Length }, number>(
  {
    id: 'fronts.leaves',
    plain: '(room + gap) ÷ (widest leaf + gap), up to a whole one',
    source: 'common practice, no source',
    gives: 'count',
  },
  ({ leafRoom: room, gap, leafMost }) => Math.max(1, Math.ceil((room + gap) / (leafMost + gap))),
)

/** Width of each leaf of a box; of a drawer front with `leaves` 1. */
export const leafWidth = formula<{ leafRoom: Length; gap: Length; leaves: number; cut: CutStep }, Length>(
  {
    id: 'fronts.leaf-width',
    plain: '(room − gaps) ÷ leaves, down to half a step',
    source: 'geometry',
    from: { leaves: leavesPerBox },
    units: { leaves: 'count' },
  },
  ({ leafRoom: room, gap, leaves, cut }) => cut.downHalf(over(less(room, times(gap, leaves - 1)), leaves)),
)

/** Width of a drawer front: one front from margin to margin. */
export const drawerFrontWidth = formula<{ leafRoom: Length; cut: CutStep }, Length>(
  { id: 'fronts.drawer-front-width', plain: 'room between the margins, down to half a step', source: 'geometry' },
  ({ leafRoom: room, cut }) => cut.downHalf(room),
)
