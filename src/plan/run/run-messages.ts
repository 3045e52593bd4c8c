import { boxKind, fillerWidth, fitLeft, fitRight, runLength, runStart } from '../../job/chapters/cabinets.ts'
import { widths } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import { flatRunEnd } from './flat-run.ts'
import { caulkedGap } from './run-fit.ts'
import type { Run } from './slot.ts'
import {
  boxTooNarrow,
  fillerTooThin,
  fillerWide,
  gapTooWideForCaulk,
  heldBeyond,
  leafBesideWall,
  runBeyondWall,
} from './slot-messages.ts'

const SIDES = ['left', 'right'] as const

/** What stands in the way of one run, or is worth knowing about it. */
export function runMessages(context: PlanContext, run: Run): readonly Message[] {
  const { figures, show, cut } = context
  const least = figures.length('box.least')
  if (run.width < least)
    return [
      raise(
        boxTooNarrow,
        {
          about: questionKey(run.bay.id, boxKind),
          place: run.bay.name,
          fixes: [{ says: 'no boxes here', answers: [{ key: questionKey(run.bay.id, boxKind), value: 'none' }] }],
        },
        {
          width: show.withUnit(run.width),
          least: show.withUnit(least),
          short: show.withUnit(cut.up(less(least, run.width))),
        },
      ),
    ]
  return [
    ...fillerMessages(context, run),
    ...SIDES.filter((side) => run[side].fit === 'caulk').flatMap((side) => caulkMessages(context, run, side)),
    ...beyondReadings(context, run),
    ...beyondWall(context, run),
  ]
}

/** A filler too thin, or wide enough to be asked about: the worst side speaks for both, for one width sets them. */
function fillerMessages(context: PlanContext, run: Run): readonly Message[] {
  const { figures, show, cut } = context
  const sides = SIDES.filter((side) => run[side].fit === 'filler')
  const [least, most] = [figures.length('filler.least'), figures.length('filler.most')]
  const key = questionKey(run.bay.id, fillerWidth)
  const where = { about: key, place: run.bay.name }
  const [thin] = sides
    .filter((side) => run[side].gapLeast < least)
    .toSorted((a, b) => run[a].gapLeast - run[b].gapLeast)
  if (thin !== undefined) {
    const { gapLeast } = run[thin]
    const short = cut.up(less(least, gapLeast))
    const value = sum(run.fillerNominal, short)
    const fixes = [moved(context, run, value) ?? { says: `fillers ${show.withUnit(value)}`, answers: [{ key, value }] }]
    return [
      raise(
        fillerTooThin,
        { ...where, fixes },
        {
          side: thin,
          gap: show.withUnit(cut.near(gapLeast)),
          least: show.withUnit(least),
          short: show.withUnit(short),
          width: show.withUnit(value),
        },
      ),
    ]
  }
  const wide = sides.filter((side) => run[side].gapMost > most)
  if (wide.length === 0) return []
  const gap = longest(ZERO, ...wide.map((side) => run[side].gapMost))
  return [
    raise(fillerWide, where, {
      sides: wide.join(' and '),
      gap: show.withUnit(cut.near(gap)),
      most: show.withUnit(most),
    }),
  ]
}

/** On a flat wall whose run was given its place or length, those leave too little: both again, with room for the fillers. */
function moved({ settle, figures, show, cut }: PlanContext, run: Run, filler: Length): Fix | undefined {
  const { wall, bay } = run
  const given = [runStart, runLength].some((field) => settle.asked(field, bay) !== undefined)
  if (wall.kind !== 'flat' || !given) return undefined
  const room = longest(filler, cut.up(figures.length('filler.least')))
  const start = run.left.fit === 'filler' ? room : run.startX
  const end = run.right.fit === 'filler' ? room : less(wall.width, run.startX, run.width)
  const length = cut.down(less(wall.width, start, end))
  return {
    says: `boxes from ${show.withUnit(start)}, ${show.withUnit(length)} long`,
    answers: [
      { key: questionKey(bay.id, runStart), value: start },
      { key: questionKey(bay.id, runLength), value: length },
    ],
  }
}

function caulkMessages(context: PlanContext, run: Run, side: 'left' | 'right'): readonly Message[] {
  const { figures, show, cut } = context
  const key = questionKey(run.bay.id, side === 'left' ? fitLeft : fitRight)
  const fixes = [{ says: 'a scribed filler there', answers: [{ key, value: 'filler' }] }]
  const most = figures.length('caulk.most')
  const tested = run.wall.kind === 'alcove' ? caulkedGap(context, run.wall, run, side) : run[side].gapMost
  return [
    ...(tested > most
      ? [
          raise(
            gapTooWideForCaulk,
            { about: key, place: run.bay.name, fixes },
            { side, gap: show.withUnit(cut.near(tested)), most: show.withUnit(most) },
          ),
        ]
      : []),
    ...(hasDoors(context)
      ? [
          raise(
            leafBesideWall,
            { about: key, place: run.bay.name, fixes },
            { side, filler: show.withUnit(figures.length('filler.nominal')) },
          ),
        ]
      : []),
  ]
}

function beyondReadings(context: PlanContext, run: Run): readonly Message[] {
  if (run.wall.kind !== 'alcove' || run.wall.waits.widths.length > 0) return []
  const [first, ...others] = run.wall.left.back.map((k) => k.at)
  if (first === undefined) return []
  const [low, high] = [shortest(first, ...others), longest(first, ...others)]
  if (run.z0 >= low && run.z1 <= high) return []
  const { show } = context
  return [
    raise(
      heldBeyond,
      { about: questionKey(run.bay.id, widths), place: run.bay.name },
      { from: show.length(run.z0), to: show.withUnit(run.z1), low: show.length(low), high: show.withUnit(high) },
    ),
  ]
}

function beyondWall(context: PlanContext, run: Run): readonly Message[] {
  const { show } = context
  const end = flatRunEnd(context, run)
  if (run.wall.kind !== 'flat' || run.wall.waits.widths.length > 0 || end <= run.wall.width) return []
  const values = {
    end: show.withUnit(end),
    wall: show.withUnit(run.wall.width),
    over: show.withUnit(less(end, run.wall.width)),
  }
  const about = questionKey(run.bay.id, runLength)
  const value = context.cut.down(less(run.width, less(end, run.wall.width)))
  const fixes =
    value < context.figures.length('box.least')
      ? []
      : [{ says: `run ${show.withUnit(value)} long`, answers: [{ key: about, value }] }]
  return [raise(runBeyondWall, { about, place: run.bay.name, fixes }, values)]
}
