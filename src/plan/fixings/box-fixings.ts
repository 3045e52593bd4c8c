import { longestScrewSold } from '../../figures/stock-lengths.ts'
import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, times } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import { along } from './along.ts'
import { countOver, type FixingLine } from './fixing-line.ts'
import { ofBox } from './masses.ts'

interface BoxWork {
  readonly parts: readonly Part[]
  readonly boxes: BoxPlan
}

/** Screws that hold made boxes together, pins of applied backs, and the screws that join box to box. */
export const boxFixings = (context: PlanContext, { parts, boxes }: BoxWork): readonly FixingLine[] => [
  ...boxes.boxes.flatMap((box) => {
    const own = parts.filter((part) => ofBox(part, box) && part.supply === 'made')
    return own.length === 0 ? [] : [carcassScrews(context, own), ...backPins(context, box, boxes)]
  }),
  joiningScrews(context, boxes),
]

/** Both ends of each bottom, top, rail, nailer, partition and fixed shelf: a row across its width. */
function carcassScrews({ figures, show }: PlanContext, own: readonly Part[]): FixingLine {
  const end = figures.length('screw.end')
  const pitch = figures.length('screw.pitch')
  const count = countOver(
    'screw.carcass',
    own
      .filter((part) => SCREWED.includes(parseMark(part.mark)?.role ?? ''))
      .map((part) => 2 * part.quantity * rowOf(part.width, end, pitch)),
  )
  const item = `carcass screw ${show.withUnit(figures.length('screw.carcass'))}`
  return { id: 'screw.carcass', item, use: 'boxes', count, unit: 'piece' }
}
const SCREWED: readonly string[] = ['B', 'T', 'N', 'J', 'X']

/** A nailer or rail takes two however narrow it is, or it turns. */
const rowOf = (length: Length, end: Length, pitch: Length): number => Math.max(2, along({ length, end, pitch }))

function backPins({ figures }: PlanContext, box: Box, { make }: BoxPlan): readonly FixingLine[] {
  if (make.backFit !== 'applied') return []
  const row = (length: Length) =>
    along({ length, end: figures.length('pin.end'), pitch: figures.length('screw.pitch') })
  const count = countOver('pin.back', [2 * row(box.width), 2 * row(box.height)])
  return [{ id: 'pin.back', item: 'pin or staple for thin panel', use: 'box backs', count, unit: 'piece' }]
}

/** Screws at one joint between two boxes: 2 columns of max(2, ⌈height / pitch⌉). */
export const joiningScrewsFor = formula(
  {
    id: 'fixings.joining',
    plain: '2 columns of (height / pitch, up to a whole one, at least 2)',
    source: 'common practice, no source',
    gives: 'count',
    units: { height: 'length', pitch: 'length' },
  },
  (given: { readonly height: Length; readonly pitch: Length }): number =>
    2 * Math.max(2, Math.ceil(given.height / given.pitch)),
)

/** A joining screw is shorter than the two sides it goes through. */
export const joiningScrewMost = formula<{ carcassThickness: Length; joinLess: Length }, Length>(
  {
    id: 'fixings.joining-most',
    plain: '2 × box side − what a screw is shorter',
    source: 'common practice, no source',
  },
  ({ carcassThickness, joinLess }) => less(times(carcassThickness, 2), joinLess),
)

function joiningScrews({ figures, show }: PlanContext, { boxes, carcassThickness }: BoxPlan): FixingLine {
  const pitch = figures.length('screw.join-pitch')
  const count = countOver(
    'screw.join',
    boxes
      .filter((box) => boxes.some((other) => other.run === box.run && other.number === box.number + 1))
      .map((box) => joiningScrewsFor({ height: box.height, pitch })),
  )
  const most = joiningScrewMost({ carcassThickness, joinLess: figures.length('screw.join-less') })
  const length = longestScrewSold(most, figures.units)
  return {
    id: 'screw.join',
    item: `joining screw ${show.withUnit(length)}`,
    use: 'box to box, clamped flush first',
    count,
    unit: 'piece',
  }
}
