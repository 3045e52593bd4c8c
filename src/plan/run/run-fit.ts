import { boxCount, boxWidths, fillerWidth, fitLeft, fitRight } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import { drawersAsked } from '../fronts/drawer-choice.ts'
import { LEFT_SIDE, leftSideAt, outlineStations, RIGHT_SIDE, rightSideAt } from '../survey/outline.ts'
import type { AlcoveWall, RunnableWall } from '../survey/survey.ts'
import type { RunLevel } from './run-levels.ts'

export type WallFit = 'filler' | 'caulk'

/** Where a plumb, square body of the run's height can stand: the least clear space of both faces at every height. */
export interface Slot {
  readonly low: Length
  readonly high: Length
}

/** Both faces count, because a box also passes the front on its way in. */
const leftLimit = formula<{ lefts: readonly Length[] }, Length>(
  {
    id: 'slot.left-limit',
    plain: 'the left return where it stands furthest in, back and front, over the height of the boxes',
    source: 'geometry',
    from: { lefts: LEFT_SIDE },
  },
  ({ lefts: [first = ZERO, ...others] }) => longest(first, ...others),
)

const rightLimit = formula<{ rights: readonly Length[] }, Length>(
  {
    id: 'slot.right-limit',
    plain: 'the right return where it stands furthest in, back and front, over the height of the boxes',
    source: 'geometry',
    from: { rights: RIGHT_SIDE },
  },
  ({ rights: [first = ZERO, ...others] }) => shortest(first, ...others),
)

export const slotWidth = formula<Slot, Length>(
  {
    id: 'slot.width',
    plain: 'right limit − left limit',
    source: 'geometry',
    from: { low: leftLimit, high: rightLimit },
  },
  ({ low, high }) => less(high, low),
)

/** The slot of an alcove between two heights. */
export function slotOf(wall: AlcoveWall, z0: Length, z1: Length): Slot {
  const stations = outlineStations(wall, z0, z1)
  const faces = [ZERO, wall.frontDepth]
  return {
    low: leftLimit({ lefts: stations.flatMap((z) => faces.map((y) => leftSideAt(wall, z, y))) }),
    high: rightLimit({ rights: stations.flatMap((z) => faces.map((y) => rightSideAt(wall, z, y))) }),
  }
}

/** How far the front edge of a return stands off the end of the run beside it, at one height. */
export const runGap = formula<{ runEnd: Length; side: Length; at: 'left' | 'right' }, Length>(
  {
    id: 'slot.gap',
    plain: 'end of the run to the front edge of the return, at one height',
    source: 'geometry',
    from: {
      runEnd: [{ id: 'slot.start' }, { id: 'slot.run-end' }, { id: 'slot.caulked-end' }],
      side: [LEFT_SIDE, RIGHT_SIDE],
    },
  },
  ({ runEnd, side, at }) => (at === 'left' ? less(runEnd, side) : less(side, runEnd)),
)

/** Gap between the run's own side and the return's front edge, from the foot to the top of the run. */
export const gapsAlong = (wall: AlcoveWall, level: RunLevel, at: 'left' | 'right', x: Length): readonly Length[] =>
  outlineStations(wall, level.z0, level.z1).map((z) => {
    const side = (at === 'left' ? leftSideAt : rightSideAt)(wall, z, wall.frontDepth)
    return runGap({ runEnd: x, side, at })
  })

/** How one side of a run meets its wall; settled, with the reason. */
export function fitOf(context: PlanContext, level: RunLevel, side: 'left' | 'right'): WallFit {
  const field = side === 'left' ? fitLeft : fitRight
  return context.settle.choice(field, level.wall.bay, () => suggestedFit(context, level, side))
}

function suggestedFit(context: PlanContext, level: RunLevel, side: 'left' | 'right') {
  const most = context.figures.length('caulk.most')
  if (hingedAt(context, level.wall, side))
    return { value: 'filler' as const, because: 'a hinged leaf needs room to swing past the wall' }
  if (level.wall.kind === 'flat') return { value: 'filler' as const, because: 'the wall there was not measured' }
  const widest = caulkedGap(context, level.wall, level, side)
  return widest <= most
    ? { value: 'caulk' as const, because: `the gap stays within ${context.show.withUnit(most)}` }
    : { value: 'filler' as const, because: `a caulked gap would open to ${context.show.withUnit(widest)}` }
}

/**
 * Whether the outermost box at this side has hinged leaves: not one of drawers alone. How many boxes there are follows
 * from the fit, so the last one is known to have drawers only where the number of boxes was asked for.
 */
function hingedAt(context: PlanContext, wall: RunnableWall, side: 'left' | 'right'): boolean {
  if (!hasDoors(context)) return false
  const last = context.settle.asked(boxCount, wall.bay) ?? context.settle.asked(boxWidths, wall.bay)?.length
  const number = side === 'left' ? 1 : last
  const fronts = number === undefined ? undefined : drawersAsked(context, { bay: wall.bay }).get(number)
  // Drawers that all have their heights leave room for a leaf.
  return fronts === undefined || fronts.every((height) => height !== undefined)
}

/** Widest front gap a caulked side would have, tested before the left-over is placed. */
export function caulkedGap(context: PlanContext, wall: AlcoveWall, level: RunLevel, side: 'left' | 'right'): Length {
  const k = context.figures.length('caulk.fit')
  const slot = slotOf(wall, level.z0, level.z1)
  const x = caulkedEnd({ limit: side === 'left' ? slot.low : slot.high, fit: k, at: side })
  const [first = k, ...others] = gapsAlong(wall, level, side, x)
  return longest(first, ...others)
}

/** Where a run ends that is caulked to the return where it stands furthest in. */
const caulkedEnd = formula<{ limit: Length; fit: Length; at: 'left' | 'right' }, Length>(
  {
    id: 'slot.caulked-end',
    plain: 'limit of the slot, in by the caulked fit',
    source: 'geometry',
    from: { limit: [leftLimit, rightLimit], fit: { id: 'caulk.fit' } },
  },
  ({ limit, fit, at }) => (at === 'left' ? sum(limit, fit) : less(limit, fit)),
)

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
