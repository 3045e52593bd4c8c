import { type FaceRectangle, topOf } from '../../geometry/face-rectangle.ts'
import {
  mantel,
  mantelDepth,
  mantelFrieze,
  mantelLayers,
  mantelLength,
  mantelThickness,
  mantelUnderside,
} from '../../job/chapters/mantel.ts'
import { type Length, less, longest, nanometres, over, shortest, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { lowestUnderside, type PieceByFire } from './clearance.ts'
import type { Firebox } from './firebox.ts'

/** A mantel as it is chosen: a hollow beam with a top of glued layers that stands over it. x in the breast's own x. */
export interface MantelSize {
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

/** The mantel of a breast and the lowest height its fire allows; nothing when none is wanted. */
export interface ChosenMantel {
  readonly size: MantelSize
  readonly lowest: Length | undefined
}

const LAYERS = 2

/** Sizes of the mantel, each answered or suggested in the order they are asked; the underside last, from the clearances. */
export function mantelSize(context: PlanContext, wall: BreastWall, fire: Firebox): ChosenMantel | undefined {
  const { settle, figures } = context
  const { bay } = wall
  if (!settle.choice(mantel, bay, () => ({ value: true, because: 'the breast is the middle of the wall' })))
    return undefined
  const length = settle.choice(mantelLength, bay, () => suggestedLength(context, wall, fire))
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
  const upTo = (underside: Length) => placed(context, wall, fire, { length, depth, frieze, layers, panel, underside })
  const ground = nanometres(0)
  const lowest =
    fire.opening === undefined
      ? undefined
      : lowestUnderside(fire.opening, { underside: ground, pieces: mantelPieces(upTo(ground)) }, fire.rules)
  const underside = settle.choice(mantelUnderside, bay, () => suggestedUnderside(context, fire, lowest))
  return { size: upTo(underside), lowest: lowest === undefined ? undefined : roundedUp(context, lowest) }
}

/** Every piece of the mantel that the fire sees: the beam, and the top over it. */
export const mantelPieces = (size: MantelSize): readonly PieceByFire[] => [
  {
    what: 'mantel’s beam (frieze, ends, soffit)',
    at: { x: size.beamX, z: size.underside, width: size.beamLength, height: size.frieze },
    standsOut: size.beamDepth,
  },
  {
    what: 'mantel’s top',
    at: {
      x: size.x,
      z: sum(size.underside, size.frieze),
      width: size.length,
      height: less(size.top, size.underside, size.frieze),
    },
    standsOut: size.depth,
  },
]

type Chosen = Pick<MantelSize, 'length' | 'depth' | 'frieze' | 'layers' | 'panel' | 'underside'>

function placed({ figures }: PlanContext, wall: BreastWall, fire: Firebox, chosen: Chosen): MantelSize {
  const overSide = figures.length('mantel.over-side')
  const clear = figures.length('mantel.breast-clear')
  const x = startOf(wall, fire.opening, chosen.length, clear)
  return {
    ...chosen,
    x,
    top: sum(chosen.underside, chosen.frieze, times(chosen.panel, chosen.layers)),
    beamX: sum(x, overSide),
    beamLength: less(chosen.length, times(overSide, 2)),
    beamDepth: less(chosen.depth, figures.length('mantel.over-front')),
  }
}

/** Centred over the opening, moved in where that would pass the breast's edge; centred on the breast when it fits no way. */
function startOf(wall: BreastWall, opening: FaceRectangle | undefined, length: Length, clear: Length): Length {
  const room = less(wall.width, length, times(clear, 2))
  if (opening === undefined || room < 0) return over(less(wall.width, length), 2)
  const centred = sum(opening.x, over(less(opening.width, length), 2))
  return shortest(longest(centred, clear), less(wall.width, clear, length))
}

function suggestedLength({ figures, cut }: PlanContext, wall: BreastWall, fire: Firebox) {
  const most = less(wall.width, times(figures.length('mantel.breast-clear'), 2))
  const beyond = times(figures.length('mantel.beyond-opening'), 2)
  const wished = fire.opening === undefined ? most : sum(fire.opening.width, beyond)
  const value = longest(cut.down(shortest(wished, most)), leastOf(mantelLength, figures.units))
  return {
    value,
    because: fire.opening === undefined ? 'as wide as the breast' : 'beyond the opening, within the breast',
  }
}

function suggestedDepth({ figures, cut }: PlanContext, fire: Firebox) {
  const usual = figures.length('mantel.depth')
  if (fire.manualOut === undefined || fire.manualOut >= usual)
    return { value: usual, because: 'a usual shelf over a fire' }
  const value = longest(cut.down(fire.manualOut), leastOf(mantelDepth, figures.units))
  return { value, because: 'as far as the manual lets wood stand out' }
}

function suggestedUnderside(context: PlanContext, fire: Firebox, lowest: Length | undefined) {
  const { figures, show } = context
  if (fire.opening === undefined)
    return { value: figures.length('mantel.height'), because: 'shoulder height of a seat' }
  const usual = sum(topOf(fire.opening), figures.length('mantel.above-opening'))
  const least = lowest === undefined || !namesDistance(fire) ? longest(usual, lowest ?? usual) : lowest
  const value = roundedUp(context, least)
  const shown = show.length(topOf(fire.opening))
  return { value, because: `opening to ${shown}, and the least clearance every layer passes` }
}

/** Whether any text says how far wood stays from the opening. */
const namesDistance = ({ profiles }: Firebox): boolean =>
  profiles.length === 0 || profiles.some(({ opening }) => opening.rule !== 'never over it')

const roundedUp = ({ figures }: PlanContext, least: Length): Length => {
  const step = figures.length('mantel.height-step')
  return nanometres(Math.ceil(least / step) * step)
}

const leastOf = (field: typeof mantelLength, units: 'inch' | 'metric'): Length =>
  field.entry.kind === 'length' ? field.entry.range[units][0] : nanometres(0)
