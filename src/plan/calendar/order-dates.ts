import { within } from '../../things/formula.ts'
import type { DatedTask } from '../../things/task.ts'
import type { Day } from '../../units/day.ts'
import { ORDERS, REQUESTS } from '../tasks/office.ts'
import { orderByDay } from './task-days.ts'
import { MINUTES_AN_HOUR, type WorkTime } from './working-days.ts'

/** The last day an order may leave, and the task that first needs what it brings. */
export interface OrderBy {
  readonly shop: string
  readonly by: Day
  readonly forTask: string
}

/** Shops by the task that sends their order. */
const SHOPS: readonly (readonly [shop: string, task: string])[] = [
  ['panels', ORDERS.panels],
  ['lumber', ORDERS.panels],
  ['hardware', ORDERS.hardware],
  ['sundries', ORDERS.hardware],
  ['coatings', ORDERS.coatings],
  ['boxes', REQUESTS.boxes],
  ['fronts', REQUESTS.fronts],
  ['spraying', REQUESTS.spraying],
]

/** Order-by = start of the first task that waits for the order, less its delivery time in working days. */
export const orderDates = (time: WorkTime, tasks: readonly DatedTask[]): readonly OrderBy[] =>
  SHOPS.flatMap(([shop, id]) => {
    const order = tasks.find((t) => t.id === id)
    const user = tasks.find((t) => t.after.includes(id))
    if (order === undefined || user === undefined) return []
    const moment = { minutes: Math.round(user.startsAt * MINUTES_AN_HOUR) }
    const by = within(`order.${shop}`, () =>
      orderByDay({ start: user.start, leadDays: order.wait.workingDays, moment, time }),
    )
    return [{ shop, by, forTask: user.id }]
  })
