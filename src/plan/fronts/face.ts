import { formula } from '../../things/formula.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { BOX_HEIGHT } from './box-refs.ts'
import { leafMargins, leafRoom } from './leaf-widths.ts'

/** Where the fronts of one box stand: x, z = its lower left corner in the bay's own axes. */
export interface Face {
  readonly box: Box
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
}

/** Height of what closes a box: of one leaf, or of all its drawer fronts with their gaps. */
export const faceHeight = formula<{ boxHeight: Length; revealTop: Length; revealBottom: Length; cut: CutStep }, Length>(
  {
    id: 'fronts.face-height',
    plain: 'box height − reveal at the top − reveal at the bottom, down to half a step',
    source: 'geometry',
    from: { boxHeight: BOX_HEIGHT },
  },
  ({ boxHeight, revealTop, revealBottom, cut }) => cut.downHalf(less(boxHeight, revealTop, revealBottom)),
)

/** The face of one box. */
export function faceOf(context: PlanContext, plan: BoxPlan, box: Box): Face {
  const { figures, cut } = context
  const margins = leafMargins(context, box, plan)
  const revealBottom = figures.length('door.reveal-bottom')
  return {
    box,
    x: sum(box.x, margins.left),
    z: sum(box.z, revealBottom),
    width: leafRoom({ boxWidth: box.width, marginLeft: margins.left, marginRight: margins.right }),
    height: faceHeight({ boxHeight: box.height, revealTop: figures.length('door.reveal-top'), revealBottom, cut }),
  }
}
