import { diagonalFits, longestWithDiagonal } from '../../geometry/squares.ts'
import { partitions } from '../../job/chapters/box-inside.ts'
import {
  boxCount,
  boxDepth,
  boxHeight,
  boxKind,
  boxWidths,
  looseShelves,
  tallHeight,
} from '../../job/chapters/cabinets.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, over, shortest, size, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { crownDropOf } from '../run/run-levels.ts'
import type { Run } from '../run/slot.ts'
import { boxTooNarrow } from '../run/slot-messages.ts'
import { recessDepth } from '../survey/outline.ts'
import { backGapOf, leafReach } from './box-depth.ts'
import { partitionRows } from './box-inside.ts'
import {
  boxDoesNotTilt,
  boxesPastReturn,
  boxesStandProud,
  boxTooShallow,
  looseShelfSags,
  widthsDoNotFill,
} from './box-messages.ts'
import type { Box, RunOfBoxes } from './boxes.ts'
import { lipFor, widestSpan } from './loose-shelf.ts'
import { partitionMessages } from './partition-messages.ts'

/** What stands in the way of the boxes of one run, or must be agreed to. */
export function boxRunMessages(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  return [
    ...narrow(context, built),
    ...shallow(context, built),
    ...doNotFill(context, built),
    ...tilt(context, built),
    ...proud(context, built),
    ...sag(context, built),
    ...partitionMessages(context, built),
  ]
}

const at = (built: RunOfBoxes, id: string): { readonly about: QuestionKey; readonly place: string } => ({
  about: questionKey(built.run.bay.id, { id }),
  place: built.run.bay.name,
})

function narrow(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  const { figures, show } = context
  const least = figures.length('box.least')
  const [first = least, ...others] = built.wanted
  const width = shortest(first, ...others)
  if (width >= least) return []
  const values = { width: show.withUnit(width), least: show.withUnit(least), short: show.withUnit(less(least, width)) }
  const value = Math.max(1, Math.floor(built.run.width / least))
  const fixes = [{ says: `${value} boxes`, answers: [{ key: questionKey(built.run.bay.id, boxCount), value }] }]
  return [raise(boxTooNarrow, { ...at(built, boxCount.id), fixes }, values)]
}

function shallow(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  const { figures, show } = context
  const least = figures.length('box.depth-least')
  if (built.depth >= least) return []
  const key = questionKey(built.run.bay.id, boxDepth)
  const most = closesOnReturn(context, built.run) ? recessDepth(built.run.wall) : undefined
  const staysInside = most === undefined || sum(backGapOf(context, built.run), least) <= most
  const fixes = [
    ...(staysInside ? [{ says: `${show.withUnit(least)} deep`, answers: [{ key, value: least }] }] : []),
    noBoxes(built.run),
  ]
  const values = {
    depth: show.withUnit(built.depth),
    least: show.withUnit(least),
    short: show.withUnit(less(least, built.depth)),
    way: staysInside ? `make them ${show.withUnit(least)} deep, or build none here` : 'build none here',
  }
  return [raise(boxTooShallow, { ...at(built, boxDepth.id), fixes }, values)]
}

const noBoxes = ({ bay }: Run): Fix => ({
  says: 'no boxes here',
  answers: [{ key: questionKey(bay.id, boxKind), value: 'none' }],
})

function doNotFill(context: PlanContext, { askedTotal, ...built }: RunOfBoxes): readonly Message[] {
  if (askedTotal === undefined) return []
  const { show } = context
  const key = questionKey(built.run.bay.id, boxWidths)
  const fixes = [{ says: built.wanted.map((w) => show.length(w)).join(' · '), answers: [{ key, value: built.wanted }] }]
  const values = {
    total: show.withUnit(askedTotal),
    run: show.withUnit(built.run.width),
    difference: show.withUnit(size(less(askedTotal, built.run.width))),
    which: askedTotal > built.run.width ? 'wide' : 'narrow',
  }
  return [raise(widthsDoNotFill, { ...at({ ...built, askedTotal }, boxWidths.id), fixes }, values)]
}

/** Stood up on the floor in front, then lifted on the plinth. */
function tilt(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  const { figures, cut, show } = context
  const { run, depth } = built
  if (built.boxes.length === 0) return []
  const clear = figures.length('tilt.clear')
  const room = less(run.wall.lowestCeiling, clear)
  const over = less(room, crownDropOf(context, run.wall), run.z0)
  if (diagonalFits(run.boxHeight, depth, room) && run.boxHeight <= over) return []
  const largest = cut.down(longest(ZERO, shortest(longestWithDiagonal(depth, room), over)))
  const key = run.kind === 'tall' ? questionKey(run.bay.id, tallHeight) : questionKey('job', boxHeight)
  const values = {
    height: show.withUnit(run.boxHeight),
    depth: show.withUnit(depth),
    room: show.withUnit(shortest(room, over)),
    largest: show.withUnit(largest),
  }
  const fixes = [{ says: `boxes ${show.withUnit(largest)} high`, answers: [{ key, value: largest }] }]
  return [raise(boxDoesNotTilt, { about: key, place: run.bay.name, fixes }, values)]
}

/** Doors may stand past the return; box fronts may not where fillers, kick plate and counter end at its wall. */
function proud(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  const { show } = context
  const { run, depth } = built
  const returnDepth = recessDepth(run.wall)
  if (returnDepth === undefined || built.boxes.length === 0) return []
  const fronts: Length = less(sum(backGapOf(context, run), depth), returnDepth)
  if (fronts > 0 && closesOnReturn(context, run)) return [pastReturn(context, built, fronts)]
  const by = sum(fronts, leafReach(context))
  return by > 0 ? [raise(boxesStandProud, at(built, boxDepth.id), { by: show.withUnit(by) })] : []
}

/** A run in an alcove, and on a flat wall one that is closed to the breast beside it; a gable is finished all the way. */
const closesOnReturn = ({ bays }: PlanContext, run: Run): boolean =>
  run.wall.kind === 'alcove' ||
  (['left', 'right'] as const).some(
    (side) =>
      bays[run.bay.index + (side === 'left' ? -1 : 1)]?.kind === 'breast' &&
      (run[side].fit === 'filler' || run[side].fit === 'caulk'),
  )

function pastReturn(context: PlanContext, built: RunOfBoxes, fronts: Length): Message {
  const { show, cut, figures } = context
  const { run, depth } = built
  const key = questionKey(run.bay.id, boxDepth)
  const most = cut.down(less(depth, fronts))
  const withDoors = cut.down(less(most, leafReach(context)))
  const depths = [...new Set([withDoors, most])].filter((value) => value >= figures.length('box.depth-least'))
  const fixes = [
    ...depths.map((value) => ({ says: `boxes ${show.withUnit(value)} deep`, answers: [{ key, value }] })),
    noBoxes(run),
  ]
  const values = { by: show.withUnit(fronts), most: show.withUnit(most), withDoors: show.withUnit(withDoors) }
  return raise(boxesPastReturn, { ...at(built, boxDepth.id), fixes }, values)
}

function sag(context: PlanContext, built: RunOfBoxes): readonly Message[] {
  const [worst] = built.boxes.filter((b) => b.looseShelves > 0).toSorted((a, b) => widestSpan(b) - widestSpan(a))
  if (worst === undefined) return []
  const span = widestSpan(worst)
  const lip = lipOver(context, built, span)
  if (lip.kind !== 'too long') return []
  const { show, cut } = context
  const value = countThatCarries(context, built)
  const fixes = [
    dividersThatCarry(context, built),
    ...(value === undefined
      ? []
      : [{ says: `${value} boxes`, answers: [{ key: questionKey(built.run.bay.id, boxCount), value }] }]),
    { says: 'no loose shelves', answers: [{ key: questionKey('job', looseShelves), value: 0 }] },
  ]
  const values = { span: show.withUnit(span), most: show.withUnit(cut.down(lip.mostSpan)) }
  return [raise(looseShelfSags, { ...at(built, boxCount.id), fixes }, values)]
}

const lipOver = (context: PlanContext, { boxes, make }: RunOfBoxes, span: Length) =>
  lipFor(context, { span, insideDepth: boxes[0]?.insideDepth ?? ZERO, carcass: make.carcass })

/** Dividers spread evenly in each box whose loose shelves would sag, as few as carry them. */
function dividersThatCarry(context: PlanContext, built: RunOfBoxes): Fix {
  const { run, make } = built
  const carries = (span: Length) => lipOver(context, built, span).kind !== 'too long'
  const sagging = built.boxes.filter((b) => b.looseShelves > 0 && !carries(widestSpan(b)))
  const spanWith = (box: Box, dividers: number) =>
    over(less(box.width, times(make.carcass, dividers + 2)), dividers + 1)
  const added = sagging.flatMap((box) => {
    const count = Array.from({ length: MOST_MORE }, (_, i) => i + 1).find((n) => carries(spanWith(box, n))) ?? MOST_MORE
    return Array.from({ length: count }, () => ({ box: box.number, what: 'divider' as const }))
  })
  const numbers = new Set(sagging.map((box) => box.number))
  const kept = partitionRows(context, run).filter((row) => row.what !== 'divider' || !numbers.has(row.box))
  const says = `${added.length === 1 ? 'a divider' : `${added.length} dividers`} in box ${[...numbers].join(', ')}`
  return { says, answers: [{ key: questionKey(run.bay.id, partitions), value: [...kept, ...added] }] }
}

/** Boxes, or dividers of a box, are tried up to this many more. */
const MOST_MORE = 12

/** Fewest boxes, more than now, whose loose shelves carry their load. */
function countThatCarries(context: PlanContext, built: RunOfBoxes) {
  const { run, make } = built
  const counts = Array.from({ length: MOST_MORE }, (_, i) => run.boxCount + i + 1)
  return counts.find((count) => {
    const span = less(context.cut.upHalf(over(run.width, count)), times(make.carcass, 2))
    return span > 0 && lipOver(context, built, span).kind !== 'too long'
  })
}
