import { formula, within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { DatedTask } from '../../things/task.ts'
import { type Hours, hours } from '../../units/hours.ts'
import { type Money, roundMoney } from '../../units/money.ts'
import { WORK_KINDS } from '../tasks/draft.ts'
import type { CostLine } from './cost-line.ts'

const TENTHS = 10

/** Hours of several tasks. Each has whole tenths of an hour: added as such they stay so. */
export const hoursTogether = formula(
  {
    id: 'price.hours',
    plain: 'hours of its tasks',
    source: 'arithmetic',
    gives: 'hours',
    from: { spent: { id: 'tasks.hours' } },
  },
  (of: { readonly spent: readonly Hours[] }): Hours =>
    hours(of.spent.reduce((tenths, h) => tenths + Math.round(h * TENTHS), 0) / TENTHS),
)

/** What hours cost, rounded once, half up. */
export const hoursAmount = formula(
  {
    id: 'price.hours-line.amount',
    plain: 'hours × hour rate',
    source: 'arithmetic',
    gives: 'money',
    from: { spent: hoursTogether },
    units: { hourRate: 'money' },
  },
  (of: { readonly spent: Hours; readonly hourRate: Money }): Money =>
    roundMoney((Math.round(of.spent * TENTHS) * of.hourRate) / TENTHS),
)

/** Hours of each kind of work times the hour rate; kinds without hours are left out. */
export const labourLines = (tasks: readonly DatedTask[], hourRate: Money): readonly CostLine[] =>
  Object.entries(WORK_KINDS).flatMap(([kind, says]) =>
    within(`labour.${kind}`, () => {
      const spent = hoursTogether({ spent: tasks.filter((t) => t.work === kind).map((t) => t.hours) })
      if (spent === 0) return []
      const amount = hoursAmount({ spent, hourRate })
      return [{ id: `labour.${kind}`, says, quantity: spent, unit: 'h', each: hourRate, amount }]
    }),
  )

const OUTSIDE: ReadonlySet<Purchase['shop']> = new Set(['boxes', 'fronts', 'spraying'])

/** What so many packs cost, rounded once, half up. */
export const packsAmount = formula(
  {
    id: 'price.line.amount',
    plain: 'packs × price of one',
    source: 'arithmetic',
    gives: 'money',
    from: {
      packs: ['purchase.packs', 'purchase.with-spare.packs', 'tins.packs'].map((id) => ({ id })),
      priceEach: { id: 'purchase.price-each' },
    },
    units: { packs: 'count', priceEach: 'money' },
  },
  (of: { readonly packs: number; readonly priceEach: Money }): Money => roundMoney(of.packs * of.priceEach),
)

const lineOf = (p: Purchase): CostLine => ({
  id: p.id,
  says: p.item,
  quantity: p.packs,
  unit: p.packSize === 1 ? p.unit : 'pack',
  each: p.priceEach,
  amount: within(p.id, () => packsAmount({ packs: p.packs, priceEach: p.priceEach })),
  ...(p.priceKnown === 'invented' ? { known: p.priceKnown } : {}),
})

/** Materials at purchase sizes. */
export const materialLines = (purchases: readonly Purchase[]): readonly CostLine[] =>
  purchases.filter((p) => !OUTSIDE.has(p.shop)).map(lineOf)

/** What outside shops make, and their delivery. */
export const boughtInLines = (purchases: readonly Purchase[], delivery: Money): readonly CostLine[] => {
  const lots = purchases.filter((p) => OUTSIDE.has(p.shop)).map(lineOf)
  const carried: CostLine = {
    id: 'bought.delivery',
    says: 'Delivery',
    quantity: 1,
    unit: 'all',
    each: delivery,
    amount: delivery,
  }
  return delivery === 0 ? lots : [...lots, carried]
}
