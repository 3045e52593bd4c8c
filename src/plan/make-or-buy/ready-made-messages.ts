import { boxesSold } from '../../figures/stock-lengths.ts'
import { boxCount, boxDepth, boxKind, boxWidths, fillerWidth } from '../../job/chapters/cabinets.ts'
import { boxesWay, stockBoxes } from '../../job/chapters/make-or-buy.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { type Length, longest, shortest, ZERO } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'
import type { SupplyPlan } from '../supply/supply.ts'
import { type ReadyMade, readyMadeBoxes } from './ready-made.ts'

export const readyMadeFits = messageKind<{
  readonly widths: string
  readonly filler: string
  readonly height: string
  readonly depth: string
}>({
  code: 'N33',
  weight: 'note',
  source: 'common practice, no source; widths sold are yours to change',
  says: ({ widths, filler, height, depth }) => ({
    short: `Ready-made boxes fit: ${widths} wide, with fillers of ${filler} at each side.`,
    why: `Boxes of a stock size, ${height} high and ${depth} deep, cost less and come sooner than boxes to measure.`,
    todo: 'Take them by this key, or keep the boxes to measure.',
  }),
})

export const readyMadeDoesNotFit = messageKind<{ readonly because: string; readonly nearest: string }>({
  code: 'N34',
  weight: 'note',
  source: 'common practice, no source; widths sold are yours to change',
  says: ({ because, nearest }) => ({
    short: `No ready-made box fits here: ${because}.`,
    why: 'Stock boxes come in steps; they must meet height and depth, and leave fillers that can be scribed.',
    todo: `Have the boxes made to measure. ${nearest}`,
  }),
})

/** For each run of bought boxes between two fillers: whether boxes of a stock size would do, with one key that takes them. */
export function readyMadeMessages(context: PlanContext, supply: SupplyPlan, { boxes }: BoxPlan): readonly Message[] {
  if (supply.requests.every((request) => request.id !== 'boxes')) return []
  const sold = soldIn(context)
  const runs = new Map(boxes.map((box) => [box.run.bay.id, box.run]))
  return [...runs.values()]
    .filter((run) => run.wall.kind === 'alcove' && run.left.fit === 'filler' && run.right.fit === 'filler')
    .flatMap((run) =>
      messagesOf(
        context,
        run,
        boxes.filter((box) => box.run.bay.id === run.bay.id),
        sold,
      ),
    )
}

function messagesOf(context: PlanContext, run: Run, standing: readonly Box[], sold: Sold): readonly Message[] {
  const [first] = standing
  if (first === undefined) return []
  const fit = { run, height: first.height, depth: first.depth }
  const refused = refusal(context, fit, sold)
  if (refused !== undefined) return [refused]
  const taken = standing.every((box) => sold.widths.includes(box.width)) && sold.depths.includes(first.depth)
  if (taken) return []
  const found = bestIn(context, run, sold)
  return [
    found === undefined
      ? doesNotFit(run, NO_WIDTHS, 'Other stock widths change it: type those your shop sells.')
      : fits(context, fit, found, sold),
  ]
}

const NO_WIDTHS = 'no set of stock widths leaves fillers that can be scribed and held'

interface Fit {
  readonly run: Run
  readonly height: Length
  readonly depth: Length
}

type Sold = ReturnType<typeof boxesSold>

/** The widths the shop sells are asked; heights and depths are the usual ones. */
const soldIn = ({ settle, figures }: PlanContext): Sold => {
  const usual = boxesSold(figures.units)
  const widths = settle.choice(stockBoxes, undefined, () => ({ value: usual.widths, because: 'usual stock widths' }))
  return { ...usual, widths }
}

function refusal({ show }: PlanContext, { run, height, depth }: Fit, sold: Sold): Message | undefined {
  if (!sold.heights.includes(height)) {
    const nearest = sold.heights.reduce((a, b) => (Math.abs(b - height) < Math.abs(a - height) ? b : a))
    return doesNotFit(
      run,
      `boxes ${show.withUnit(height)} high are not a stock size`,
      `The nearest stock height is ${show.withUnit(nearest)}.`,
    )
  }
  if (sold.depths.some((d) => d <= depth)) return undefined
  const [first = depth, ...others] = sold.depths
  const least = shortest(first, ...others)
  return doesNotFit(
    run,
    `the boxes may be ${show.withUnit(depth)} deep at most`,
    `The shallowest in stock are ${show.withUnit(least)} deep.`,
  )
}

const doesNotFit = (run: Run, because: string, nearest: string): Message =>
  raise(readyMadeDoesNotFit, { about: questionKey('job', boxesWay), place: run.bay.name }, { because, nearest })

function bestIn({ figures, bays }: PlanContext, run: Run, sold: Sold): ReadyMade | undefined {
  const breast = bays.findIndex((bay) => bay.kind === 'breast')
  return readyMadeBoxes({
    slot: run.slot,
    sold: sold.widths,
    fillerLeast: figures.length('ready-made.filler-least'),
    fillerMost: figures.length('filler.most'),
    widerAt: bays.findIndex((bay) => bay.id === run.bay.id) < breast ? 'right' : 'left',
  })
}

function fits({ show }: PlanContext, { run, height, depth }: Fit, { widths, filler }: ReadyMade, sold: Sold): Message {
  const stockDepth = longest(ZERO, ...sold.depths.filter((d) => d <= depth))
  const at = (field: { readonly id: string }) => questionKey(run.bay.id, field)
  const says = widths.map(show.length).join(' and ')
  const fix = {
    says: `take ready-made boxes of ${says}`,
    answers: [
      { key: at(fillerWidth), value: filler },
      { key: at(boxCount), value: widths.length },
      { key: at(boxWidths), value: widths },
      { key: at(boxDepth), value: stockDepth },
    ],
  }
  return raise(
    readyMadeFits,
    { about: at(boxKind), place: run.bay.name, fixes: [fix] },
    {
      widths: says,
      filler: show.withUnit(filler),
      height: show.withUnit(height),
      depth: show.withUnit(stockDepth),
    },
  )
}
