import type { Plan } from '../plan/plan.ts'
import { type Day, showDay } from '../units/day.ts'
import { SHOP_ORDER, SHOPS } from './shop-words.ts'

/** A day by which orders leave, and to whom. */
export interface OrderDay {
  readonly by: Day
  readonly shops: readonly string[]
}

/** The days orders leave, first day first: only of shops something is bought from or asked of. */
export function orderDays({ calendar, purchases, supply }: Plan): readonly OrderDay[] {
  const used = new Set<string>([...purchases.map((p) => p.shop), ...supply.requests.map((r) => r.id)])
  const orders = calendar.orderBy.filter((o) => used.has(o.shop))
  const days = [...new Set(orders.map((o) => o.by))].sort()
  return days.map((by) => ({
    by,
    shops: SHOP_ORDER.filter((shop) => orders.some((o) => o.by === by && o.shop === shop)).map((shop) => SHOPS[shop]),
  }))
}

/** `Mon 30 Nov: door maker`. */
export const orderWords = ({ by, shops }: OrderDay): string => `${showDay(by)}: ${shops.join(', ')}`
