import { shelfCount, shelfHeights } from '../../job/chapters/shelves.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Suggestion } from '../settle.ts'
import type { ShelfBay } from './shelf-bay.ts'
import {
  evenHeights,
  hasRoom,
  mostShelves,
  type ShelfRoom,
  type ShelfSpread,
  spreadOf,
  suggestedCount,
} from './shelf-heights.ts'
import { shelfHeightsCount, shelvesDoNotFit } from './shelf-messages.ts'
import { offeredThicknesses } from './shelf-strength.ts'

export interface ShelfLines {
  readonly aligned: boolean
  readonly mantelTop: Length | undefined
}

export interface CountedRoom {
  readonly room: ShelfRoom
  readonly count: number
}

/** How many shelves each bay gets. The suggestion fits whatever thickness is chosen of those offered. */
export function countShelves(
  context: PlanContext,
  rooms: readonly ShelfRoom[],
  lines: ShelfLines,
): readonly CountedRoom[] {
  const thickness = longest(ZERO, ...offeredThicknesses(context))
  const roomy = rooms.filter((r) => hasRoom(context, r, thickness))
  return rooms.map((room) =>
    within(room.wall.bay.id, () => {
      const together = alignedWith(room, roomy, lines)
      const spread = spreadOf(context, together, { thickness, mantelTop: lines.mantelTop })
      const count = context.settle.choice(shelfCount, room.wall.bay, () => countFor(context, spread, thickness))
      return { room, count }
    }),
  )
}

function countFor(context: PlanContext, spread: ShelfSpread, thickness: Length): Suggestion<number> {
  const { first, last } = spread
  const most = mostShelves(context, spread, thickness)
  const value = suggestedCount({ first, last, most, pitch: context.figures.length('shelf.pitch') })
  const because = value === 0 ? 'no height is left for one' : reasonFor(context, spread)
  return { value, because, from: suggestedCount }
}

/** The rooms that share heights with one: all that have room where shelves line up, and itself. */
const alignedWith = (room: ShelfRoom, others: readonly ShelfRoom[], { aligned }: ShelfLines): readonly ShelfRoom[] =>
  aligned && others.includes(room) ? others : [room]

const reasonFor = ({ show }: PlanContext, { first, last, tiedToMantel }: ShelfSpread): string =>
  `from ${show.length(first)}${tiedToMantel ? ', just above the mantel,' : ''} to ${show.length(last)}`

/** Heights of the shelves of one bay, lowest first, and what is wrong with them. */
export interface LaidHeights {
  readonly heights: readonly Length[]
  readonly messages: readonly Message[]
}

/** Shelf tops of a bay: the heights answered, or spread evenly over what the aligned bays share. */
export function heightsOf(
  context: PlanContext,
  bay: ShelfBay,
  on: { readonly bays: readonly ShelfBay[]; readonly lines: ShelfLines },
): LaidHeights {
  const { room, count } = bay
  const fitting = on.bays.filter((b) => hasRoom(context, b.room, b.make.thickness))
  const rooms = alignedWith(
    room,
    fitting.map((b) => b.room),
    on.lines,
  )
  const thickness = longest(
    bay.make.thickness,
    ...fitting.filter((b) => rooms.includes(b.room)).map((b) => b.make.thickness),
  )
  const { mantelTop } = on.lines
  const spread = spreadOf(context, rooms, { thickness, mantelTop })
  const most = mostShelves(context, spread, thickness)
  const even = evenHeights({ ...spread, count, near: context.cut.near })
  const chosen = context.settle.choice(shelfHeights, room.wall.bay, () => ({
    value: even,
    from: evenHeights,
    because: spread.tiedToMantel
      ? `the first ${context.show.length(context.figures.length('shelf.mantel-offset'))} above the mantel top, evenly up`
      : 'over the counter, evenly up',
  }))
  const rightCount = chosen.length === count
  const heights = (rightCount ? chosen : even).toSorted((a, b) => a - b)
  const untied = mostShelves(context, spreadOf(context, rooms, { thickness, mantelTop: undefined }), thickness)
  const crowd =
    count > most || isCrowded(context, bay, heights)
      ? [notFitting(context, bay, { most: Math.min(most, count), untied })]
      : []
  return {
    // Typed heights stand even where the rule finds no room; computed ones without room would overlap.
    heights: most === 0 && chosen === even ? [] : heights,
    messages: [...(rightCount ? [] : [wrongCount(bay, chosen.length, even)]), ...crowd],
  }
}

/** A shelf too near what is below it, or through the ceiling. */
function isCrowded({ figures }: PlanContext, { room, make }: ShelfBay, heights: readonly Length[]): boolean {
  const clear = figures.length('shelf.clear-least')
  const tight = heights.some((z, i) => less(z, make.thickness, heights[i - 1] ?? room.below) < clear)
  return tight || heights.some((z) => z > room.wall.lowestCeiling)
}

function notFitting(
  context: PlanContext,
  bay: ShelfBay,
  fit: { readonly most: number; readonly untied: number },
): Message {
  const { show, figures } = context
  const { id, name } = bay.room.wall.bay
  const { most } = fit
  const lower = fit.untied > most ? `, or leave the mantel line and start lower: ${fit.untied} fit` : ''
  const fewer =
    most < bay.count ? `Take ${most}${lower}, or make them thinner.` : `Leave more between their heights${lower}.`
  return raise(
    shelvesDoNotFit,
    {
      about: questionKey(id, most < bay.count ? shelfCount : shelfHeights),
      place: name,
      fixes:
        most < bay.count
          ? [{ says: `${most} shelves`, answers: [{ key: questionKey(id, shelfCount), value: most }] }]
          : [],
    },
    { asked: bay.count, most, between: show.withUnit(figures.length('shelf.clear-least')), or: fewer },
  )
}

const wrongCount = (bay: ShelfBay, heights: number, even: readonly Length[]): Message => {
  const { id, name } = bay.room.wall.bay
  return raise(
    shelfHeightsCount,
    {
      about: questionKey(id, shelfHeights),
      place: name,
      fixes: [{ says: 'spread them evenly', answers: [{ key: questionKey(id, shelfHeights), value: even }] }],
    },
    { count: bay.count, heights },
  )
}
