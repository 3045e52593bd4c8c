import { boxDepth } from '../../job/chapters/cabinets.ts'
import { shelfDepth } from '../../job/chapters/shelves.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { piecesTooClose, type TooClose, woodTooClose } from '../mantel/clearance.ts'
import { parseMark } from '../marks.ts'
import type { Run } from '../run/slot.ts'
import type { BesideFire } from './beside-fire.ts'
import { shallower } from './in-hearth-zone.ts'
import type { StandingOut } from './standing-out.ts'

/** What stands out beside an opening: the run with its depth where there is one, and the parts past the face. */
export interface Out {
  readonly run: Run | undefined
  readonly depth: Length
  readonly out: readonly StandingOut[]
}

/** Parts of the neighbouring bay that a clearance rule of the fire stops: boxes and what hangs on them, and shelves. */
export function woodTooNear(context: PlanContext, here: BesideFire, on: Out): readonly Message[] {
  const { bay } = here.beside
  const { run } = on
  return [
    ...worst(context, here, {
      what: 'boxes',
      about: questionKey(bay.id, boxDepth),
      out: on.out.filter((o) => !isShelf(o)),
      fixes: (by) => (run === undefined ? [] : shallower(context, { run, depth: less(on.depth, by) })),
    }),
    ...worst(context, here, {
      what: 'shelves',
      about: questionKey(bay.id, shelfDepth),
      out: on.out.filter(isShelf),
      fixes: () => [],
    }),
  ]
}

const isShelf = ({ part }: StandingOut): boolean => {
  const role = parseMark(part.mark)?.role
  return role === 'H' || role === 'C'
}

interface Kept {
  readonly what: string
  readonly about: QuestionKey
  readonly out: readonly StandingOut[]
  readonly fixes: (by: Length) => readonly Fix[]
}

/** One message for all of them: the piece that must go back furthest, and what clears every one. */
function worst({ show, cut }: PlanContext, { fire, beside }: BesideFire, kept: Kept): readonly Message[] {
  if (fire.opening === undefined) return []
  const seen = kept.out.map((o) => o.seen)
  const [first] = piecesTooClose(fire.opening, seen, fire.rules).toSorted((a, b) => back(b) - back(a))
  if (first === undefined) return []
  const by = back(first)
  const part = kept.out.find((o) => o.seen === first.piece)?.part.id
  return [
    raise(
      woodTooClose,
      { about: kept.about, place: beside.bay.name, fixes: kept.fixes(by), ...(part === undefined ? {} : { part }) },
      {
        piece: first.piece.what,
        out: show.withUnit(first.piece.standsOut),
        distance: show.withUnit(first.distance),
        most: first.mostOut === 'none' ? 'no wood at all' : `${show.withUnit(cut.down(first.mostOut))} at most`,
        rule: first.rule.says,
        nearest: `Make the ${kept.what} ${show.withUnit(cut.up(by))} shallower, or keep them further from the opening. The local code and the manual may ask for more.`,
      },
    ),
  ]
}

/** How far a piece must go back to pass: to what its rule allows there, or behind the masonry face. */
const back = ({ piece, mostOut }: TooClose): Length =>
  mostOut === 'none' ? piece.standsOut : less(piece.standsOut, mostOut)
