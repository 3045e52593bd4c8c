import { shelfCount, shelfDepth } from '../../job/chapters/shelves.ts'
import { studs } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { less, longest, over, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { wallHold } from '../fixings/wall-fixing-kinds.ts'
import { backCleatOf, type ShelfBay, shelfPlaceOf } from './shelf-bay.ts'
import { carriedBy } from './shelf-checks.ts'
import { shelfEndStrip, shelfNeedsBlocking, shelfOnAnchors } from './shelf-messages.ts'
import type { ShelfAt } from './shelf-parts.ts'
import { forceWords, strengthOf } from './shelf-strength.ts'

/** What a yes is asked for at the shelves of one bay: one question a cause, naming its shelves. */
export const shelfConfirms = (
  context: PlanContext,
  bay: ShelfBay,
  hung: { readonly ats: readonly ShelfAt[]; readonly pressure: number },
): readonly Message[] => [
  ...endStrips(context, bay, hung.ats),
  ...onAnchors(context, bay, hung),
  ...blocking(context, bay, hung.ats),
]

/** `shelf 2`, `shelves 1, 2, 3`. */
const shelvesIn = (ats: readonly ShelfAt[]): string =>
  `${ats.length === 1 ? 'shelf' : 'shelves'} ${ats.map((at) => at.shelf.number).join(', ')}`

function endStrips({ figures, show }: PlanContext, bay: ShelfBay, ats: readonly ShelfAt[]): readonly Message[] {
  const { wall } = bay.room
  const caulked = figures.length('caulk.most')
  const most = figures.length('shelf.end-strip-most')
  const open = ats.filter(
    ({ body }) =>
      body.shape === 'parallel' && body.gapBack > caulked && (wall.kind !== 'alcove' || body.gapBack <= most),
  )
  if (open.length === 0) return []
  const values = {
    shelves: shelvesIn(open),
    gap: show.withUnit(longest(ZERO, ...open.map((at) => at.body.gapBack))),
    caulked: show.withUnit(caulked),
  }
  return [raise(shelfEndStrip, { about: questionKey(wall.bay.id, shelfCount), place: wall.bay.name }, values)]
}

function onAnchors(
  context: PlanContext,
  bay: ShelfBay,
  { ats, pressure }: { readonly ats: readonly ShelfAt[]; readonly pressure: number },
): readonly Message[] {
  const { wall } = bay.room
  if (wall.waits.fixing.length > 0 || !wallHold(wall.fixing).anywhere) return []
  const hanging = ats.flatMap((at) => {
    const found = strengthOf(context, carriedBy(context, at, pressure))
    return found.kind === 'hangs' ? [{ at, pull: found.pull }] : []
  })
  if (hanging.length === 0) return []
  const values = {
    shelves: shelvesIn(hanging.map((h) => h.at)),
    pull: forceWords(context, Math.max(...hanging.map((h) => h.pull))),
  }
  return [raise(shelfOnAnchors, { about: questionKey(wall.bay.id, shelfDepth), place: wall.bay.name }, values)]
}

function blocking(context: PlanContext, bay: ShelfBay, ats: readonly ShelfAt[]): readonly Message[] {
  const { wall } = bay.room
  const { show } = context
  if (wall.waits.fixing.length > 0) return []
  const loose = ats.flatMap((at) => {
    const back = backCleatOf(context, bay.room, { place: shelfPlaceOf(at.body, bay), x: at.body.x, make: bay.make })
    return back === undefined || back.held.atTwoPlaces ? [] : [{ at, cleat: back.cleat }]
  })
  if (loose.length === 0) return []
  const about = questionKey(wall.bay.id, wallHold(wall.fixing).studs.length > 0 ? studs : shelfCount)
  const values = {
    shelves: shelvesIn(loose.map((l) => l.at)),
    heights: loose.map(({ at, cleat }) => show.length(less(at.shelf.cleatTop, over(cleat.height, 2)))).join(', '),
    length: show.withUnit(longest(ZERO, ...loose.map((l) => l.cleat.length))),
  }
  return [raise(shelfNeedsBlocking, { about, place: wall.bay.name }, values)]
}
