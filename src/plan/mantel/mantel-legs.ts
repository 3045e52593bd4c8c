import { type FaceRectangle, rightOf, separationOf } from '../../geometry/face-rectangle.ts'
import { hearthTop, legDepth, legWidth, mantelLegs } from '../../job/chapters/mantel.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { BayId } from '../../things/place.ts'
import { type Length, less, longest, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import type { PieceByFire } from './clearance.ts'
import type { Firebox } from './firebox.ts'
import type { Hearthstone } from './hearth-facts.ts'
import { legHeight, legReturn, suggestedLegDepth } from './leg-sums.ts'
import type { MantelBeam } from './mantel-size.ts'

/** The two legs of a mantel: each a front board, with sides where it stands out enough for them. */
export interface MantelLegs {
  readonly width: Length
  readonly standsOut: Length
  /** Behind the front board: filled by sides, or packed out. */
  readonly return: Length
  readonly make: 'box' | 'flat board'
  readonly left: Leg
  readonly right: Leg
  /** What a leg waits for besides the mantel: the hearth it may stand on. */
  readonly waitsFor: readonly QuestionKey[]
}

/** One leg in the plane of the face, and what it stands on. */
export interface Leg {
  readonly side: 'left' | 'right'
  readonly at: FaceRectangle
  readonly foot: 'hearth' | 'floor'
  /** How much further the hearth would have to reach for it; 0 when it reaches far enough. */
  readonly offHearth: { readonly side: Length; readonly front: Length }
}

/** Subject and id of one leg: its parts' ids begin with it. */
export const legId = (bay: BayId, side: Leg['side']): string => `${bay}/mantel/leg-${side}`

/** Both legs, left first. */
export const bothLegs = ({ left, right }: MantelLegs): readonly Leg[] => [left, right]

/** The legs as the fire sees them. */
export const legPieces = (legs: MantelLegs): readonly PieceByFire[] =>
  bothLegs(legs).map(({ side, at }) => ({ what: `${side} leg`, at, standsOut: legs.standsOut }))

/** Legs where they are wanted: outer edges under the ends of the frieze, feet on the hearth or on the floor. */
export function mantelLegsOf(
  context: PlanContext,
  { bay }: BreastWall,
  fire: Firebox,
  beam: MantelBeam,
): MantelLegs | undefined {
  const { settle, figures } = context
  if (!settle.choice(mantelLegs, bay, () => ({ value: false, because: 'the ledger carries the mantel without them' })))
    return undefined
  const width = settle.choice(legWidth, bay, () => suggestedWidth(context, fire, beam))
  const standsOut = settle.choice(legDepth, bay, () => depthSuggestion(context, fire, beam, width))
  const stone = settle.measured(hearthTop, bay, () => ({ value: ZERO, because: 'level with the floor' })).value
  const legs = sidesOf(beam, width).map(({ side, x }) => {
    const at = { x, z: ZERO, width, height: beam.underside }
    const offHearth = offHearthOf(fire, at, standsOut)
    const onStone = fire.hearth !== undefined && offHearth.side === 0 && offHearth.front === 0
    const foot = onStone ? stone : ZERO
    const height = within(legId(bay.id, side), () => legHeight({ mantelUnderside: beam.underside, foot }))
    return { side, at: { ...at, z: foot, height }, foot: onStone ? ('hearth' as const) : ('floor' as const), offHearth }
  })
  const [left, right] = legs
  if (left === undefined || right === undefined) return undefined
  const behind = legReturn({ legDepth: standsOut, mantelThickness: beam.panel })
  return {
    width,
    standsOut,
    return: behind,
    make: behind < figures.length('leg.box-least') ? 'flat board' : 'box',
    left,
    right,
    waitsFor: fire.hearth?.waitsFor ?? [],
  }
}

const sidesOf = ({ beamX, beamLength }: MantelBeam, width: Length) => [
  { side: 'left' as const, x: beamX },
  { side: 'right' as const, x: less(sum(beamX, beamLength), width) },
]

function suggestedWidth(context: PlanContext, fire: Firebox, beam: MantelBeam) {
  const usual = context.figures.length('leg.width')
  const because = 'the usual width, no nearer to the opening than a flat board may stand'
  const value = widestLeg(context, fire, beam, { most: usual, standsOut: beam.panel })
  return { value: value ?? smallestLeg(context), because }
}

/** The widest leg, on the cut step, that may stand out this far; undefined when none of them may. */
export function widestLeg(
  context: PlanContext,
  fire: Firebox,
  beam: MantelBeam,
  of: { readonly most: Length; readonly standsOut: Length },
): Length | undefined {
  const { cut } = context
  const steps = Math.max(0, Math.floor((of.most - smallestLeg(context)) / cut.step))
  const widths = Array.from({ length: steps + 1 }, (_, i) => cut.down(less(of.most, times(cut.step, i))))
  return widths.find((width) => mostOut(fire, beam, width) >= of.standsOut)
}

const smallestLeg = ({ figures }: PlanContext): Length =>
  legWidth.entry.kind === 'length' ? legWidth.entry.range[figures.units][0] : ZERO

function depthSuggestion({ figures, cut }: PlanContext, fire: Firebox, beam: MantelBeam, width: Length) {
  const value = suggestedLegDepth({
    usual: figures.length('leg.depth'),
    beamDepth: beam.beamDepth,
    allowed: mostOut(fire, beam, width),
    mantelThickness: beam.panel,
    cut,
  })
  return { value, because: 'within the frieze, no further out than the fire allows there', from: suggestedLegDepth }
}

/** The furthest either leg of this width may stand out; 0 where no wood may stand. */
function mostOut({ opening, rules }: Firebox, beam: MantelBeam, width: Length): Length {
  if (opening === undefined) return beam.depth
  const limits = sidesOf(beam, width).flatMap(({ x }) => {
    const apart = separationOf(opening, { x, z: ZERO, width, height: beam.underside })
    return rules.map((rule) => {
      const most = rule.mostOut({ ...apart, standsOut: ZERO })
      return most === 'any' ? beam.depth : most === 'none' ? ZERO : most
    })
  })
  return shortest(beam.depth, ...limits)
}

/** How far the zone's part of a leg stands beyond the hearth, to the side and in front. */
function offHearthOf({ opening, hearth }: Firebox, at: FaceRectangle, standsOut: Length): Leg['offHearth'] {
  if (opening === undefined || hearth === undefined) return { side: ZERO, front: ZERO }
  const reach = reachOf(opening, hearth, at)
  return { side: longest(ZERO, less(reach.to, reach.stone)), front: longest(ZERO, less(standsOut, hearth.front)) }
}

/** From the opening to the leg's outer edge, and how far the hearth reaches on that side. */
function reachOf(opening: FaceRectangle, hearth: Hearthstone, at: FaceRectangle) {
  return at.x < opening.x
    ? { to: less(opening.x, at.x), stone: hearth.left }
    : { to: less(rightOf(at), rightOf(opening)), stone: hearth.right }
}

/** Whether a leg that does not stand on the stone reaches into the zone that stays free of wood. */
export function inZone({ opening, hearth }: Firebox, leg: Leg): boolean {
  if (opening === undefined || hearth === undefined || leg.foot === 'hearth') return false
  const { beside } = separationOf(opening, leg.at)
  if (beside >= hearth.zone.side) return false
  const { stone, to } = reachOf(opening, hearth, leg.at)
  return leg.offHearth.front > 0 || stone < shortest(to, hearth.zone.side)
}

/** Names the question about legs, for what stops them. */
export const aboutLegs = (bay: BreastWall['bay']): QuestionKey => questionKey(bay.id, legDepth)
