import { boxDepth } from '../../job/chapters/cabinets.ts'
import { shelfDepth } from '../../job/chapters/shelves.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import { backGapOf, leafReach } from '../boxes/box-depth.ts'
import type { PlanContext } from '../context.ts'
import { piecesTooClose, type TooClose, woodTooClose } from '../mantel/clearance.ts'
import { parseMark } from '../marks.ts'
import type { Run } from '../run/slot.ts'
import { counterDepth } from '../tops/counter-body.ts'
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
      heldBack: (part) => (run === undefined ? ZERO : heldBack(context, { run, depth: on.depth }, part)),
    }),
    ...worst(context, here, {
      what: 'shelves',
      about: questionKey(bay.id, shelfDepth),
      out: on.out.filter(isShelf),
      fixes: () => [],
      heldBack: () => ZERO,
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
  /** How much shallower the boxes get before this part does. */
  readonly heldBack: (part: Part) => Length
}

/** A counter is kept behind the edge of its return: it only goes back once the boxes under it leave that much room. */
function heldBack(
  context: PlanContext,
  { run, depth }: { readonly run: Run; readonly depth: Length },
  part: Part,
): Length {
  const { figures, cut } = context
  if (parseMark(part.mark)?.role !== 'T' || part.placement.z < run.z1) return ZERO
  const free = counterDepth({
    box: depth,
    leafReach: leafReach(context),
    overhang: figures.length('counter.overhang'),
    backGap: backGapOf(context, run),
    most: undefined,
    cut,
  })
  return longest(ZERO, less(free, part.width))
}

/** One message for all of them: the piece that must go back furthest, and what clears every one. */
function worst({ show, cut }: PlanContext, { fire, beside }: BesideFire, kept: Kept): readonly Message[] {
  if (fire.opening === undefined) return []
  const seen = kept.out.map((o) => o.seen)
  const partOf = ({ piece }: TooClose) => kept.out.find((o) => o.seen === piece)?.part
  const needed = (close: TooClose): Length => {
    const part = partOf(close)
    return sum(back(close), part === undefined ? ZERO : kept.heldBack(part))
  }
  const [first] = piecesTooClose(fire.opening, seen, fire.rules).toSorted((a, b) => needed(b) - needed(a))
  if (first === undefined) return []
  const by = needed(first)
  const part = partOf(first)?.id
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
