import { shelfCount, shelfDepth, shelfLoad, shelfSetBack, shelfThickness } from '../../job/chapters/shelves.ts'
import { returns } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, nanometres, size, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { wallHold } from '../fixings/wall-fixing-kinds.ts'
import { type ShelfBay, screwsFor, shelfPlaceOf } from './shelf-bay.ts'
import {
  returnsDiffer,
  shelfCannotPass,
  shelfHasNoVoid,
  shelfPullsOut,
  shelfTooShallow,
  shelfTooWeak,
  turningRoom,
} from './shelf-messages.ts'
import type { ShelfAt } from './shelf-parts.ts'
import {
  type CarriedShelf,
  forceWords,
  type Strength,
  screwHolds,
  shelfPressure,
  strengthOf,
  thinnestThatCarries,
} from './shelf-strength.ts'

/** Whether the shelves of a bay can be built at all. */
export function unbuildable(context: PlanContext, bay: ShelfBay): readonly Message[] {
  const { figures, show } = context
  const { id, name } = bay.room.wall.bay
  const leastDepth = figures.length('shelf.depth-least')
  const leastThickness = bay.make.kind.leastThickness(bay.make)
  const about = bay.room.wall.kind === 'flat' ? questionKey(id, shelfDepth) : questionKey(id, returns)
  const deeper = depthFix(context, bay, leastDepth)
  return [
    ...(bay.depth < leastDepth
      ? [
          raise(
            shelfTooShallow,
            { about, place: name, fixes: deeper },
            {
              depth: show.withUnit(bay.depth),
              least: show.withUnit(leastDepth),
              todo: `${deeper[0] === undefined ? '' : `${deeper[0].says}, or `}leave the shelves out of this bay.`,
            },
          ),
        ]
      : []),
    ...(bay.make.thickness < leastThickness
      ? [
          raise(
            shelfHasNoVoid,
            {
              about: questionKey(id, shelfThickness),
              place: name,
              fixes: [
                {
                  says: `${show.withUnit(leastThickness)} thick`,
                  answers: [{ key: questionKey(id, shelfThickness), value: leastThickness }],
                },
              ],
            },
            { thickness: show.withUnit(bay.make.thickness), least: show.withUnit(leastThickness) },
          ),
        ]
      : []),
  ]
}

/** The depth answered, or the set-back that leaves it; none where the returns themselves are too shallow. */
function depthFix({ settle, show }: PlanContext, { room, depth }: ShelfBay, least: Length): readonly Fix[] {
  const { wall } = room
  if (wall.kind === 'flat' || wall.depth === undefined) {
    const key = questionKey(wall.bay.id, shelfDepth)
    return [{ says: `make them ${show.withUnit(least)} deep`, answers: [{ key, value: least }] }]
  }
  const setBack = less(settle.asked(shelfSetBack, undefined) ?? ZERO, less(least, depth))
  const key = questionKey('job', shelfSetBack)
  return setBack < 0 ? [] : [{ says: `set them back ${show.withUnit(setBack)}`, answers: [{ key, value: setBack }] }]
}

/** Passing and strength of the shelves of one bay. */
export function shelfMessages(context: PlanContext, ats: readonly ShelfAt[], pressure: number): readonly Message[] {
  const each = ats.flatMap((at) =>
    within(at.shelf.id, () => [...passing(context, at), ...strength(context, at, pressure)]),
  )
  // Shelves of a bay have one thickness: the one that needs most speaks for all, so that its way out clears every one.
  const weak = each.filter(({ about }) => about.endsWith(`.${shelfThickness.id}`))
  const [worst] = weak.toSorted((a, b) => asksFor(b) - asksFor(a))
  return each.filter((message) => message === worst || !weak.includes(message))
}

/** How much thicker a way out makes the shelves; one that also takes the books off them, or none at all, asks for more still. */
function asksFor({ fixes: [fix] }: Message): number {
  if (fix === undefined) return Number.POSITIVE_INFINITY
  const thickness = fix.answers.at(-1)?.value
  return (fix.answers.length > 1 ? Number.MAX_SAFE_INTEGER / 2 : 0) + (typeof thickness === 'number' ? thickness : 0)
}

function passing({ figures, show }: PlanContext, { bay, shelf, body }: ShelfAt): readonly Message[] {
  const most = figures.length('shelf.end-strip-most')
  if (bay.room.wall.kind !== 'alcove' || body.shape !== 'parallel' || body.gapBack <= most) return []
  const where = { about: questionKey(shelf.bay.id, shelfCount), place: shelf.bay.name, part: `${shelf.id}/skin` }
  const values = { shelf: shelf.number, gap: show.withUnit(body.gapBack), most: show.withUnit(most) }
  return [raise(shelfCannotPass, where, values)]
}

/** A shelf with what it carries and the screws it hangs on. */
export function carriedBy(context: PlanContext, { bay, body }: ShelfAt, pressure: number): CarriedShelf {
  const place = shelfPlaceOf(body, bay)
  return { place, make: bay.make, pressure, screws: screwsFor(context, bay.room, { place, x: body.x, make: bay.make }) }
}

function strength(context: PlanContext, at: ShelfAt, pressure: number): readonly Message[] {
  const carried = carriedBy(context, at, pressure)
  const found = strengthOf(context, carried)
  if (found.kind === 'hangs') return hanging(context, at, carried, found)
  if (found.passes) return []
  const { shelf, body } = at
  const { show } = context
  const better = thinnestThatCarries(context, carried)
  const ornamentsOnly = lighterLoad(context, at, carried)
  const [first] = ornamentsOnly
  return [
    raise(
      shelfTooWeak,
      {
        about: questionKey(shelf.bay.id, shelfThickness),
        place: shelf.bay.name,
        part: `${shelf.id}/skin`,
        fixes: better.passes ? [thicknessFix(context, at, better.thickness)] : ornamentsOnly,
      },
      {
        shelf: shelf.number,
        sag: show.withUnit(found.sag),
        limit: show.withUnit(found.limit),
        span: show.withUnit(body.front),
        todo: better.passes
          ? `Make it ${show.withUnit(better.thickness)} thick, the thinnest that carries it, or put less on it.`
          : `${first === undefined ? 'No' : `For ${first.says}; no`} thickness offered carries more: put an upright or a bracket under its middle.`,
      },
    ),
  ]
}

/** Ornaments in place of books, at the thinnest shelf that carries them; none where even they are too much. */
function lighterLoad(context: PlanContext, { shelf }: ShelfAt, carried: CarriedShelf): readonly Fix[] {
  const pressure = shelfPressure(context, 'ornaments')
  const { thickness, passes } = thinnestThatCarries(context, { ...carried, pressure })
  if (!passes || pressure >= carried.pressure) return []
  const answers = [
    { key: questionKey('job', shelfLoad), value: 'ornaments' },
    { key: questionKey(shelf.bay.id, shelfThickness), value: thickness },
  ]
  return [{ says: `ornaments only, ${context.show.withUnit(thickness)} thick`, answers }]
}

const thicknessFix = ({ show }: PlanContext, { shelf }: ShelfAt, value: Length): Fix => ({
  says: `${show.withUnit(value)} thick`,
  answers: [{ key: questionKey(shelf.bay.id, shelfThickness), value }],
})

/** A shelf with a free end: its screws in studs are worked out; what masonry holds is asked once a bay. */
function hanging(
  context: PlanContext,
  at: ShelfAt,
  carried: CarriedShelf,
  found: Extract<Strength, { readonly kind: 'hangs' }>,
): readonly Message[] {
  const { shelf, bay } = at
  const { wall } = bay.room
  const { show } = context
  if (wall.waits.fixing.length > 0) return []
  const where = { about: questionKey(shelf.bay.id, shelfDepth), place: shelf.bay.name, part: `${shelf.id}/skin` }
  if (wallHold(wall.fixing).anywhere || found.passes) return []
  const depth = deepestThatHolds(context, carried)
  return [
    raise(
      shelfPullsOut,
      {
        ...where,
        fixes:
          depth === undefined
            ? []
            : [
                {
                  says: `${show.withUnit(depth)} deep`,
                  answers: [{ key: questionKey(shelf.bay.id, shelfDepth), value: depth }],
                },
              ],
      },
      {
        shelf: shelf.number,
        pull: forceWords(context, found.pull),
        holds: forceWords(context, screwHolds(context)),
        todo:
          depth === undefined
            ? 'Stand it on brackets or end it at a wall on both sides; or put blocking in behind its cleat, and give that among the stud centres.'
            : `Make it ${show.withUnit(depth)} deep or less, or end it at a wall on both sides.`,
      },
    ),
  ]
}

/** The deepest shelf, by the half inch or centimetre, whose screws hold. */
function deepestThatHolds(context: PlanContext, carried: CarriedShelf): Length | undefined {
  const step = context.figures.length('mantel.height-step')
  const least = context.figures.length('shelf.depth-least')
  const steps = Math.floor(carried.place.depth / step)
  return Array.from({ length: steps }, (_, i) => times(step, steps - i))
    .filter((depth) => depth >= least && depth < carried.place.depth)
    .find((depth) => strengthOf(context, { ...carried, place: { ...carried.place, depth } }).passes)
}

/** Notes that hold for all shelves of a bay. */
export function bayNotes(context: PlanContext, bay: ShelfBay, ats: readonly ShelfAt[]): readonly Message[] {
  const { wall } = bay.room
  if (ats.length === 0 || wall.kind !== 'alcove') return []
  return [...unequalReturns(context, bay), ...turning(context, bay, ats)]
}

function unequalReturns({ figures, show }: PlanContext, { room: { wall }, depth }: ShelfBay): readonly Message[] {
  if (wall.kind !== 'alcove' || wall.returnLeft === undefined || wall.returnRight === undefined) return []
  if (size(less(wall.returnLeft, wall.returnRight)) <= figures.length('shelf.returns-differ')) return []
  const values = {
    left: show.withUnit(less(wall.returnLeft, depth)),
    right: show.withUnit(less(wall.returnRight, depth)),
  }
  return [raise(returnsDiffer, { about: questionKey(wall.bay.id, returns), place: wall.bay.name }, values)]
}

/** Diagonal of the largest rough board: the floor it turns on. */
function turning(
  { show }: PlanContext,
  { room: { wall }, make }: ShelfBay,
  ats: readonly ShelfAt[],
): readonly Message[] {
  const diagonal = Math.max(
    ...ats.map(({ body }) =>
      Math.hypot(sum(body.extent, make.figures.length('shelf.long')), sum(body.depth, make.spareDepth)),
    ),
  )
  const where = { about: questionKey(wall.bay.id, shelfCount), place: wall.bay.name }
  return [raise(turningRoom, where, { room: show.withUnit(make.cut.up(nanometres(Math.ceil(diagonal)))) })]
}
