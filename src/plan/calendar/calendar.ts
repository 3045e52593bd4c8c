import { dayHours, daysOff, secondPair, siteNote, workWeek } from '../../job/chapters/install.ts'
import { startDay } from '../../job/chapters/job.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { DatedTask, Task } from '../../things/task.ts'
import { addDays, type Day, day, showDay } from '../../units/day.ts'
import type { PlanContext } from '../context.ts'
import { HAND_OVER } from '../tasks/finishing.ts'
import { readDaysOff } from './days-off.ts'
import { type OrderBy, orderDates } from './order-dates.ts'
import { recoatMessages } from './recoat.ts'
import { type Item, schedule, type Timed } from './schedule.ts'
import { handOverDay, taskFinish, taskReady, taskStart } from './task-days.ts'
import { dayOf, MINUTES_AN_HOUR, nextWorked, type WorkTime, workTime } from './working-days.ts'

export interface CalendarPlan {
  /** In the order they start. */
  readonly tasks: readonly DatedTask[]
  readonly start: Day
  /** Day of the hand-over; the snag visit comes later. */
  readonly finish: Day
  /** Date to order by, for each shop, and the task it serves. */
  readonly orderBy: readonly OrderBy[]
  readonly messages: readonly Message[]
}

export const startAlreadyPast = messageKind<{
  readonly start: string
  readonly begun: string
  readonly finish: string
}>({
  code: 'N31',
  weight: 'note',
  source: 'common practice, no source',
  says: ({ start, begun, finish }) => ({
    short: `The start, ${start}, lies before the job was begun, ${begun}.`,
    why: 'Orders cannot leave on a day that is past.',
    todo: `Accepted on ${begun} instead, it is handed over ${finish}.`,
  }),
})

/** Dates over working days: one pair of hands, drying in clock hours, lead times in working days. */
export function calendar(context: PlanContext, tasks: readonly Task[]): CalendarPlan {
  const { settle, job, figures } = context
  const week = settle.choice(workWeek, undefined, () => ({ value: 'mon-fri' as const, because: 'the usual week' }))
  const perDay = settle.choice(dayHours, undefined, () => ({
    value: figures.number('work.day-hours'),
    because: 'what is left of a day after packing up',
  }))
  const off = readDaysOff(settle.choice(daysOff, undefined, () => ({ value: '', because: 'none named' })))
  settle.choice(secondPair, undefined, () => ({
    value: 'on-call' as const,
    because: 'heavy pieces are planned for two',
  }))
  settle.asked(siteNote, undefined)
  const timeFrom = (firstDay: Day) =>
    workTime({
      firstDay,
      opens: figures.number('work.day-starts') * MINUTES_AN_HOUR,
      minutesADay: Math.round(perDay * MINUTES_AN_HOUR),
      lastWeekday: LAST_DAYS[week],
      daysOff: off.days,
    })
  const begun = day(job.created)
  const start = settle.choice(startDay, undefined, () => ({
    value: firstWorkDay(timeFrom(addDays(begun, figures.number('work.first-days')))),
    because: 'a week for the client to say yes',
  }))
  const dated = datedIn(timeFrom(start), tasks)
  const late = start < begun ? past(context, { start, begun, finish: datedIn(timeFrom(begun), tasks).finish }) : []
  return {
    ...dated,
    messages: [...late, ...off.messages, ...recoatMessages(dated.tasks)],
  }
}

const LAST_DAYS = { 'mon-thu': 4, 'mon-fri': 5, 'mon-sat': 6 } as const

const firstWorkDay = (time: WorkTime): Day => dayOf(time, nextWorked(time, 0))

const past = (
  context: PlanContext,
  dates: { readonly start: Day; readonly begun: Day; readonly finish: Day },
): readonly Message[] => [
  raise(
    startAlreadyPast,
    {
      about: questionKey('job', startDay),
      place: 'calendar',
      fixes: [
        {
          says: `start on ${showDay(dates.begun)}`,
          answers: [{ key: questionKey('job', startDay), value: context.job.created }],
        },
      ],
    },
    { start: showDay(dates.start), begun: showDay(dates.begun), finish: showDay(dates.finish) },
  ),
]

function datedIn(time: WorkTime, tasks: readonly Task[]): Omit<CalendarPlan, 'messages'> {
  const byId = new Map(tasks.map((t) => [t.id, t]))
  const timed = schedule(tasks.map(itemOf), time)
  const timeOf = new Map(timed.map((t) => [t.id, t]))
  const dated = timed.flatMap((own) => {
    const task = byId.get(own.id)
    return task === undefined ? [] : [within(own.id, () => datedTask(task, own, timeOf.get(own.drivenBy), time))]
  })
  const first = dated[0]?.start ?? firstWorkDay(time)
  const last = dated.findLast((t) => t.id === HAND_OVER) ?? dated.at(-1)
  const finish = handOverDay({ finish: last?.finish ?? first })
  return { tasks: dated, start: first, finish, orderBy: orderDates(time, dated) }
}

const itemOf = (task: Task): Item => ({
  id: task.id,
  after: task.after,
  minutes: Math.round((task.hours / task.people) * MINUTES_AN_HOUR),
  waitMinutes: Math.round(task.wait.clockHours * MINUTES_AN_HOUR),
  waitDays: task.wait.workingDays,
})

function datedTask(task: Task, own: Timed, driver: Timed | undefined, time: WorkTime): DatedTask {
  const at = (minutes: number) => ({ moment: { minutes }, time })
  const start = taskStart({
    after: own.drivenBy,
    readyOn: driver === undefined ? time.firstDay : dayOf(time, Math.min(driver.ready, own.starts)),
    ...at(own.starts),
  })
  const finish = taskFinish({
    start,
    work: task.hours,
    people: task.people,
    dayHours: time.minutesADay / MINUTES_AN_HOUR,
    ...at(own.ends),
  })
  const { clockHours, workingDays } = task.wait
  return {
    ...task,
    start,
    finish,
    ready: taskReady({ finish, dryingHours: clockHours, deliveryDays: workingDays, ...at(own.ready) }),
    startsAt: own.starts / MINUTES_AN_HOUR,
    endsAt: own.ends / MINUTES_AN_HOUR,
    slack: own.slack / MINUTES_AN_HOUR,
    drivenBy: own.drivenBy,
  }
}
