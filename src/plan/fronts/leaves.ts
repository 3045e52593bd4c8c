import type { FrontKind } from '../../kinds/front/contract.ts'
import { inMetres, type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { boxPartMark } from '../marks.ts'
import type { CupFigures, HandleChoice } from './door-choices.ts'
import type { Leaf } from './fronts.ts'
import { handleHoles } from './handles.ts'
import { cupCentres, hingeCount } from './hinges.ts'
import { leafMargins, leafWidth } from './leaf-widths.ts'

/** How all leaves of the job are made and hung. */
export interface LeafMake {
  readonly kind: FrontKind
  /** Width of stiles and rails. */
  readonly frame: Length
  readonly cup: CupFigures
  readonly handle: HandleChoice
  readonly thickness: Length
  readonly carcass: Length
}

/** Hinges put on a leaf the tables do not reach; the stop that says so is raised beside it. */
const MOST_HINGES = 5

/** The leaves of one box from the left, all equal; what rounding leaves over opens the gaps between them. */
export function leavesOf(
  context: PlanContext,
  plan: BoxPlan,
  make: LeafMake,
  box: Box,
  count: number,
): readonly Leaf[] {
  const { figures, cut } = context
  const margins = leafMargins(context, box, plan)
  const room = less(box.width, margins.left, margins.right)
  const width = leafWidth({ room, gap: figures.length('door.gap'), count, cut })
  const bottom = figures.length('door.reveal-bottom')
  const height = cut.downHalf(less(box.height, figures.length('door.reveal-top'), bottom))
  // Narrower than twice the cup's distance from the edge: nothing to hang; said by a stop.
  if (width <= times(make.cup.fromEdge, 2) || height <= times(figures.length('hinge.cup-end'), 2)) return []
  const mass = massOf(context, make, width, height)
  const hinges = hingeCount({ height, width, mass, figures }) ?? MOST_HINGES
  const spread = count === 1 ? ZERO : over(less(room, width), count - 1)
  const z = sum(box.run.z0, bottom)
  return Array.from({ length: count }, (_, i): Leaf => {
    const hingeSide = hingeSideOf(context, plan, box, { index: i, count })
    return {
      box,
      mark: boxPartMark(box.run.bay, box.number, 'D', i + 1),
      id: `${box.id}/leaf-${i + 1}`,
      x: sum(box.x, margins.left, times(spread, i)),
      z,
      width,
      height,
      thickness: make.thickness,
      hingeSide,
      hinges,
      cups: cupCentres({ height, count: hinges, fromEnd: figures.length('hinge.cup-end'), cut }),
      cupFromEdge: make.cup.fromEdge,
      handleHoles: handleHoles(context, make, { run: box.run, top: sum(z, height) }),
      mass,
      waitsFor: box.waitsFor,
    }
  })
}

function massOf(context: PlanContext, make: LeafMake, width: Length, height: Length): Mass {
  const { figures } = context
  const pieces = make.kind.pieces({ width, height, thickness: make.thickness, frame: make.frame, figures })
  const volume = pieces.reduce((v, p) => v + inMetres(p.length) * inMetres(p.width) * inMetres(p.thickness), 0)
  return kilograms(volume * figures.number('density.mdf'))
}

/**
 * A pair hangs on its two outer edges. A single leaf hangs on the side of a wall filler beside it, else on the side
 * away from the breast; between other boxes on the nearer end of the run.
 */
function hingeSideOf(
  context: PlanContext,
  plan: BoxPlan,
  box: Box,
  at: { readonly index: number; readonly count: number },
): Leaf['hingeSide'] {
  if (at.count > 1) return at.index < at.count / 2 ? 'left' : 'right'
  const boxes = plan.boxes.filter((b) => b.run.bay.id === box.run.bay.id).length
  if (boxes === 1) return singleBoxSide(context, box)
  return box.number <= boxes / 2 ? 'left' : 'right'
}

function singleBoxSide(context: PlanContext, box: Box): Leaf['hingeSide'] {
  const { run } = box
  const breastAtLeft = context.bays[run.bay.index - 1]?.kind === 'breast'
  const away = breastAtLeft ? 'right' : 'left'
  const towards = breastAtLeft ? 'left' : 'right'
  return run[away].fit === 'caulk' ? towards : away
}
