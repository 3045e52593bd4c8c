import { crownFate } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, nanometres, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { lookAt } from '../settle.ts'
import type { RunnableWall } from '../survey/survey.ts'

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
const highestShelf = formula<{ reach: Length; ceiling: Length; crown: Length; headroom: Length }, Length>(
  {
    id: 'shelf.highest',
    plain: 'the lesser of reach and ceiling − kept crown − headroom',
    source: 'common practice, no source',
  },
  ({ reach, ceiling, crown, headroom }) => shortest(reach, less(ceiling, crown, headroom)),
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
  const last = shortest(figures.length('shelf.reach'), ...rooms.map((r) => r.highest))
  const tied = on.mantelTop === undefined ? undefined : sum(on.mantelTop, figures.length('shelf.mantel-offset'))
  const clear = sum(below, figures.length('shelf.clear-least'), on.thickness)
  return tied !== undefined && tied >= clear
    ? { first: tied, last, tiedToMantel: true }
    : { first: sum(below, figures.length('shelf.first-clear'), on.thickness), last, tiedToMantel: false }
}

/** Most shelves that leave the least clear opening between them: 1 + ⌊(last − first)/(clear + T)⌋. */
export const mostShelves = ({ figures }: PlanContext, { first, last }: ShelfSpread, thickness: Length): number =>
  first > last ? 0 : 1 + Math.floor((last - first) / sum(figures.length('shelf.clear-least'), thickness))

/** Shelves at the suggested pitch, never more than fit. */
export const suggestedCount = (context: PlanContext, spread: ShelfSpread, thickness: Length): number =>
  spread.first > spread.last
    ? 0
    : Math.min(
        mostShelves(context, spread, thickness),
        1 + Math.floor((spread.last - spread.first) / context.figures.length('shelf.pitch')),
      )

/** Tops of n shelves spread evenly from the first to the last: z = first + i · (last − first)/(n − 1), near the cut step. */
export const evenHeights = formula<
  { first: Length; last: Length; count: number; near: (z: Length) => Length },
  readonly Length[]
>(
  { id: 'shelf.heights', plain: 'first + i × (last − first) / (count − 1)', source: 'geometry' },
  ({ first, last, count, near }) =>
    Array.from({ length: count }, (_, i) =>
      near(count === 1 ? first : nanometres(Math.round(first + (i * (last - first)) / (count - 1)))),
    ),
)
