import { slideSheet } from '../../job/chapters/drawers.ts'
import { hingeSheet, leavesPerBox } from '../../job/chapters/hardware.ts'
import { FRONTS, type FrontId } from '../../kinds/front/list.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { cupFigures, frontStyleOf, handleOf, stileWidthOf } from './door-choices.ts'
import { drawersAsked, wantsDrawers } from './drawer-choice.ts'
import { type DrawerMake, drawerMakeOf } from './drawer-make.ts'
import { hardwareGeneric } from './drawer-messages.ts'
import { drawerParts } from './drawer-parts.ts'
import { drawerMessages } from './drawer-run-messages.ts'
import { type BoxDrawers, drawersIn } from './drawer-stack.ts'
import type { Drawer } from './drawers.ts'
import { faceHeight, faceOf } from './face.ts'
import type { Front, LeafHole } from './front.ts'
import { frontMessages } from './front-run-messages.ts'
import { leafParts } from './leaf-parts.ts'
import { fewestLeaves } from './leaf-widths.ts'
import { type LeafFace, type LeafMake, leavesOf } from './leaves.ts'

/** One leaf (door). */
export interface Leaf extends Front {
  readonly hingeSide: 'left' | 'right'
  readonly hinges: number
  /** Cup centres from the leaf's lower end. */
  readonly cups: readonly Length[]
  /** Plate centres from the lower edge of the box. */
  readonly plates: readonly Length[]
  /** How far it laps over the box side it hangs on, and the hinge arm made for that; undefined where none is. */
  readonly overlay: Length
  readonly arm: string | undefined
  readonly cupFromEdge: Length
  readonly handleHoles: readonly LeafHole[]
}

export interface FrontPlan {
  readonly style: FrontId | 'none'
  readonly leaves: readonly Leaf[]
  readonly drawers: readonly Drawer[]
  /** What drawers of the job are made of and run on; undefined where there are none. */
  readonly drawerMake: DrawerMake | undefined
  readonly contribution: Contribution
}

/** The leaves and drawers of all boxes: sizes, hinges, slides, handles, pieces. */
export function fronts(context: PlanContext, boxes: BoxPlan): FrontPlan {
  if (!boxes.hasDoors) return { style: 'none', leaves: [], drawers: [], drawerMake: undefined, contribution: NOTHING }
  const style = frontStyleOf(context)
  const leaf = leafMakeOf(context, boxes, style)
  const drawer = wantsDrawers(context) ? drawerMakeOf(context) : undefined
  const perBox = boxes.boxes.map((box) => within(box.id, () => boxFronts(context, boxes, { leaf, drawer }, box)))
  const leaves = perBox.flatMap((b) => b.leaves)
  const stacks = perBox.flatMap((b) => (b.stack === undefined ? [] : [b.stack]))
  return {
    style,
    leaves,
    drawers: stacks.flatMap((stack) => stack.drawers),
    drawerMake: drawer,
    contribution: {
      parts: [...perBox.flatMap((b) => b.parts)],
      joints: [],
      messages: [
        ...frontMessages(
          context,
          perBox.flatMap((b) => (b.leavesWanted ? [b.box] : [])),
          leaf,
          leaves,
        ),
        ...generic(leaf, leaves, drawer, stacks),
        ...(drawer === undefined ? [] : drawerMessages(context, boxes, { leaf, drawer }, stacks)),
      ],
    },
  }
}

const leafMakeOf = (context: PlanContext, boxes: BoxPlan, style: FrontId): LeafMake => ({
  kind: FRONTS[style],
  frame: stileWidthOf(context),
  cup: cupFigures(context),
  handle: handleOf(context),
  thickness: boxes.frontThickness,
  carcass: boxes.carcassThickness,
})

interface BoxFronts {
  readonly box: Box
  readonly leavesWanted: boolean
  readonly leaves: readonly Leaf[]
  readonly stack: BoxDrawers | undefined
  readonly parts: readonly Part[]
}

/** What closes one box: leaves, drawers, or both with a rail between. */
function boxFronts(
  context: PlanContext,
  boxes: BoxPlan,
  make: { readonly leaf: LeafMake; readonly drawer: DrawerMake | undefined },
  box: Box,
): BoxFronts {
  const face = faceOf(context, boxes, box)
  const asked = make.drawer === undefined ? undefined : drawersAsked(context, box.run).get(box.number)
  if (asked === undefined || make.drawer === undefined) {
    const leaves = hung(context, boxes, make.leaf, { ...face, heightFrom: faceHeight })
    return {
      box,
      leavesWanted: true,
      leaves,
      stack: undefined,
      parts: leaves.flatMap((leaf) => leafParts(context, make.leaf, leaf)),
    }
  }
  const both = { leaf: make.leaf, drawer: make.drawer }
  const stack = drawersIn(context, boxes, both, { face, asked })
  const leaves = stack.leafFace === undefined ? [] : hung(context, boxes, make.leaf, stack.leafFace)
  return {
    box,
    leavesWanted: stack.leafFace !== undefined,
    leaves,
    stack,
    parts: [
      ...leaves.flatMap((leaf) => leafParts(context, make.leaf, leaf)),
      ...stack.rail,
      ...stack.drawers.flatMap((drawer) => drawerParts(context, boxes, both, drawer)),
    ],
  }
}

const hung = (context: PlanContext, boxes: BoxPlan, make: LeafMake, face: LeafFace): readonly Leaf[] =>
  leavesOf(context, boxes, make, face, countFor(context, face.width))

/** Leaves on one box: as asked, else as few as stay narrow enough. */
function countFor({ figures, settle, show }: PlanContext, leafRoom: Length): number {
  const leafMost = figures.length('door.leaf-most')
  return settle.choice(leavesPerBox, undefined, () => ({
    value: fewestLeaves({ leafRoom, gap: figures.length('door.gap'), leafMost }),
    because: `fewest not wider than ${show.withUnit(leafMost)}`,
  }))
}

/** Says once which hardware is planned by generic figures. */
function generic(
  leaf: LeafMake,
  leaves: readonly Leaf[],
  drawer: DrawerMake | undefined,
  stacks: readonly BoxDrawers[],
): readonly Message[] {
  const hinges = leaves.length > 0 && leaf.cup.known === 'generic'
  const slides = drawer?.known === 'generic' && stacks.some((stack) => stack.drawers.length > 0)
  const what = [...(hinges ? ['hinges'] : []), ...(slides ? ['drawer slides'] : [])].join(' and ')
  const about = questionKey('job', hinges ? hingeSheet : slideSheet)
  return what === '' ? [] : [raise(hardwareGeneric, { about, place: 'doors and drawers' }, { what })]
}
