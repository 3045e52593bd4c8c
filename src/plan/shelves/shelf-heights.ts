import { crownFate } from '../../job/chapters/cabinets.ts'
import { shelfCount, shelfThickness } from '../../job/chapters/shelves.ts'
import { ceiling, crown } from '../../job/chapters/wall.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, nanometres, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { lookAt } from '../settle.ts'
import type { RunnableWall } from '../survey/survey.ts'
import { OFFERED_THICKNESSES } from './shelf-strength.ts'

/** The height there is for shelves in one bay. */
export interface ShelfRoom {
  readonly wall: RunnableWall
  /** What the shelves stand over: counter, box top or floor. */
  readonly below: Length
  /** Highest shelf top, under the ceiling and within reach. */
  readonly highest: Length
}

/** Heights of the lowest and the highest shelf top, shared by aligned bays. */
export interface ShelfSpread {
  readonly first: Length
  readonly last: Length
  readonly tiedToMantel: boolean
}

/** Highest shelf top: the display reach, or the room to leave under ceiling and kept crown. */
const highestShelf = formula(
  {
    id: 'shelf.highest',
    plain: 'the lesser of reach and ceiling − kept crown − headroom',
    source: 'common practice, no source',
    from: { reach: { id: 'shelf.reach' }, ceiling, crown, headroom: { id: 'shelf.headroom' } },
  },
  (of: {
    readonly reach: Length
    readonly ceiling: Length
    readonly crown: Length
    readonly headroom: Length
  }): Length => shortest(of.reach, less(of.ceiling, of.crown, of.headroom)),
)

const STANDS_BELOW = [{ id: 'counter.top' }, { id: 'levels.box-top' }]

/** The thickness chosen, or while the shelves are counted the thickest offered. */
const THICKNESSES = [shelfThickness, ...OFFERED_THICKNESSES]

/** First shelf of a bay without a mantel line: clear of the counter. */
const firstOverCounter = formula(
  {
    id: 'shelf.first',
    plain: 'highest counter below + first clear + shelf thickness',
    source: 'common practice, no source',
    from: { below: STANDS_BELOW, firstClear: { id: 'shelf.first-clear' }, shelfThickness: THICKNESSES },
  },
  (of: { readonly below: Length; readonly firstClear: Length; readonly shelfThickness: Length }): Length =>
    sum(of.below, of.firstClear, of.shelfThickness),
)

/** First shelf of a bay that takes up the mantel line. */
const firstByMantel = formula(
  {
    id: 'shelf.first-by-mantel',
    plain: 'mantel top + offset',
    source: 'common practice, no source',
    from: { mantelTop: { id: 'mantel.top' }, offset: { id: 'shelf.mantel-offset' } },
  },
  (of: { readonly mantelTop: Length; readonly offset: Length }): Length => sum(of.mantelTop, of.offset),
)

/** Last shelf of the bays that line up: the lowest ceiling rules. */
const lastShelf = formula(
  {
    id: 'shelf.last',
    plain: 'the least of reach and the highest shelf of each bay that lines up',
    source: 'common practice, no source',
    from: { reach: { id: 'shelf.reach' }, highest: highestShelf },
  },
  (of: { readonly reach: Length; readonly highest: readonly Length[] }): Length => shortest(of.reach, ...of.highest),
)

export function shelfRoom(context: PlanContext, wall: RunnableWall, counterTop: Length | undefined): ShelfRoom {
  const { figures, settle, job } = context
  const crownKept = lookAt(job, settle.used, undefined)(crownFate) !== 'cut'
  return {
    wall,
    below: counterTop ?? ZERO,
    highest: highestShelf({
      reach: figures.length('shelf.reach'),
      ceiling: wall.lowestCeiling,
      crown: crownKept ? wall.crown.drop : ZERO,
      headroom: figures.length('shelf.headroom'),
    }),
  }
}

/** Whether a shelf this thick fits at all: tall boxes leave no room. */
export const hasRoom = ({ figures }: PlanContext, room: ShelfRoom, thickness: Length): boolean =>
  sum(room.below, figures.length('shelf.clear-least'), thickness) <= room.highest

/** Lowest and highest shelf of bays that line up: the mantel line when it clears the counter, else over the highest counter. */
export function spreadOf(
  { figures }: PlanContext,
  rooms: readonly ShelfRoom[],
  on: { readonly thickness: Length; readonly mantelTop: Length | undefined },
): ShelfSpread {
  const below = longest(ZERO, ...rooms.map((r) => r.below))
  const last = lastShelf({ reach: figures.length('shelf.reach'), highest: rooms.map((r) => r.highest) })
  const tied =
    on.mantelTop === undefined
      ? undefined
      : firstByMantel({ mantelTop: on.mantelTop, offset: figures.length('shelf.mantel-offset') })
  const clear = sum(below, figures.length('shelf.clear-least'), on.thickness)
  if (tied !== undefined && tied >= clear) return { first: tied, last, tiedToMantel: true }
  const firstClear = figures.length('shelf.first-clear')
  return { first: firstOverCounter({ below, firstClear, shelfThickness: on.thickness }), last, tiedToMantel: false }
}

/** Most shelves that leave the least clear opening between them: 1 + ⌊(last − first)/(clear + T)⌋. */
export const mostShelves = ({ figures }: PlanContext, { first, last }: ShelfSpread, thickness: Length): number =>
  shelvesThatFit({ first, last, clear: figures.length('shelf.clear-least'), shelfThickness: thickness })

const FIRST = { first: [firstOverCounter, firstByMantel], last: lastShelf }

const shelvesThatFit = formula(
  {
    id: 'shelf.most',
    plain: '1 + (last − first) / (least clear opening + shelf thickness), down to a whole number',
    source: 'common practice, no source',
    gives: 'count',
    from: { ...FIRST, clear: { id: 'shelf.clear-least' }, shelfThickness: THICKNESSES },
  },
  (of: {
    readonly first: Length
    readonly last: Length
    readonly clear: Length
    readonly shelfThickness: Length
  }): number => (of.first > of.last ? 0 : 1 + Math.floor((of.last - of.first) / sum(of.clear, of.shelfThickness))),
)

/** Shelves at the suggested pitch, never more than fit. */
export const suggestedCount = formula(
  {
    id: 'shelf.suggested-count',
    plain: 'the lesser of most that fit and 1 + (last − first) / usual pitch, down to a whole number',
    source: 'common practice, no source',
    gives: 'count',
    from: { ...FIRST, most: shelvesThatFit, pitch: { id: 'shelf.pitch' } },
  },
  (of: { readonly first: Length; readonly last: Length; readonly most: number; readonly pitch: Length }): number =>
    of.first > of.last ? 0 : Math.min(of.most, 1 + Math.floor((of.last - of.first) / of.pitch)),
)

/** Tops of n shelves spread evenly from the first to the last: z = first + i · (last − first)/(n − 1), near the cut step. */
export const evenHeights = formula<
  { first: Length; last: Length; count: number; near: (z: Length) => Length },
  readonly Length[]
>(
  {
    id: 'shelf.heights',
    plain: 'first + i × (last − first) / (count − 1), to the nearest cut step',
    source: 'geometry',
    from: { ...FIRST, count: shelfCount },
  },
  ({ first, last, count, near }) =>
    Array.from({ length: count }, (_, i) =>
      near(count === 1 ? first : nanometres(Math.round(first + (i * (last - first)) / (count - 1)))),
    ),
)
