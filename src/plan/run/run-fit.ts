import { edgeAt } from '../../geometry/edge.ts'
import { fillerWidth, fitLeft, fitRight } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, shortest, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import { outlineStations } from '../survey/outline.ts'
import type { AlcoveWall, RunnableWall } from '../survey/survey.ts'
import type { RunLevel } from './run-levels.ts'

export type WallFit = 'filler' | 'caulk'

/** Where a plumb, square body of the run's height can stand: the least clear space of both faces at every height. */
export interface Slot {
  readonly low: Length
  readonly high: Length
}

/** Both faces count, because a box also passes the front on its way in. */
export const slotWidth = formula<Slot, Length>(
  {
    id: 'slot.width',
    plain: 'right limit − left limit, least over both faces and all heights of the box',
    source: 'geometry',
  },
  ({ low, high }) => less(high, low),
)

/** The slot of an alcove between two heights. */
export function slotOf(wall: AlcoveWall, z0: Length, z1: Length): Slot {
  const [first = z0, ...others] = outlineStations(wall, z0, z1)
  const lowAt = (z: Length) => longest(edgeAt(wall.left.back, z), edgeAt(wall.left.front, z))
  const highAt = (z: Length) => shortest(edgeAt(wall.right.back, z), edgeAt(wall.right.front, z))
  return { low: longest(lowAt(first), ...others.map(lowAt)), high: shortest(highAt(first), ...others.map(highAt)) }
}

/** Gap between the run's own side and the return's front edge, from the foot to the top of the run. */
export const gapsAlong = (wall: AlcoveWall, level: RunLevel, side: 'left' | 'right', x: Length): readonly Length[] =>
  outlineStations(wall, level.z0, level.z1).map((z) =>
    side === 'left' ? less(x, edgeAt(wall.left.front, z)) : less(edgeAt(wall.right.front, z), x),
  )

/** How one side of a run meets its wall; settled, with the reason. */
export function fitOf(context: PlanContext, level: RunLevel, side: 'left' | 'right'): WallFit {
  const field = side === 'left' ? fitLeft : fitRight
  return context.settle.choice(field, level.wall.bay, () => suggestedFit(context, level, side))
}

function suggestedFit(context: PlanContext, level: RunLevel, side: 'left' | 'right') {
  const most = context.figures.length('caulk.most')
  if (hasDoors(context)) return { value: 'filler' as const, because: 'a hinged leaf needs room to swing past the wall' }
  if (level.wall.kind === 'flat') return { value: 'filler' as const, because: 'the wall there was not measured' }
  const widest = caulkedGap(context, level.wall, level, side)
  return widest <= most
    ? { value: 'caulk' as const, because: `the gap stays within ${context.show.withUnit(most)}` }
    : { value: 'filler' as const, because: `a caulked gap would open to ${context.show.withUnit(widest)}` }
}

/** Widest front gap a caulked side would have, tested before the left-over is placed. */
export function caulkedGap(context: PlanContext, wall: AlcoveWall, level: RunLevel, side: 'left' | 'right'): Length {
  const k = context.figures.length('caulk.fit')
  const slot = slotOf(wall, level.z0, level.z1)
  const x = side === 'left' ? sum(slot.low, k) : less(slot.high, k)
  const [first = k, ...others] = gapsAlong(wall, level, side, x)
  return longest(first, ...others)
}

/** Nominal width of a filler in this bay; asked only where a side has one. */
export const fillerNominalOf = (
  context: PlanContext,
  wall: RunnableWall,
  asked: 'has a filler' | 'has none',
): Length => {
  const usual = context.figures.length('filler.nominal')
  return asked === 'has a filler'
    ? context.settle.choice(fillerWidth, wall.bay, () => ({ value: usual, because: 'room to scribe to the wall' }))
    : usual
}
