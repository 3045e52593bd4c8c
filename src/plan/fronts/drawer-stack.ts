import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, over, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { boxPartMark, parseMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { BOX_BOTTOM } from './box-refs.ts'
import { insideCeiling, insideFloor } from './drawer-body.ts'
import type { FrontsAsked } from './drawer-choice.ts'
import { drawerHeights, leafHeightBeside } from './drawer-heights.ts'
import type { DrawerMake } from './drawer-make.ts'
import { type Drawer, type DrawerStack, drawersOf, slideOf } from './drawers.ts'
import type { Face } from './face.ts'
import { type LeafFace, type LeafMake, leastLeafHeight } from './leaves.ts'

/** The drawers of one box, what they leave for leaves, and the rail between. */
export interface BoxDrawers {
  readonly stack: DrawerStack
  readonly asked: FrontsAsked
  readonly drawers: readonly Drawer[]
  /** The lowest of those whose drawer box is lower than its slide takes: they are not built. */
  readonly lowest: Drawer | undefined
  /** Room for leaves; undefined where the drawers fill the box. */
  readonly leafFace: LeafFace | undefined
  readonly rail: readonly Part[]
  /** What the heights asked for leave or are too high by; undefined when they fit. */
  readonly misfit: Length | undefined
  /** Depth free for a slide, and the slide that goes in. */
  readonly slide: { readonly free: Length; readonly length: Length | undefined }
}

interface Make {
  readonly leaf: LeafMake
  readonly drawer: DrawerMake
}

/** The drawers of one box: above its leaves in a base box, below them in a tall one, where nobody looks down into them. */
export function drawersIn(
  context: PlanContext,
  plan: BoxPlan,
  make: Make,
  { face, asked }: { readonly face: Face; readonly asked: FrontsAsked },
): BoxDrawers {
  const { figures, cut } = context
  const gap = figures.length('door.gap')
  const { box } = face
  const { fronts, leaf, misfit } = drawerHeights({
    faceHeight: face.height,
    gap,
    asked,
    leastLeaf: sum(leastLeafHeight(context), cut.step),
    cut,
  })
  const under = leaf === undefined ? 'leaves nowhere' : box.run.kind === 'tall' ? 'leaves above' : 'leaves below'
  const faceTop = sum(face.z, face.height)
  const top = under === 'leaves above' ? less(faceTop, leaf ?? ZERO, gap) : faceTop
  const gapBottom = under === 'leaves above' ? top : sum(face.z, leaf ?? ZERO)
  const carcassThickness = plan.carcassThickness
  const rail = railBottom({ gapBottom, gap, carcassThickness })
  const boxBottom = box.z
  const stack: DrawerStack = {
    face,
    heights: fronts,
    top,
    floor:
      under === 'leaves below'
        ? railTop({ railBottom: rail, carcassThickness })
        : insideFloor({ boxBottom, carcassThickness }),
    ceiling: under === 'leaves above' ? rail : insideCeiling({ boxBottom, boxHeight: box.height, carcassThickness }),
  }
  const slide = slideOf(context, plan, make.drawer, stack)
  const wanted = slide.length === undefined ? [] : drawersOf(context, make, stack, slide.length)
  const isHigh = (drawer: Drawer) => drawer.body.height >= make.drawer.leastHeight
  const leafZ = under === 'leaves above' ? sum(top, gap) : face.z
  return {
    stack,
    asked,
    misfit,
    slide,
    drawers: wanted.filter(isHigh),
    lowest: wanted.filter((drawer) => !isHigh(drawer)).toSorted((a, b) => a.body.height - b.body.height)[0],
    leafFace: leaf === undefined ? undefined : { ...face, z: leafZ, height: leaf, heightFrom: leafHeightBeside },
    rail: leaf === undefined ? [] : [railBetween(context, plan, face, rail)],
  }
}

/** Lower face of the rail: its middle is the middle of the gap between drawers and leaves. */
export const railBottom = formula<{ gapBottom: Length; gap: Length; carcassThickness: Length }, Length>(
  {
    id: 'fronts.rail-bottom',
    plain: 'lower edge of the gap + gap ÷ 2 − rail ÷ 2',
    source: 'geometry',
    units: { gapBottom: 'length' },
  },
  ({ gapBottom, gap, carcassThickness }) => less(sum(gapBottom, over(gap, 2)), over(carcassThickness, 2)),
)

/** Upper face of the rail. */
export const railTop = formula<{ railBottom: Length; carcassThickness: Length }, Length>(
  { id: 'fronts.rail-top', plain: 'lower face of the rail + its thickness', source: 'geometry' },
  ({ railBottom: bottom, carcassThickness }) => sum(bottom, carcassThickness),
)

/** Lower face of the rail from the lower edge of its box: a set-out number. */
export const railUp = formula<{ railBottom: Length; boxBottom: Length; cut: CutStep }, Length>(
  {
    id: 'fronts.rail-up',
    plain: 'lower face of the rail − lower edge of the box, near',
    source: 'geometry',
    from: { boxBottom: BOX_BOTTOM },
  },
  ({ railBottom: bottom, boxBottom, cut }) => cut.near(less(bottom, boxBottom)),
)

/** A rail lying flat between drawers and leaves: both close against it. */
function railBetween(context: PlanContext, plan: BoxPlan, { box }: Face, z: Length): Part {
  const { figures, show, cut } = context
  const t = plan.carcassThickness
  const width = figures.length('nailer.width')
  const up = railUp({ railBottom: z, boxBottom: box.z, cut })
  const tops = plan.contribution.parts.filter((p) => p.id.startsWith(`${box.id}/`) && parseMark(p.mark)?.role === 'T')
  return madePart({
    id: `${box.id}/drawer-rail`,
    mark: boxPartMark(box.run.bay, box.number, 'T', tops.length + 1),
    name: 'rail under the drawers',
    bay: box.run.bay.id,
    goesTo: `${box.run.bay.name}, box ${box.number}, between drawers and doors`,
    length: box.insideWidth,
    width,
    thickness: t,
    material: mdf(t),
    shows: 'front edge',
    details: [`lies flat, front edges flush, its lower face ${show.withUnit(up)} above the lower edge of the box`],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(box.run.wall.originX, box.x, t),
      y: less(sum(box.backGap, box.depth), width),
      z,
      dx: box.insideWidth,
      dy: width,
      dz: t,
    },
    waitsFor: box.waitsFor,
    from: {
      length: { id: 'box.inside-width' },
      width: { id: 'nailer.width' },
      thickness: { id: 'carcassThickness' },
    },
  })
}
