import type { FrontKind, LeafSize } from '../../kinds/front/contract.ts'
import { formula, type Ref, within } from '../../things/formula.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { pieceMass } from '../fixings/masses.ts'
import { boxPartMark } from '../marks.ts'
import type { CupFigures, HandleChoice } from './door-choices.ts'
import type { Face } from './face.ts'
import { piecesThatAre } from './front-parts.ts'
import type { Leaf } from './fronts.ts'
import { handleHoles } from './handles.ts'
import { armFor, cupCentres, cupsClearOf, hingeCount, hingeOverlay, mostHinges } from './hinges.ts'
import { leafWidth } from './leaf-widths.ts'

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

/** Where the leaves of one box stand: the whole face, or what its drawers leave. */
export type LeafFace = Face & { readonly heightFrom: Ref }

/** A leaf lower than this has no room for its two cups. */
export const leastLeafHeight = (context: PlanContext): Length => times(context.figures.length('hinge.cup-end'), 2)

/** The leaves of one box from the left, all equal; what rounding leaves over opens the gaps between them. */
export function leavesOf(
  context: PlanContext,
  plan: BoxPlan,
  make: LeafMake,
  face: LeafFace,
  leaves: number,
): readonly Leaf[] {
  const { figures, cut } = context
  const { height } = face
  const width = leafWidth({ leafRoom: face.width, gap: figures.length('door.gap'), leaves, cut })
  // Narrower than twice the cup's distance from the edge: nothing to hang; said by a stop.
  if (width <= times(make.cup.fromEdge, 2) || height <= leastLeafHeight(context)) return []
  const spread = leaves === 1 ? ZERO : over(less(face.width, width), leaves - 1)
  return Array.from({ length: leaves }, (_, i) =>
    within(`${face.box.id}/leaf-${i + 1}`, () =>
      leafAt(context, plan, make, face, { index: i, count: leaves, width, x: sum(face.x, times(spread, i)) }),
    ),
  )
}

interface LeafPlace {
  readonly index: number
  readonly count: number
  readonly width: Length
  readonly x: Length
}

function leafAt(context: PlanContext, plan: BoxPlan, make: LeafMake, face: LeafFace, at: LeafPlace): Leaf {
  const { figures } = context
  const { box, z, height } = face
  const { width, x } = at
  const from = { width: leafWidth, height: face.heightFrom }
  const mass = massOfFront(context, make, { width, height, from })
  const hinges = hingeCount({ height, width, mass, figures }) ?? mostHinges
  const hingeSide = hingeSideOf(context, plan, box, at)
  const margin = hingeSide === 'left' ? less(x, box.x) : less(sum(box.x, box.width), sum(x, width))
  const overlay = hingeOverlay({ carcassThickness: make.carcass, margin })
  const cups = cupsOf(context, { box, z, height, hinges })
  return {
    box,
    mark: boxPartMark(box.run.bay, box.number, 'D', at.index + 1),
    id: `${box.id}/leaf-${at.index + 1}`,
    x,
    z,
    width,
    height,
    thickness: make.thickness,
    hingeSide,
    hinges,
    cups,
    plates: cups.map((cup) => plateHeight({ cup, leafUp: less(z, box.z) })),
    overlay,
    arm: armFor(overlay, figures)?.says,
    cupFromEdge: make.cup.fromEdge,
    handleHoles: handleHoles(context, make, { run: box.run, bottom: z, top: sum(z, height) }),
    mass,
    waitsFor: box.waitsFor,
    from,
  }
}

/** Centre of a hinge plate from the lower edge of its box: a set-out number. */
export const plateHeight = formula<{ cup: Length; leafUp: Length }, Length>(
  {
    id: 'fronts.plate',
    plain: 'cup centre from the leaf’s lower end + leaf above the lower edge of the box',
    source: 'geometry',
    from: { cup: [{ id: 'fronts.cups' }, { id: 'fronts.cup-clear' }] },
  },
  ({ cup, leafUp }) => sum(cup, leafUp),
)

interface CupWork {
  readonly box: Box
  readonly z: Length
  readonly height: Length
  readonly hinges: number
}

/** Cup centres of a leaf, slid clear of whatever level panel is fixed across its box behind it. */
function cupsOf({ figures, cut }: PlanContext, { box, z, height, hinges }: CupWork): readonly Length[] {
  const even = cupCentres({ leafHeight: height, hinges, cupEnd: figures.length('hinge.cup-end'), cut })
  const up = less(z, box.z)
  const behind = box.fixedShelves
    .map(({ from, to }) => ({ from: less(from, up), to: less(to, up) }))
    .filter(({ from, to }) => to > 0 && from < height)
  return cupsClearOf(even, behind, { height, cupClear: figures.length('hinge.cup-clear'), cut })
}

/** Mass of a leaf or drawer front: the sum of its pieces. */
export function massOfFront(
  { figures }: PlanContext,
  make: Pick<LeafMake, 'kind' | 'thickness' | 'frame'>,
  size: Pick<LeafSize, 'width' | 'height' | 'from'>,
): Mass {
  const density = figures.number('density.mdf')
  const pieces = piecesThatAre(make.kind, { ...size, thickness: make.thickness, frame: make.frame, figures })
  return leafMass({
    pieceMasses: pieces.map(({ length, width, thickness }) => pieceMass({ length, width, thickness, density })),
  })
}

/** Mass of one leaf, kg. */
export const leafMass = formula<{ pieceMasses: readonly Mass[] }, Mass>(
  {
    id: 'fronts.leaf-mass',
    plain: 'sum of its pieces',
    source: 'geometry',
    gives: 'mass',
    from: { pieceMasses: pieceMass },
    units: { pieceMasses: 'mass' },
  },
  ({ pieceMasses }) => kilograms(pieceMasses.reduce((total, mass) => total + mass, 0)),
)

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
  const boxes = Math.max(...plan.boxes.filter((b) => b.run.bay.id === box.run.bay.id).map((b) => b.number))
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
