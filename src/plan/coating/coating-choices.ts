import {
  builtInColour,
  builtInSystem,
  masonryColour,
  masonrySystem,
  paintMethod,
  paintPlace,
  wallColour,
} from '../../job/chapters/finish.ts'
import { type CoatingSystem, coatingSystem, coatingsFor } from '../../kinds/coating.ts'
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
  const wall = systemFor(context, 'wall')
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

const SUGGESTED_BUILT_IN = 'water-polyurethane'

function builtInSystemOf(context: PlanContext): CoatingSystem | undefined {
  const id = context.settle.choice(builtInSystem, undefined, () => ({
    value: SUGGESTED_BUILT_IN,
    because: 'enough where no food, water or chemicals come near',
  }))
  return systemFor(context, 'built-in', id)
}

function masonrySystemOf(context: PlanContext): CoatingSystem | undefined {
  const [first] = coatingsFor('masonry')
  if (first === undefined || !context.bays.some((bay) => bay.kind === 'breast')) return undefined
  const because = 'lets the masonry breathe'
  const id = context.settle.choice(masonrySystem, undefined, () => ({ value: first.id, because }))
  return systemFor(context, 'masonry', id)
}

/** The system of this id for a surface; the first made for it when none is named. */
function systemFor({ figures }: PlanContext, surface: SurfaceId, id?: string): CoatingSystem | undefined {
  const rows = coatingsFor(surface)
  const row = rows.find((system) => system.id === id) ?? rows[0]
  return row === undefined ? undefined : coatingSystem(row, figures)
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
