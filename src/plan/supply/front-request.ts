import type { Part } from '../../things/part.ts'
import { type Length, less, sum } from '../../units/length.ts'
import { carcassThicknessOf } from '../boxes/panel-thickness.ts'
import type { PlanContext } from '../context.ts'
import { cupFigures } from '../fronts/door-choices.ts'
import type { FrontPlan, Leaf } from '../fronts/fronts.ts'

/** Bought leaves with what the door shop must know of each: hinge side, overlay, cups, handle holes. */
export function withFrontDetails(
  context: PlanContext,
  parts: readonly Part[],
  { style, leaves }: FrontPlan,
): readonly Part[] {
  const leafOf = new Map(leaves.map((leaf) => [leaf.mark, leaf]))
  return parts.map((part) => {
    const leaf = leafOf.get(part.mark)
    return leaf === undefined ? part : { ...part, details: [`style: ${style}`, ...leafDetails(context, leaf)] }
  })
}

function leafDetails(context: PlanContext, leaf: Leaf): readonly string[] {
  const { show } = context
  return [
    `hung on the ${leaf.hingeSide}, seen from the front`,
    `overlay at the hinge side ${show.withUnit(overlayOf(context, leaf))}, to choose the hinge by`,
    `${leaf.cups.length} cups, centres ${leaf.cups.map(show.length).join(', ')} from the lower end`,
    ...leaf.handleHoles.map(
      (hole) =>
        `handle hole ${show.withUnit(hole.fromHandleEdge)} from the edge away from the hinges, ` +
        `${show.withUnit(hole.fromTop)} from the top`,
    ),
  ]
}

/** How far the leaf lies over the box side it hangs on: side thickness − margin there. */
function overlayOf(context: PlanContext, leaf: Leaf): Length {
  const { box } = leaf
  const left = less(leaf.x, box.x)
  const right = less(sum(box.x, box.width), sum(leaf.x, leaf.width))
  return less(carcassThicknessOf(context), leaf.hingeSide === 'left' ? left : right)
}

/** Drilling that is the same on every leaf. */
export function drillingFor(context: PlanContext, { leaves }: FrontPlan): readonly string[] {
  if (leaves.length === 0) return []
  const { show } = context
  const { diameter, fromEdge, depth } = cupFigures(context)
  return [
    `Hinge cups ${show.withUnit(diameter)} across, ${show.withUnit(depth)} deep, centre ${show.withUnit(fromEdge)} from the hinge edge.`,
    'The sheet of the hinge governs: ask for it before drilling.',
    'Handle holes through, backed against breaking out.',
  ]
}
