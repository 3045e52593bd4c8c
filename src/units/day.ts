import { Temporal } from 'temporal-polyfill'

declare const dayBrand: unique symbol
/** A calendar day, `2026-12-10` (ISO 8601): no clock, no time zone. */
export type Day = string & { readonly [dayBrand]: 'day' }

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const

/** Checks and brands an ISO day. Throws RangeError for a day that does not exist. */
export const day = (iso: string): Day => Temporal.PlainDate.from(iso, { overflow: 'reject' }).toString() as Day

export const addDays = (from: Day, days: number): Day => Temporal.PlainDate.from(from).add({ days }).toString() as Day

/** Whole days from `from` to `to`; negative when `to` is earlier. */
export const daysBetween = (from: Day, to: Day): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'day' }).days

/** ISO weekday: 1 = Monday … 7 = Sunday. */
export const weekday = (d: Day): number => Temporal.PlainDate.from(d).dayOfWeek

/** `Thu 10 Dec`: as the papers print it. */
export function showDay(d: Day): string {
  const date = Temporal.PlainDate.from(d)
  return `${WEEKDAYS[date.dayOfWeek - 1]} ${date.day} ${MONTHS[date.month - 1]}`
}

/** `Thu 10 Dec 2026`. */
export const showDayAndYear = (d: Day): string => `${showDay(d)} ${Temporal.PlainDate.from(d).year}`
