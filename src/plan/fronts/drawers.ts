import { within } from '../../things/formula.ts'
import { type Length, less, longest, over, shortest, sum, ZERO } from '../../units/length.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { boxPartMark } from '../marks.ts'
import { drawerHeight, drawerOpening, drawerWidth, freeDepth, slideLength, slideLine } from './drawer-body.ts'
import { drawerFrontHeight, type FrontHeight } from './drawer-heights.ts'
import type { DrawerMake } from './drawer-make.ts'
import type { Face } from './face.ts'
import type { DrawerHole, Front } from './front.ts'
import { drawerHoles } from './handles.ts'
import { drawerFrontWidth } from './leaf-widths.ts'
import { type LeafMake, massOfFront } from './leaves.ts'

/** The box a drawer is, behind its front. x, z = its lower left corner in the bay's own axes. */
export interface DrawerBody {
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
  /** From its front to its back: as long as the slide. */
  readonly length: Length
  /** Screw line of its slides from the lower edge of the box it runs in. */
  readonly slideLine: Length
}

/** One drawer: its front, and the drawer box behind it. */
export interface Drawer extends Front {
  /** From the top one down. */
  readonly number: number
  readonly holes: readonly DrawerHole[]
  readonly body: DrawerBody
}

/** The drawers of one box as they would stand: those that cannot be built have no height or no slide. */
export interface DrawerStack {
  readonly face: Face
  readonly heights: readonly FrontHeight[]
  /** Upper edge of the top front. */
  readonly top: Length
  /** Upper face of what is under the lowest drawer, lower face of what is over the highest. */
  readonly floor: Length
  readonly ceiling: Length
}

/** Depth free for the drawers of a box, and the slide that goes in; undefined when none is so short. */
export function slideOf(
  context: PlanContext,
  plan: BoxPlan,
  make: DrawerMake,
  stack: DrawerStack,
): { readonly free: Length; readonly length: Length | undefined } {
  const { box } = stack.face
  const free = freeDepth({ insideDepth: box.insideDepth, nailer: nailerInside(plan, stack) })
  const slideBehind = context.figures.length('slide.behind')
  return { free, length: slideLength({ freeDepth: free, slideBehind, sold: make.lengths }) }
}

/** How far a nailer behind the drawers stands into the box. */
function nailerInside(plan: BoxPlan, { face, floor, ceiling }: DrawerStack): Length {
  const { box } = face
  const inside = less(sum(box.backGap, box.depth), box.insideDepth)
  const nailers = plan.contribution.parts.filter(({ id, placement: { z, dz } }) => {
    const crosses = z < ceiling && sum(z, dz) > floor
    return id.startsWith(`${box.id}/nailer`) && crosses
  })
  return longest(ZERO, ...nailers.map(({ placement: { y, dy } }) => less(sum(y, dy), inside)))
}

/** Each drawer of a stack, built or not: the drawer box of one may be lower than its slide takes. */
export function drawersOf(
  context: PlanContext,
  make: { readonly leaf: LeafMake; readonly drawer: DrawerMake },
  stack: DrawerStack,
  length: Length,
): readonly Drawer[] {
  const { box } = stack.face
  const gap = context.figures.length('door.gap')
  return stack.heights.map((height, i) =>
    within(`${box.id}/drawer-${i + 1}`, () => {
      const above = stack.heights.slice(0, i).flatMap((h) => [h.frontHeight, h.more, gap])
      return drawerAt(context, make, stack, { index: i, height, length, top: less(stack.top, ...above) })
    }),
  )
}

interface DrawerPlace {
  readonly index: number
  readonly height: FrontHeight
  readonly length: Length
  readonly top: Length
}

function drawerAt(
  context: PlanContext,
  make: { readonly leaf: LeafMake; readonly drawer: DrawerMake },
  stack: DrawerStack,
  at: DrawerPlace,
): Drawer {
  const { box, x, width: room } = stack.face
  const width = drawerFrontWidth({ leafRoom: room, cut: context.cut })
  const height = drawerFrontHeight(at.height)
  const front = { x, z: less(at.top, height), width, height }
  return {
    ...front,
    box,
    number: at.index + 1,
    mark: boxPartMark(box.run.bay, box.number, 'Y', at.index + 1),
    id: `${box.id}/drawer-${at.index + 1}/front`,
    thickness: make.leaf.thickness,
    holes: drawerHoles(context, make.leaf.handle, front),
    body: bodyOf(context, make, stack, { ...at, front }),
    mass: massOfFront(context, { ...make.leaf, kind: make.drawer.kind }, { ...front, from: FROM }),
    waitsFor: box.waitsFor,
    from: FROM,
  }
}

const FROM = { width: drawerFrontWidth, height: drawerFrontHeight } as const

/** The drawer box: in the middle of its front's height where that is free, else as near as what is under or over it lets it. */
function bodyOf(
  context: PlanContext,
  make: { readonly leaf: LeafMake; readonly drawer: DrawerMake },
  stack: DrawerStack,
  at: DrawerPlace & { readonly front: Pick<Front, 'z' | 'height'> },
): DrawerBody {
  const { figures, cut } = context
  const { box } = stack.face
  const { clear: slideClear, below: slideBelow, line: slideUp } = make.drawer
  const above = figures.length('drawer.above')
  const openingBottom = at.index === stack.heights.length - 1 ? stack.floor : at.front.z
  const openingTop = at.index === 0 ? stack.ceiling : at.top
  const opening = drawerOpening({ openingTop, openingBottom })
  const frontOver = figures.length('drawer.front-over')
  const height = drawerHeight({ frontHeight: at.front.height, frontOver, opening, slideBelow, above, cut })
  const width = drawerWidth({ boxWidth: box.width, carcassThickness: make.leaf.carcass, slideClear, cut })
  const middle = sum(at.front.z, over(less(at.front.height, height), 2))
  const z = longest(shortest(middle, less(openingTop, above, height)), sum(openingBottom, slideBelow))
  return {
    x: sum(box.x, over(less(box.width, width), 2)),
    z,
    width,
    height,
    length: at.length,
    slideLine: slideLine({ drawerBottom: z, boxBottom: box.z, slideUp, cut }),
  }
}
