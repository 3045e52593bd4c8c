import type { Field, Look } from '../../things/field.ts'
import { choiceField, countField, lengthsField, moneyField, range } from '../entries.ts'
import { bays } from './wall.ts'

const at = { chapter: 'make-or-buy', section: 'choices', each: 'job' } as const
/** Boxes may stand somewhere on this wall. */
const hasRun = (look: Look) => look(bays)?.some((b) => b.kind !== 'breast') ?? false

const WAYS = { make: 'make', buy: 'buy' } as const
export const boxesWay = choiceField(
  {
    ...at,
    id: 'boxesWay',
    short: 'boxes',
    asks: () => 'Who makes the boxes?',
    why: 'Money, your evenings and the finish date pull different ways.',
    when: hasRun,
  },
  WAYS,
)
export const frontsWay = choiceField(
  {
    ...at,
    id: 'frontsWay',
    short: 'doors',
    asks: () => 'Who makes the doors?',
    why: 'Bought doors leave the cut list for the door request.',
    when: hasRun,
  },
  WAYS,
)
export const sprayingWay = choiceField(
  {
    ...at,
    id: 'sprayingWay',
    short: 'spraying',
    asks: () => 'Who paints doors and boxes?',
    why: 'It sets paint, drying days, and what may be done in the house.',
  },
  { make: 'painted here', buy: 'a spray shop' },
)

const buys = (field: Field<'make' | 'buy'>) => (look: Look) => look(field) === 'buy'
export const boxQuote = moneyField({
  ...at,
  id: 'boxQuote',
  short: 'box quote',
  asks: () => 'What does the shop ask for one box?',
  why: 'From their quote.',
  when: buys(boxesWay),
})
export const boxLead = countField(
  {
    ...at,
    id: 'boxLead',
    short: 'box lead time',
    asks: () => 'How many working days until the boxes are ready?',
    why: 'The install waits for them.',
    when: buys(boxesWay),
  },
  0,
  200,
)
export const stockBoxes = lengthsField(
  {
    ...at,
    id: 'stockBoxes',
    short: 'stock widths',
    asks: () => 'Which widths of ready-made boxes does the shop sell?',
    why: 'Ready-made boxes are compared with boxes to measure.',
    when: buys(boxesWay),
  },
  range(4, 96, 100, 2400),
  { least: 1, most: 30 },
)
export const frontQuote = moneyField({
  ...at,
  id: 'frontQuote',
  short: 'door quote',
  asks: () => 'What does the shop ask for one door?',
  why: 'From their quote.',
  when: buys(frontsWay),
})
export const frontLead = countField(
  {
    ...at,
    id: 'frontLead',
    short: 'door lead time',
    asks: () => 'How many working days until the doors are ready?',
    why: 'Painting or hanging waits for them.',
    when: buys(frontsWay),
  },
  0,
  200,
)
export const sprayQuote = moneyField({
  ...at,
  id: 'sprayQuote',
  short: 'spray quote',
  asks: () => 'What does the spray shop ask for each square foot or square metre?',
  why: 'By the area in the spraying request; square foot in an inch job.',
  when: (look) => look(sprayingWay) === 'buy',
})
export const sprayLead = countField(
  {
    ...at,
    id: 'sprayLead',
    short: 'spray lead time',
    asks: () => 'How many working days does the spray shop need?',
    why: 'The install waits for it.',
    when: (look) => look(sprayingWay) === 'buy',
  },
  0,
  200,
)
export const deliveryCost = moneyField({
  ...at,
  id: 'deliveryCost',
  short: 'delivery',
  asks: () => 'What do the shops ask for delivery, all together?',
  why: 'Added once to what is bought in.',
  when: (look) => [boxesWay, frontsWay].some((f) => look(f) === 'buy') || look(sprayingWay) === 'buy',
})

export const MAKE_OR_BUY_FIELDS = [
  boxesWay,
  boxQuote,
  boxLead,
  stockBoxes,
  frontsWay,
  frontQuote,
  frontLead,
  sprayingWay,
  sprayQuote,
  sprayLead,
  deliveryCost,
] as const
