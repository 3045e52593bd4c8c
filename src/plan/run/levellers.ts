import { plinthOn } from '../../job/chapters/floor-and-trim.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { sum } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { FixingLine } from '../fixings/fixing-line.ts'
import type { StandingRun } from './levels.ts'

export const feetDoNotReach = messageKind<{ lowest: string; highest: string; least: string; most: string }>({
  code: 'S24',
  weight: 'stop',
  source: 'common practice, no source; the sheet of the feet governs',
  says: (v) => ({
    short: `Screw feet would stand from ${v.lowest} to ${v.highest} high.`,
    why: `They reach from ${v.least} to ${v.most}.`,
    todo: 'Stand the boxes on a plinth frame, or choose another plinth height.',
  }),
})

/** What the boxes stand on. */
export const plinthOnOf = ({ settle }: PlanContext): 'frame' | 'feet' =>
  settle.choice(plinthOn, undefined, () => ({ value: 'frame' as const, because: 'it carries the whole run' }))

/** Screw feet under a run: four a box, and one more under each joint between two. */
export const feetOfRun = formula<{ boxes: number }, number>(
  {
    id: 'plinth.feet',
    plain: '4 × boxes + joints between boxes',
    source: 'common practice, no source',
    gives: 'count',
    units: { boxes: 'count' },
  },
  ({ boxes }) => FEET_A_BOX * boxes + Math.max(0, boxes - 1),
)
const FEET_A_BOX = 4

/** The feet to buy, each with its screws. */
export function feetLines(context: PlanContext, boxes: readonly Box[]): readonly FixingLine[] {
  if (boxes.length === 0 || plinthOnOf(context) === 'frame') return []
  const runs = [...new Set(boxes.map((box) => box.run))]
  const count = runs.reduce((n, run) => n + feetOfRun({ boxes: boxes.filter((b) => b.run === run).length }), 0)
  const use = 'under the boxes, four each and one at each joint'
  return [{ id: 'leveller', item: 'screw foot (leveller) with its screws', use, count, unit: 'piece' }]
}

/** Feet that are too short or too long for the plinth, at the highest and at the lowest floor under the run. */
export function feetMessages(
  { figures, show }: PlanContext,
  { run, plinth, dropMost }: StandingRun,
): readonly Message[] {
  const [least, most] = [figures.length('leveller.least'), figures.length('leveller.most')]
  const highest = sum(plinth, dropMost)
  if (plinth >= least && highest <= most) return []
  const about = questionKey('job', plinthOn)
  const fixes = [{ says: 'a plinth frame on packers', answers: [{ key: about, value: 'frame' }] }]
  const values = {
    lowest: show.withUnit(plinth),
    highest: show.withUnit(highest),
    least: show.withUnit(least),
    most: show.withUnit(most),
  }
  return [raise(feetDoNotReach, { about, place: run.bay.name, fixes }, values)]
}
