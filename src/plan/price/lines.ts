import type { Purchase } from '../../things/supplies.ts'
import type { DatedTask } from '../../things/task.ts'
import { type Money, roundMoney } from '../../units/money.ts'
import { WORK_KINDS } from '../tasks/draft.ts'
import type { CostLine } from './cost-line.ts'

const TENTHS = 10

/** Hours of each kind of work times the hour rate; kinds without hours are left out. */
export const labourLines = (tasks: readonly DatedTask[], hour: Money): readonly CostLine[] =>
  Object.entries(WORK_KINDS).flatMap(([kind, says]) => {
    // Task hours are whole tenths.
    const tenths = tasks.filter((t) => t.work === kind).reduce((sum, t) => sum + Math.round(t.hours * TENTHS), 0)
    if (tenths === 0) return []
    const amount = roundMoney((tenths * hour) / TENTHS)
    return [{ id: `labour.${kind}`, says, quantity: tenths / TENTHS, unit: 'h', each: hour, amount }]
  })

const OUTSIDE: ReadonlySet<Purchase['shop']> = new Set(['boxes', 'fronts', 'spraying'])

const lineOf = (p: Purchase): CostLine => ({
  id: p.id,
  says: p.item,
  quantity: p.packs,
  unit: p.packSize === 1 ? p.unit : 'pack',
  each: p.priceEach,
  amount: roundMoney(p.packs * p.priceEach),
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
