import { dayHours } from '../../job/chapters/install.ts'
import { formula } from '../../things/formula.ts'
import type { Day } from '../../units/day.ts'
import { beforeWorkingDays, dayOf, type WorkTime } from './working-days.ts'

/** A moment of the schedule: minutes since midnight before the first day. */
export interface Moment {
  readonly minutes: number
}

/** What every date is read with. */
interface Reading {
  readonly moment: Moment
  readonly time: WorkTime
}

const WORKING_TIME = { source: 'arithmetic of working time; one pair of hands: common practice, no source' } as const
const TASK_HOURS = { id: 'tasks.hours' }

/** Day a task starts: what it waits for is ready, and the hands are free. */
export const taskStart = formula(
  {
    id: 'calendar.start',
    plain: 'first working time once all it waits for is ready and the hands are free; after what came last',
    ...WORKING_TIME,
    from: { readyOn: { id: 'calendar.ready' } },
  },
  (of: Reading & { readonly after: string; readonly readyOn: Day }): Day => dayOf(of.time, of.moment.minutes),
)

/** Day its work is done. */
export const taskFinish = formula(
  {
    id: 'calendar.finish',
    plain: 'start + hours / people, within the working hours of each day',
    ...WORKING_TIME,
    from: { start: taskStart, work: TASK_HOURS, dayHours },
    units: { work: 'hours', people: 'count', dayHours: 'hours' },
  },
  (
    of: Reading & {
      readonly start: Day
      readonly work: number
      readonly people: number
      readonly dayHours: number
    },
  ): Day => dayOf(of.time, of.moment.minutes),
)

/** Day what waits for it may start. */
export const taskReady = formula(
  {
    id: 'calendar.ready',
    plain: 'finish + drying in clock hours or + delivery in working days, whichever is later',
    ...WORKING_TIME,
    from: { finish: taskFinish },
    units: { dryingHours: 'hours', deliveryDays: 'days' },
  },
  (of: Reading & { readonly finish: Day; readonly dryingHours: number; readonly deliveryDays: number }): Day =>
    dayOf(of.time, of.moment.minutes),
)

/** Day of the hand-over, as the quote names it. */
export const handOverDay = formula(
  {
    id: 'calendar.hand-over.finish',
    plain: 'day the hand-over is done',
    ...WORKING_TIME,
    from: { finish: taskFinish },
  },
  (of: { readonly finish: Day }): Day => of.finish,
)

/** Last day an order may leave. It comes out on or after the day the order can leave: its user waits for its delivery. */
export const orderByDay = formula(
  {
    id: 'calendar.order-by',
    plain: 'start of the first task that uses it − lead time and spare days, in working days',
    source: 'common practice, no source',
    from: { start: taskStart },
    units: { leadDays: 'days' },
  },
  (of: Reading & { readonly start: Day; readonly leadDays: number }): Day =>
    dayOf(of.time, beforeWorkingDays(of.time, of.moment.minutes, of.leadDays)),
)
