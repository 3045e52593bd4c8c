import { longestScrewSold } from '../../figures/stock-lengths.ts'
import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, times } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { parseMark } from '../marks.ts'
import { along } from './along.ts'
import type { FixingLine } from './fixing-line.ts'
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

/** Both ends of each bottom, top, rail, nailer and partition: a row across its width. */
function carcassScrews({ figures, show }: PlanContext, own: readonly Part[]): FixingLine {
  const end = figures.length('screw.end')
  const pitch = figures.length('screw.pitch')
  const count = own
    .filter((part) => SCREWED.includes(parseMark(part.mark)?.role ?? ''))
    .reduce((screws, part) => screws + 2 * part.quantity * rowOf(part.width, end, pitch), 0)
  const item = `carcass screw ${show.withUnit(figures.length('screw.carcass'))}`
  return { id: 'screw.carcass', item, use: 'boxes', count, unit: 'piece' }
}
const SCREWED: readonly string[] = ['B', 'T', 'N', 'J']

/** A nailer or rail takes two however narrow it is, or it turns. */
const rowOf = (length: Length, end: Length, pitch: Length): number => Math.max(2, along({ length, end, pitch }))

function backPins({ figures }: PlanContext, box: Box, { make }: BoxPlan): readonly FixingLine[] {
  if (make.backFit !== 'applied') return []
  const row = (length: Length) =>
    along({ length, end: figures.length('pin.end'), pitch: figures.length('screw.pitch') })
  const count = 2 * row(box.width) + 2 * row(box.height)
  return [{ id: 'pin.back', item: 'pin or staple for thin panel', use: 'box backs', count, unit: 'piece' }]
}

/** Screws at one joint between two boxes: 2 columns of max(2, ⌈height / pitch⌉). */
export const joiningScrewsFor = formula(
  {
    id: 'fixings.joining',
    plain: '2 columns of (height / pitch, up to a whole one, at least 2)',
    source: 'common practice, no source',
  },
  (given: { readonly height: Length; readonly pitch: Length }): number =>
    2 * Math.max(2, Math.ceil(given.height / given.pitch)),
)

function joiningScrews({ figures, show }: PlanContext, { boxes, carcassThickness }: BoxPlan): FixingLine {
  const pitch = figures.length('screw.join-pitch')
  const count = boxes
    .filter((box) => boxes.some((other) => other.run === box.run && other.number === box.number + 1))
    .reduce((screws, box) => screws + joiningScrewsFor({ height: box.height, pitch }), 0)
  const length = longestScrewSold(less(times(carcassThickness, 2), figures.length('screw.join-less')), figures.units)
  return {
    id: 'screw.join',
    item: `joining screw ${show.withUnit(length)}`,
    use: 'box to box, clamped flush first',
    count,
    unit: 'piece',
  }
}
