import type { Message } from '../../things/message.ts'
import { onHold, type Part } from '../../things/part.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { Day } from '../../units/day.ts'
import { type Hours, hours } from '../../units/hours.ts'
import type { Money } from '../../units/money.ts'
import type { Plan } from '../plan.ts'
import { comparePlans } from './compare.ts'
import { type Difference, differencesIn, type Listed } from './difference.ts'
import { sizeWords } from './parts.ts'
import { messagesCome } from './totals.ts'

/** A part as far as two plans can differ in it. */
export type ComparedPart = Pick<Part, 'mark' | 'length' | 'width' | 'thickness' | 'quantity' | 'supply'> & {
  /** Finished size in the plan's own units. */
  readonly size: string
  readonly hold: boolean
}

export type ComparedPurchase = Pick<Purchase, 'packs' | 'unit' | 'packSize' | 'priceEach'>

/** Two plans side by side: only what differs. */
export interface Itemized {
  /** What the interview says of the change, most important first. */
  readonly inShort: readonly string[]
  readonly parts: readonly Difference<ComparedPart>[]
  readonly cost: readonly Difference<Money>[]
  readonly hours: readonly Difference<Hours>[]
  readonly dates: readonly Difference<Day>[]
  readonly purchases: readonly Difference<ComparedPurchase>[]
  readonly messages: { readonly came: readonly Message[]; readonly went: readonly Message[] }
}

/** Everything that differs between two plans: by part, price line, kind of work, date, purchase and message. */
export function itemized(before: Plan, after: Plan): Itemized {
  const both = <T>(list: (plan: Plan) => readonly Listed<T>[], words: (value: T) => string) =>
    differencesIn(list(before), list(after), words)
  return {
    inShort: comparePlans(before, after)
      .filter((change) => change.mark === undefined)
      .map((change) => change.says),
    parts: both(partsOf, ({ size, supply }) => `${size} ${supply}`),
    cost: both(costOf, String),
    hours: both(hoursOf, String),
    dates: both(datesOf, String),
    purchases: both(purchasesOf, (p) => `${p.packs} ${p.packSize} ${p.unit} ${p.priceEach}`),
    messages: { came: messagesCome(before, after), went: messagesCome(after, before) },
  }
}

const partsOf = ({ parts, show }: Plan): readonly Listed<ComparedPart>[] =>
  parts.map((part) => {
    const { mark, length, width, thickness, quantity, supply } = part
    return {
      id: part.id,
      says: `${mark} ${nameOf(part)}`,
      value: { mark, length, width, thickness, quantity, supply, size: sizeWords(part, show), hold: onHold(part) },
    }
  })

/** `door stile`; what is in the one word already is not said twice. */
function nameOf({ name, piece = '' }: Part): string {
  if (name.includes(piece)) return name
  return piece.includes(name) ? piece : `${name} ${piece}`
}

const SUMS = {
  sundries: 'sundries',
  handling: 'handling',
  travel: 'travel',
  direct: 'direct cost',
  overhead: 'overhead',
  contingency: 'contingency',
  cost: 'cost',
  profit: 'profit',
  rounding: 'rounding up',
  discount: 'discount',
  beforeTax: 'before tax',
  tax: 'tax',
  total: 'price',
} as const

/** The printed lines, then the sums in the order they are reckoned. */
const costOf = ({ price }: Plan): readonly Listed<Money>[] => [
  ...[...price.labour, ...price.materials, ...price.boughtIn].map(({ id, says, amount }) => ({
    id,
    says,
    value: amount,
  })),
  ...(Object.keys(SUMS) as (keyof typeof SUMS)[]).map((id) => ({ id, says: SUMS[id], value: price[id] })),
]

const hoursOf = ({ price }: Plan): readonly Listed<Hours>[] => [
  ...price.labour.map(({ id, says, quantity }) => ({ id, says, value: hours(quantity) })),
  { id: 'hours', says: 'all', value: price.hours },
]

const datesOf = ({ calendar }: Plan): readonly Listed<Day>[] => [
  { id: 'start', says: 'start', value: calendar.start },
  ...calendar.orderBy.map(({ shop, by }) => ({ id: `order.${shop}`, says: `order by: ${shop}`, value: by })),
  { id: 'finish', says: 'hand-over', value: calendar.finish },
]

const purchasesOf = ({ purchases }: Plan): readonly Listed<ComparedPurchase>[] =>
  purchases.map(({ id, item, packs, unit, packSize, priceEach }) => ({
    id,
    says: item,
    value: { packs, unit, packSize, priceEach },
  }))
