import { leavesPerBox } from '../../job/chapters/hardware.ts'
import { FRONTS } from '../../kinds/front/list.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import type { Length } from '../../units/length.ts'
import { less } from '../../units/length.ts'
import type { Mass } from '../../units/mass.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { cupFigures, frontStyleOf, handleOf, stileWidthOf } from './door-choices.ts'
import { frontMessages } from './front-run-messages.ts'
import { leafParts } from './leaf-parts.ts'
import { fewestLeaves, leafMargins } from './leaf-widths.ts'
import { type LeafMake, leavesOf } from './leaves.ts'

/** One leaf (door). x, z = its lower left corner in the bay's own axes. */
export interface Leaf {
  readonly box: Box
  readonly mark: string
  readonly id: string
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
  readonly thickness: Length
  readonly hingeSide: 'left' | 'right'
  readonly hinges: number
  /** Cup centres from the leaf's lower end. */
  readonly cups: readonly Length[]
  readonly cupFromEdge: Length
  readonly handleHoles: readonly { readonly fromHandleEdge: Length; readonly fromTop: Length }[]
  readonly mass: Mass
  readonly waitsFor: readonly QuestionKey[]
}

export interface FrontPlan {
  readonly style: string
  readonly leaves: readonly Leaf[]
  readonly contribution: Contribution
}

/** The leaves of all boxes: sizes, hinges, handles, pieces. Drawers are not built yet: every box gets leaves or stays open. */
export function fronts(context: PlanContext, boxes: BoxPlan): FrontPlan {
  if (!boxes.hasDoors) return { style: 'none', leaves: [], contribution: NOTHING }
  const make = leafMakeOf(context, boxes)
  const perBox = boxes.boxes.map((box) => leavesOf(context, boxes, make, box, countFor(context, boxes, box)))
  const leaves = perBox.flat()
  return {
    style: make.kind.id,
    leaves,
    contribution: {
      parts: leaves.flatMap((leaf) => leafParts(context, make, leaf)),
      joints: [],
      messages: frontMessages(context, boxes, make, leaves),
    },
  }
}

const leafMakeOf = (context: PlanContext, boxes: BoxPlan): LeafMake => ({
  kind: FRONTS[frontStyleOf(context)],
  frame: stileWidthOf(context),
  cup: cupFigures(context),
  handle: handleOf(context),
  thickness: boxes.frontThickness,
  carcass: boxes.carcassThickness,
})

/** Leaves on one box: as asked, else as few as stay narrow enough. */
function countFor(context: PlanContext, boxes: BoxPlan, box: Box): number {
  const { figures, settle, show } = context
  const most = figures.length('door.leaf-most')
  const margins = leafMargins(context, box, boxes)
  const room = less(box.width, margins.left, margins.right)
  return settle.choice(leavesPerBox, undefined, () => ({
    value: fewestLeaves({ room, gap: figures.length('door.gap'), most }),
    because: `fewest not wider than ${show.withUnit(most)}`,
  }))
}
