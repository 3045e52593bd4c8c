import { describe, expect, it } from 'vitest'
import { schedule } from '../../src/plan/calendar/schedule.ts'
import {
  afterWork,
  afterWorkingDays,
  beforeWork,
  dayOf,
  nextWorked,
  workTime,
} from '../../src/plan/calendar/working-days.ts'
import { addDays, day, daysBetween, showDay, weekday } from '../../src/units/day.ts'

const HOUR = 60
/** Monday 16 November 2026, 8:00 to 15:00, Monday to Friday. Worked example, invented, computed by hand. */
const time = workTime({
  firstDay: day('2026-11-16'),
  opens: 8 * HOUR,
  minutesADay: 7 * HOUR,
  lastWeekday: 5,
  daysOff: [day('2026-11-19')],
})
const at = (dayNumber: number, hour: number) => (dayNumber * 24 + hour) * HOUR

describe('days (ISO 8601, from memory: Monday is 1, YYYY-MM-DD)', () => {
  it('knows weekdays across a leap day and a year end', () => {
    expect(weekday(day('2026-11-16'))).toBe(1)
    expect(addDays(day('2028-02-28'), 1)).toBe('2028-02-29')
    expect(daysBetween(day('2026-12-31'), day('2027-01-01'))).toBe(1)
  })

  it('an all-day visit of 3 to 4 May 2027 ends before the 5th (RFC 5545 § 3.6.1: the end is not included)', () => {
    expect(daysBetween(day('2027-05-03'), addDays(day('2027-05-04'), 1))).toBe(2)
    expect(showDay(day('2027-05-03'))).toBe('Mon 3 May')
  })
})

describe('working time', () => {
  it.each([
    ['before opening', at(0, 6), at(0, 8)],
    ['inside the day', at(0, 10), at(0, 10)],
    ['at closing', at(0, 15), at(1, 8)],
    ['on the day off', at(3, 9), at(4, 8)],
    ['on Saturday', at(5, 9), at(7, 8)],
  ])('work can be done next: %s', (_, moment, expected) => expect(nextWorked(time, moment)).toBe(expected))

  it('runs over nights and the day off', () => {
    expect(afterWork(time, at(2, 12), 5 * HOUR)).toBe(at(4, 10))
    expect(beforeWork(time, at(4, 10), 5 * HOUR)).toBe(at(2, 12))
  })

  it('counts lead times in working days only', () => {
    expect(dayOf(time, afterWorkingDays(time, at(2, 9), 2))).toBe('2026-11-23')
  })
})

describe('one pair of hands', () => {
  it('uses a drying night for other work, and dries over the weekend', () => {
    const items = [
      { id: 'prime', after: [], minutes: 2 * HOUR, waitMinutes: 4 * HOUR, waitDays: 0 },
      { id: 'coat', after: ['prime'], minutes: 3 * HOUR, waitMinutes: 72 * HOUR, waitDays: 0 },
      { id: 'tidy', after: [], minutes: 4 * HOUR, waitMinutes: 0, waitDays: 0 },
      { id: 'hang', after: ['coat'], minutes: 1 * HOUR, waitMinutes: 0, waitDays: 0 },
    ]
    const timed = Object.fromEntries(schedule(items, time).map((t) => [t.id, t]))
    expect(timed.prime!.starts).toBe(at(0, 8))
    expect(timed.tidy!.starts).toBe(at(0, 10))
    // Dry at 14:00, hands free at 14:00: one hour on Monday, two on Tuesday.
    expect([timed.coat!.starts, timed.coat!.ends]).toEqual([at(0, 14), at(1, 10)])
    // 72 h from Tuesday 10:00 is Friday 10:00.
    expect(timed.hang!.starts).toBe(at(4, 10))
    expect(timed.hang!.drivenBy).toBe('coat')
    expect(timed.coat!.slack).toBe(0)
  })

  it('takes the longest remaining chain first, then what is written first', () => {
    const one = (id: string, hours: number, after: readonly string[] = []) => ({
      id,
      after,
      minutes: hours * HOUR,
      waitMinutes: 0,
      waitDays: 0,
    })
    const order = schedule([one('A', 1), one('B', 1), one('C', 2, ['B']), one('D', 1)], time).map((t) => t.id)
    expect(order.join(' ')).toBe('B C A D')
  })
})
