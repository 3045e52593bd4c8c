import { choiceField, countField, moneyField, numberField, percentField, textField } from '../entries.ts'

const at = { chapter: 'price', section: 'choices', each: 'job' } as const

export const hourRate = moneyField({
  ...at,
  id: 'hourRate',
  short: 'hour rate',
  asks: () => 'What does one hour of yours cost the client?',
  why: 'Hours times rate is most of the price.',
})
export const hourWorth = moneyField({
  ...at,
  id: 'hourWorth',
  short: 'hour worth',
  asks: () => 'What is one hour of yours worth to you?',
  why: 'Make or buy is weighed with it, not with the billed rate.',
})
export const sheetPrice = moneyField({
  ...at,
  id: 'sheetPrice',
  short: 'sheet price',
  asks: () => 'What does one sheet of the carcass panel cost?',
  why: 'The largest line of the materials.',
})
export const handling = percentField(
  {
    ...at,
    id: 'handling',
    short: 'handling',
    asks: () => 'Which mark-up do you put on materials?',
    why: 'For fetching and carrying them.',
  },
  0,
  100,
)
export const sundries = percentField(
  {
    ...at,
    id: 'sundries',
    short: 'sundries',
    asks: () => 'Which share of the materials goes on sundries?',
    why: 'Abrasives, rags, bits, masks.',
  },
  0,
  50,
)
export const trips = countField(
  {
    ...at,
    id: 'trips',
    short: 'trips',
    asks: () => 'How many trips to the site and the shops?',
    why: 'Travel is a cost.',
  },
  0,
  200,
)
export const tripCost = moneyField({
  ...at,
  id: 'tripCost',
  short: 'trip cost',
  asks: () => 'What does one trip cost?',
  why: 'Fuel and time on the road.',
})
export const overhead = percentField(
  {
    ...at,
    id: 'overhead',
    short: 'overhead',
    asks: () => 'Which overhead, on the direct cost?',
    why: 'Rent, insurance, tools, the phone.',
  },
  0,
  200,
)
export const contingency = percentField(
  { ...at, id: 'contingency', short: 'contingency', asks: () => 'Which contingency?', why: 'Old walls surprise.' },
  0,
  100,
)
export const profitKind = choiceField(
  {
    ...at,
    id: 'profitKind',
    short: 'profit kind',
    asks: () => 'Do you count profit as mark-up or as margin?',
    why: '20 % mark-up on 1,000 is 200; 20 % margin is 250.',
  },
  { markup: 'mark-up: part of the cost', margin: 'margin: part of the price' },
)
export const profit = percentField(
  { ...at, id: 'profit', short: 'profit', asks: () => 'How much profit?', why: 'What is left for the shop.' },
  0,
  99,
)
export const tax = percentField(
  { ...at, id: 'tax', short: 'tax', asks: () => 'Which tax is added?', why: 'As your local rule asks.' },
  0,
  50,
)
export const roundTo = numberField(
  {
    ...at,
    id: 'roundTo',
    short: 'rounded up to',
    asks: () => 'To which whole amount is the price rounded up?',
    why: 'Before tax.',
  },
  'whole currency',
  1,
  1000,
)
export const discount = moneyField({
  ...at,
  id: 'discount',
  short: 'discount',
  asks: () => 'Is there a discount?',
  why: 'Taken off the price before tax.',
})
export const quoteNumber = textField(
  {
    ...at,
    id: 'quoteNumber',
    short: 'quote number',
    asks: () => 'Which number does the quote carry?',
    why: 'As your own books count.',
  },
  30,
  false,
)
export const validDays = countField(
  {
    ...at,
    id: 'validDays',
    short: 'valid',
    asks: () => 'For how many days does the quote hold?',
    why: 'Prices of panels move.',
  },
  1,
  365,
)

export const PRICE_FIELDS = [
  hourRate,
  hourWorth,
  sheetPrice,
  handling,
  sundries,
  trips,
  tripCost,
  overhead,
  contingency,
  profitKind,
  profit,
  tax,
  roundTo,
  discount,
  quoteNumber,
  validDays,
] as const
