import { addDays, type Day, daysBetween, weekday } from '../../units/day.ts'

export const MINUTES_AN_HOUR = 60
export const MINUTES_A_DAY = 1440
const DAYS_A_WEEK = 7

/** When work is done. Moments are whole minutes since midnight before `firstDay`; the pure layers have no clock. */
export interface WorkTime {
  readonly firstDay: Day
  /** Minute of the day at which work starts. */
  readonly opens: number
  readonly minutesADay: number
  /** Whether day 0, 1, 2 … is worked. */
  readonly worked: (dayNumber: number) => boolean
  /** Day 0, 1, 2 … by its date; each is worked out once. */
  readonly dayAt: (dayNumber: number) => Day
}

/** Working time from a first day on: `lastWeekday` 5 = Monday to Friday. At least one weekday is always worked. */
export function workTime(of: {
  readonly firstDay: Day
  readonly opens: number
  readonly minutesADay: number
  readonly lastWeekday: number
  readonly daysOff: readonly Day[]
}): WorkTime {
  const first = weekday(of.firstDay)
  const off = new Set(of.daysOff.map((d) => daysBetween(of.firstDay, d)))
  const weekdayOf = (n: number) => ((((first - 1 + n) % DAYS_A_WEEK) + DAYS_A_WEEK) % DAYS_A_WEEK) + 1
  return {
    firstDay: of.firstDay,
    opens: of.opens,
    minutesADay: of.minutesADay,
    worked: (n) => weekdayOf(n) <= of.lastWeekday && !off.has(n),
    dayAt: daysFrom(of.firstDay),
  }
}

/** Many tasks fall on one day, and calendar arithmetic is slow beside everything else a plan does. */
function daysFrom(first: Day): WorkTime['dayAt'] {
  const known = new Map<number, Day>()
  return (n) => {
    const found = known.get(n) ?? addDays(first, n)
    known.set(n, found)
    return found
  }
}

export const dayNumberOf = (moment: number): number => Math.floor(moment / MINUTES_A_DAY)
export const dayOf = (time: WorkTime, moment: number): Day => time.dayAt(dayNumberOf(moment))
const opening = (time: WorkTime, n: number): number => n * MINUTES_A_DAY + time.opens
const closing = (time: WorkTime, n: number): number => opening(time, n) + time.minutesADay

/** The first moment from `moment` on at which work can be done. */
export function nextWorked(time: WorkTime, moment: number): number {
  let n = dayNumberOf(moment)
  if (time.worked(n) && moment < closing(time, n)) return Math.max(moment, opening(time, n))
  do n += 1
  while (!time.worked(n))
  return opening(time, n)
}

/** When work of so many minutes ends that starts at `moment`; it may run over several days. */
export function afterWork(time: WorkTime, moment: number, minutes: number): number {
  let at = nextWorked(time, moment)
  let left = minutes
  while (left > closing(time, dayNumberOf(at)) - at) {
    left -= closing(time, dayNumberOf(at)) - at
    at = nextWorked(time, closing(time, dayNumberOf(at)))
  }
  return at + left
}

/** The latest moment at which work of so many minutes may start to end by `moment`. */
export function beforeWork(time: WorkTime, moment: number, minutes: number): number {
  let at = moment
  let left = minutes
  while (left > 0) {
    const n = lastWorkedDay(time, at)
    at = Math.min(at, closing(time, n))
    const today = Math.min(left, at - opening(time, n))
    at -= today
    left -= today
  }
  return at
}

/** The last day on which work can be done before `moment`. */
function lastWorkedDay(time: WorkTime, moment: number): number {
  let n = dayNumberOf(moment)
  while (!time.worked(n) || moment <= opening(time, n)) n -= 1
  return n
}

/** Opening of the `days`-th working day after the day of `moment`; 0 days = `moment` itself. */
export function afterWorkingDays(time: WorkTime, moment: number, days: number): number {
  if (days === 0) return moment
  let n = dayNumberOf(moment)
  for (let left = days; left > 0; ) {
    n += 1
    if (time.worked(n)) left -= 1
  }
  return opening(time, n)
}

/** The latest worked moment from which `days` working days end by `moment`. */
export function beforeWorkingDays(time: WorkTime, moment: number, days: number): number {
  if (days === 0) return moment
  let n = dayNumberOf(moment)
  while (!time.worked(n) || opening(time, n) > moment) n -= 1
  for (let left = days; left > 0; ) {
    n -= 1
    if (time.worked(n)) left -= 1
  }
  return closing(time, n)
}

/** Minutes of working time between two moments; 0 when `to` is not later. */
export function workBetween(time: WorkTime, from: number, to: number): number {
  let total = 0
  for (let n = dayNumberOf(from); n <= dayNumberOf(to); n += 1) {
    if (!time.worked(n)) continue
    total += Math.max(0, Math.min(to, closing(time, n)) - Math.max(from, opening(time, n)))
  }
  return total
}
