import type { Part } from '../../things/part.ts'
import type { PlanContext } from '../context.ts'
import { checkWords, cupFigures } from '../fronts/door-choices.ts'
import type { Drawer } from '../fronts/drawers.ts'
import { isOfFront } from '../fronts/front.ts'
import type { FrontPlan, Leaf } from '../fronts/fronts.ts'

/** Bought fronts with what the door shop must know of each: hinge side, overlay, cups, handle holes. */
export function withFrontDetails(
  context: PlanContext,
  parts: readonly Part[],
  { style, leaves, drawers, drawerMake }: FrontPlan,
): readonly Part[] {
  const leafOf = new Map(leaves.map((leaf) => [leaf.mark, leaf]))
  const drawerOf = new Map(drawers.map((drawer) => [drawer.mark, drawer]))
  return parts.map((part) => {
    const leaf = leafOf.get(part.mark)
    if (leaf !== undefined) return { ...part, details: [`style: ${style}`, ...leafDetails(context, leaf)] }
    const drawer = drawerOf.get(part.mark)
    return drawer === undefined || !isOfFront(part, drawer)
      ? part
      : { ...part, details: [`style: ${drawerMake?.kind.id ?? style}`, ...drawerDetails(context, drawer)] }
  })
}

function leafDetails({ show }: PlanContext, leaf: Leaf): readonly string[] {
  return [
    `hung on the ${leaf.hingeSide}, seen from the front`,
    `overlay at the hinge side ${show.withUnit(leaf.overlay)}, to choose the hinge by`,
    `${leaf.cups.length} cups, centres ${leaf.cups.map(show.length).join(', ')} from the lower end`,
    ...leaf.handleHoles.map(
      (hole) =>
        `handle hole ${show.withUnit(hole.fromHandleEdge)} from the edge away from the hinges, ` +
        `${show.withUnit(hole.fromTop)} from the top`,
    ),
  ]
}

const drawerDetails = ({ show }: PlanContext, { holes }: Drawer): readonly string[] => [
  'drawer front, no hinges',
  ...holes.map(
    (hole) =>
      `handle hole ${show.withUnit(hole.fromLeft)} from its left edge, ${show.withUnit(hole.fromTop)} from the top`,
  ),
]

/** Drilling that is the same on every leaf. */
export function drillingFor(context: PlanContext, { leaves, drawers }: FrontPlan): readonly string[] {
  const { show } = context
  const { diameter, fromEdge, depth, known } = cupFigures(context)
  return [
    ...(leaves.length === 0
      ? []
      : [
          `Hinge cups ${show.withUnit(diameter)} across, ${show.withUnit(depth)} deep, centre ${show.withUnit(fromEdge)} from the hinge edge${checkWords(known, 'hinge')}.`,
          'The sheet of the hinge governs: ask for it before drilling.',
        ]),
    ...(leaves.length + drawers.length === 0 ? [] : ['Handle holes through, backed against breaking out.']),
  ]
}
