import type { Message } from '../things/message.ts'
import type { DatedTask, Task } from '../things/task.ts'
import type { Day } from '../units/day.ts'
import type { PlanContext } from './context.ts'

export interface CalendarPlan {
  readonly tasks: readonly DatedTask[]
  readonly start: Day
  readonly finish: Day
  /** Date to order by, for each shop, and the task it serves. */
  readonly orderBy: readonly { readonly shop: string; readonly by: Day; readonly forTask: string }[]
  readonly messages: readonly Message[]
}

/** Dates over working days: one pair of hands, drying in clock hours, lead times in working days. */
export function calendar(context: PlanContext, _tasks: readonly Task[]): CalendarPlan {
  return { tasks: [], start: context.job.created as Day, finish: context.job.created as Day, orderBy: [], messages: [] }
}
