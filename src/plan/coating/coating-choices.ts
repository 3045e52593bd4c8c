import {
  builtInColour,
  builtInSystem,
  masonryColour,
  masonrySystem,
  paintMethod,
  paintPlace,
  wallColour,
} from '../../job/chapters/finish.ts'
import { COATINGS, type CoatingSystem } from '../../kinds/coating.ts'
import type { SurfaceId } from '../../things/part.ts'
import type { PlanContext } from '../context.ts'

export type Method = 'hand' | 'hvlp' | 'airless'
export type PaintedWhere = 'shop' | 'site' | 'spray shop'

/** What was chosen for the finish: a system for each surface, how and where the built-ins are painted, the colours. */
export interface CoatingChoices {
  readonly systems: Readonly<Partial<Record<SurfaceId, CoatingSystem>>>
  readonly method: Method
  readonly where: PaintedWhere
  readonly colours: Readonly<Record<SurfaceId, string>>
}

/** Settles the questions of the finish. A spray shop brings its own gun. */
export function coatingChoices(context: PlanContext, painter: 'here' | 'spray shop'): CoatingChoices {
  const builtIn = builtInSystemOf(context)
  const masonry = masonrySystemOf(context)
  const wall = systemsFor('wall')[0]
  return {
    systems: {
      ...(builtIn === undefined ? {} : { 'built-in': builtIn }),
      ...(masonry === undefined ? {} : { masonry }),
      ...(wall === undefined ? {} : { wall }),
    },
    ...(painter === 'spray shop' ? SPRAY_SHOP : { method: methodOf(context, builtIn), where: placeOf(context) }),
    colours: coloursOf(context),
  }
}

const SPRAY_SHOP = { method: 'hvlp', where: 'spray shop' } as const

/** The systems made for a surface, in the order of the list. */
const systemsFor = (surface: SurfaceId): readonly CoatingSystem[] =>
  Object.values(COATINGS).filter((system) => system.surfaces.includes(surface))

const SUGGESTED_BUILT_IN = 'water-polyurethane'

function builtInSystemOf({ settle }: PlanContext): CoatingSystem | undefined {
  const id = settle.choice(builtInSystem, undefined, () => ({
    value: SUGGESTED_BUILT_IN,
    because: 'enough where no food, water or chemicals come near',
  }))
  return COATINGS[id]
}

function masonrySystemOf({ settle, bays }: PlanContext): CoatingSystem | undefined {
  const [first] = systemsFor('masonry')
  if (first === undefined || !bays.some((bay) => bay.kind === 'breast')) return first
  const id = settle.choice(masonrySystem, undefined, () => ({ value: first.id, because: 'lets the masonry breathe' }))
  return COATINGS[id] ?? first
}

function methodOf({ settle }: PlanContext, system: CoatingSystem | undefined): Method {
  const usual: Method = system?.methods.includes('hvlp') === false ? (system.methods[0] ?? 'hand') : 'hvlp'
  return settle.choice(paintMethod, undefined, () => ({ value: usual, because: 'smoothest on doors' }))
}

const placeOf = ({ settle }: PlanContext): PaintedWhere =>
  settle.choice(paintPlace, undefined, () => ({ value: 'shop' as const, because: 'no mist in the client’s house' }))

const coloursOf = ({ settle }: PlanContext): CoatingChoices['colours'] => ({
  'built-in': settle.asked(builtInColour, undefined) ?? '',
  masonry: settle.asked(masonryColour, undefined) ?? '',
  wall: settle.asked(wallColour, undefined) ?? '',
})
