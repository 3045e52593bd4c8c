import { shelfCount, shelfDepth, shelfThickness } from '../../job/chapters/shelves.ts'
import { returns, studs } from '../../job/chapters/wall.ts'
import { hollowShelf } from '../../kinds/shelf/hollow.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, nanometres, over, size, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { type ShelfBay, screwsFor, shelfPlaceOf } from './shelf-bay.ts'
import { backCleatScrews } from './shelf-cleat-screws.ts'
import {
  returnsDiffer,
  shelfCannotPass,
  shelfEndStrip,
  shelfHasNoVoid,
  shelfNeedsBlocking,
  shelfOnAnchors,
  shelfPullsOut,
  shelfTooShallow,
  shelfTooWeak,
  turningRoom,
} from './shelf-messages.ts'
import type { ShelfAt } from './shelf-parts.ts'
import {
  type CarriedShelf,
  NEWTONS_PER_POUND_FORCE,
  type Strength,
  screwHolds,
  strengthOf,
  thinnestThatCarries,
} from './shelf-strength.ts'

/** Whether the shelves of a bay can be built at all. */
export function unbuildable({ figures, show }: PlanContext, bay: ShelfBay): readonly Message[] {
  const { id, name } = bay.room.wall.bay
  const leastDepth = figures.length('shelf.depth-least')
  const leastThickness = hollowShelf.leastThickness(bay.make)
  const about = bay.room.wall.kind === 'flat' ? questionKey(id, shelfDepth) : questionKey(id, returns)
  return [
    ...(bay.depth < leastDepth
      ? [
          raise(
            shelfTooShallow,
            { about, place: name },
            { depth: show.withUnit(bay.depth), least: show.withUnit(leastDepth) },
          ),
        ]
      : []),
    ...(bay.make.thickness < leastThickness
      ? [
          raise(
            shelfHasNoVoid,
            { about: questionKey(id, shelfThickness), place: name },
            { thickness: show.withUnit(bay.make.thickness), least: show.withUnit(leastThickness) },
          ),
        ]
      : []),
  ]
}

/** Passing, strength and fixing of one shelf. */
export const shelfMessages = (context: PlanContext, at: ShelfAt, pressure: number): readonly Message[] => [
  ...passing(context, at),
  ...strength(context, at, pressure),
  ...fixing(context, at),
]

function passing({ figures, show }: PlanContext, { bay, shelf, body }: ShelfAt): readonly Message[] {
  const caulked = figures.length('caulk.most')
  const most = figures.length('shelf.end-strip-most')
  if (body.shape !== 'parallel' || body.gapBack <= caulked) return []
  const where = { about: questionKey(shelf.bay.id, shelfCount), place: shelf.bay.name, part: `${shelf.id}/skin` }
  const gap = show.withUnit(body.gapBack)
  return bay.room.wall.kind === 'alcove' && body.gapBack > most
    ? [raise(shelfCannotPass, where, { shelf: shelf.number, gap, most: show.withUnit(most) })]
    : [raise(shelfEndStrip, where, { shelf: shelf.number, gap, caulked: show.withUnit(caulked) })]
}

function carriedBy(context: PlanContext, { bay, body }: ShelfAt, pressure: number): CarriedShelf {
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
  return [
    raise(
      shelfTooWeak,
      {
        about: questionKey(shelf.bay.id, shelfThickness),
        place: shelf.bay.name,
        part: `${shelf.id}/skin`,
        fixes: better.passes ? [thicknessFix(context, at, better.thickness)] : [],
      },
      {
        shelf: shelf.number,
        sag: show.withUnit(found.sag),
        limit: show.withUnit(found.limit),
        span: show.withUnit(body.front),
        todo: better.passes
          ? `Make it ${show.withUnit(better.thickness)} thick, the thinnest that carries it, or put less on it.`
          : 'Put an upright or a bracket under its middle, or make the front edge thicker; no thickness offered carries it.',
      },
    ),
  ]
}

const thicknessFix = ({ show }: PlanContext, { shelf }: ShelfAt, value: Length): Fix => ({
  says: `${show.withUnit(value)} thick`,
  answers: [{ key: questionKey(shelf.bay.id, shelfThickness), value }],
})

/** A shelf with a free end: its screws in studs are worked out; what masonry holds only the anchor's maker knows. */
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
  const newtons = (n: number) =>
    context.figures.units === 'inch' ? `${Math.ceil(n / NEWTONS_PER_POUND_FORCE)} lb` : `${Math.ceil(n)} N`
  const where = { about: questionKey(shelf.bay.id, shelfDepth), place: shelf.bay.name, part: `${shelf.id}/skin` }
  if (wall.fixing.kind === 'masonry')
    return [raise(shelfOnAnchors, where, { shelf: shelf.number, pull: newtons(found.pull), anchors: carried.screws })]
  if (found.passes) return []
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
        pull: newtons(found.pull),
        holds: newtons(screwHolds(context)),
        todo:
          depth === undefined
            ? 'Stand it on brackets, or end it at a wall on both sides.'
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

function fixing(context: PlanContext, at: ShelfAt): readonly Message[] {
  const { bay, shelf, body } = at
  const { wall } = bay.room
  if (wall.waits.fixing.length > 0) return []
  const cleat = hollowShelf.cleats(shelfPlaceOf(body, bay), bay.make)[0]
  if (cleat === undefined) return []
  const x = sum(body.x, over(less(body.back, cleat.length), 2))
  const { studs: found } = backCleatScrews(context, cleat, { x, fixing: wall.fixing })
  if (found === undefined || found >= 2) return []
  return [
    raise(
      shelfNeedsBlocking,
      { about: questionKey(shelf.bay.id, studs), place: shelf.bay.name, part: `${shelf.id}/cleat-back` },
      {
        shelf: shelf.number,
        found,
        length: context.show.withUnit(cleat.length),
        height: context.show.withUnit(less(shelf.cleatTop, over(cleat.height, 2))),
      },
    ),
  ]
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
