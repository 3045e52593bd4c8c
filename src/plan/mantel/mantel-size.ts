import { topOf } from '../../geometry/face-rectangle.ts'
import {
  mantel,
  mantelDepth,
  mantelFrieze,
  mantelLayers,
  mantelLength,
  mantelThickness,
  mantelUnderside,
} from '../../job/chapters/mantel.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import type { PieceByFire } from './clearance.ts'
import type { Firebox } from './firebox.ts'
import { type MantelLegs, mantelLegsOf } from './mantel-legs.ts'
import {
  beamDepth,
  beamLength,
  lowestOverFire,
  mantelTop,
  mantelX,
  suggestedLength,
  undersideFrom,
  usualOverFire,
} from './mantel-sums.ts'

/** The beam and its top, as chosen. x in the breast's own x. */
export interface MantelBeam {
  readonly x: Length
  readonly length: Length
  readonly depth: Length
  readonly underside: Length
  readonly frieze: Length
  readonly layers: number
  readonly panel: Length
  readonly top: Length
  /** The beam under the top. */
  readonly beamX: Length
  readonly beamLength: Length
  readonly beamDepth: Length
}

/** A mantel as it is chosen: a hollow beam with a top of glued layers that stands over it, and legs under it when wanted. */
export interface MantelSize extends MantelBeam {
  readonly legs: MantelLegs | undefined
}

/** The mantel of a breast and the lowest height its fire allows; nothing when none is wanted. */
export interface ChosenMantel {
  readonly size: MantelSize
  readonly lowest: Length | undefined
}

const LAYERS = 2

/** Sizes of the mantel, each answered or suggested in the order they are asked; the underside from the clearances, then the legs. */
export function mantelSize(context: PlanContext, wall: BreastWall, fire: Firebox): ChosenMantel | undefined {
  const { settle, figures } = context
  const { bay } = wall
  if (!settle.choice(mantel, bay, () => ({ value: true, because: 'the breast is the middle of the wall' })))
    return undefined
  const length = settle.choice(mantelLength, bay, () => lengthSuggestion(context, wall, fire))
  const depth = settle.choice(mantelDepth, bay, () => suggestedDepth(context, fire))
  const frieze = settle.choice(mantelFrieze, bay, () => ({
    value: figures.length('mantel.frieze'),
    because: 'a beam you see from the room',
  }))
  const layers = settle.choice(mantelLayers, bay, () => ({
    value: LAYERS,
    because: 'two glued layers look like a slab',
  }))
  const panel = settle.choice(mantelThickness, bay, () => ({
    value: figures.length('panel.mantel'),
    origin: 'assumed',
    because: 'its name at the counter: put the caliper on it',
  }))
  const outline = outlineOf(context, wall, fire, { length, depth, frieze, layers, panel })
  const least = lowest(fire, outline)
  const underside = settle.choice(mantelUnderside, bay, () => suggestedUnderside(context, fire, least))
  const beam = standingAt(outline, underside)
  return {
    size: { ...beam, legs: mantelLegsOf(context, wall, fire, beam) },
    lowest: least === undefined ? undefined : roundedUp(context, least),
  }
}

/** Every piece of the beam that the fire sees: the beam itself, and the top over it. */
export const beamPieces = (beam: MantelBeam): readonly PieceByFire[] => [
  {
    what: 'mantel’s beam (frieze, ends, soffit)',
    at: { x: beam.beamX, z: beam.underside, width: beam.beamLength, height: beam.frieze },
    standsOut: beam.beamDepth,
  },
  {
    what: 'mantel’s top',
    at: {
      x: beam.x,
      z: sum(beam.underside, beam.frieze),
      width: beam.length,
      height: less(beam.top, beam.underside, beam.frieze),
    },
    standsOut: beam.depth,
  },
]

type Outline = Omit<MantelBeam, 'underside' | 'top'>
type Chosen = Pick<MantelBeam, 'length' | 'depth' | 'frieze' | 'layers' | 'panel'>

/** Everything of the beam but its height. */
function outlineOf({ figures }: PlanContext, wall: BreastWall, fire: Firebox, chosen: Chosen): Outline {
  const { opening } = fire
  const overSide = figures.length('mantel.over-side')
  const x = mantelX({
    openingX: opening?.x ?? ZERO,
    openingWidth: opening?.width ?? ZERO,
    breastWidth: wall.width,
    breastClear: figures.length('mantel.breast-clear'),
    mantelLength: chosen.length,
  })
  return {
    ...chosen,
    x,
    beamX: sum(x, overSide),
    beamLength: beamLength({ mantelLength: chosen.length, overSide }),
    beamDepth: beamDepth({ mantelDepth: chosen.depth, overFront: figures.length('mantel.over-front') }),
  }
}

const standingAt = (outline: Outline, underside: Length): MantelBeam => ({
  ...outline,
  underside,
  top: mantelTop({
    mantelUnderside: underside,
    mantelFrieze: outline.frieze,
    mantelLayers: outline.layers,
    mantelThickness: outline.panel,
  }),
})

function lowest({ opening, rules }: Firebox, outline: Outline): Length | undefined {
  if (opening === undefined) return undefined
  const ground = { ...outline, underside: ZERO, top: sum(outline.frieze, outline.panel) }
  return lowestOverFire({
    openingZ: opening.z,
    openingHeight: opening.height,
    given: { opening, pieces: beamPieces(ground), rules },
  })
}

function lengthSuggestion({ figures, cut }: PlanContext, wall: BreastWall, { opening }: Firebox) {
  const value = suggestedLength({
    openingWidth: opening?.width ?? ZERO,
    beyondOpening: figures.length('mantel.beyond-opening'),
    breastWidth: wall.width,
    breastClear: figures.length('mantel.breast-clear'),
    smallest: leastOf(mantelLength, figures.units),
    cut,
  })
  const because = opening === undefined ? 'as wide as the breast' : 'beyond the opening, within the breast'
  return { value, because, from: suggestedLength }
}

function suggestedDepth({ figures, cut }: PlanContext, fire: Firebox) {
  const usual = figures.length('mantel.depth')
  if (fire.manualOut === undefined || fire.manualOut >= usual)
    return { value: usual, because: 'a usual shelf over a fire', from: { id: 'mantel.depth' } }
  const value = longest(cut.down(fire.manualOut), leastOf(mantelDepth, figures.units))
  return { value, because: 'as far as the manual lets wood stand out' }
}

function suggestedUnderside(context: PlanContext, fire: Firebox, least: Length | undefined) {
  const { figures, show } = context
  if (fire.opening === undefined)
    return {
      value: figures.length('mantel.height'),
      because: 'shoulder height of a seat',
      from: { id: 'mantel.height' },
    }
  const { z, height } = fire.opening
  const usual = () =>
    usualOverFire({ openingZ: z, openingHeight: height, aboveOpening: figures.length('mantel.above-opening') })
  const value = roundedUp(
    context,
    least === undefined || !namesDistance(fire) ? longest(least ?? ZERO, usual()) : least,
  )
  const shown = show.length(topOf(fire.opening))
  return {
    value,
    because: `opening to ${shown}, and the least clearance every layer passes`,
    from: undersideFrom,
  }
}

/** Whether any text says how far wood stays from the opening. */
const namesDistance = ({ profiles }: Firebox): boolean =>
  profiles.length === 0 || profiles.some(({ opening }) => opening.rule !== 'never over it')

const roundedUp = ({ figures }: PlanContext, leastHeight: Length): Length =>
  undersideFrom({ leastHeight, heightStep: figures.length('mantel.height-step') })

const leastOf = (field: typeof mantelLength, units: 'inch' | 'metric'): Length =>
  field.entry.kind === 'length' ? field.entry.range[units][0] : ZERO
