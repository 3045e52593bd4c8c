import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Item, schedule } from '../../../src/plan/calendar/schedule.ts'
import {
  afterWorkingDays,
  dayNumberOf,
  MINUTES_A_DAY,
  workBetween,
  workTime,
} from '../../../src/plan/calendar/working-days.ts'
import { addDays, day } from '../../../src/units/day.ts'

const firstDay = day('2026-11-16')

/** Items that name only earlier ones. */
const network: fc.Arbitrary<readonly Item[]> = fc
  .array(
    fc.record({
      minutes: fc.oneof(fc.constant(0), fc.integer({ min: 3, max: 2400 })),
      waitMinutes: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 4000 })),
      waitDays: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 12 })),
      picks: fc.array(fc.nat({ max: 1000 }), { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 18 },
  )
  .map((rows) =>
    rows.map(({ picks, ...row }, i) => ({
      ...row,
      id: `T${i}`,
      after: i === 0 ? [] : [...new Set(picks.map((p) => `T${p % i}`))],
    })),
  )

const working = fc
  .record({
    hours: fc.integer({ min: 1, max: 14 }),
    lastWeekday: fc.constantFrom(4, 5, 6),
    off: fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 12 }),
  })
  .map(({ hours, lastWeekday, off }) =>
    workTime({
      firstDay,
      opens: 480,
      minutesADay: hours * 60,
      lastWeekday,
      daysOff: off.map((n) => addDays(firstDay, n)),
    }),
  )

describe('any network in any working week', () => {
  it('starts and ends work on worked days, inside hours', () => {
    fc.assert(
      fc.property(network, working, (items, time) => {
        const byId = new Map(items.map((i) => [i.id, i]))
        for (const t of schedule(items, time)) {
          expect(time.worked(dayNumberOf(t.starts))).toBe(true)
          expect(time.worked(dayNumberOf(t.ends))).toBe(true)
          expect(workBetween(time, t.starts, t.ends)).toBe(byId.get(t.id)!.minutes)
        }
      }),
      { numRuns: 150 },
    )
  })

  it('never asks the one pair of hands for two things at once', () => {
    fc.assert(
      fc.property(network, working, (items, time) => {
        const busy = schedule(items, time).filter((t) => t.ends > t.starts)
        for (const [i, t] of busy.entries()) {
          const next = busy[i + 1]
          if (next !== undefined) expect(next.starts).toBeGreaterThanOrEqual(t.ends)
        }
      }),
      { numRuns: 150 },
    )
  })

  it('respects every wait, in clock hours and in working days', () => {
    fc.assert(
      fc.property(network, working, (items, time) => {
        const timed = new Map(schedule(items, time).map((t) => [t.id, t]))
        expect(timed.size).toBe(items.length)
        for (const item of items) {
          for (const id of item.after) {
            const before = items.find((i) => i.id === id)!
            const { ends } = timed.get(id)!
            expect(timed.get(item.id)!.starts).toBeGreaterThanOrEqual(ends + before.waitMinutes)
            expect(timed.get(item.id)!.starts).toBeGreaterThanOrEqual(afterWorkingDays(time, ends, before.waitDays))
          }
        }
      }),
      { numRuns: 150 },
    )
  })

  it('never leaves the hands idle while something could be done', () => {
    fc.assert(
      fc.property(network, working, (items, time) => {
        const timed = schedule(items, time)
        const byId = new Map(timed.map((t) => [t.id, t]))
        const busy = timed.filter((t) => t.ends > t.starts)
        for (const t of busy) {
          const ready = Math.max(0, ...items.find((i) => i.id === t.id)!.after.map((id) => byId.get(id)!.ready))
          const taken = busy
            .filter((b) => b !== t)
            .reduce((sum, b) => sum + workBetween(time, Math.max(b.starts, ready), Math.min(b.ends, t.starts)), 0)
          expect(taken).toBe(workBetween(time, ready, t.starts))
        }
      }),
      { numRuns: 100 },
    )
  })

  it('names what set each start, and gives slack that is never negative and none at the last end', () => {
    fc.assert(
      fc.property(network, working, (items, time) => {
        const timed = schedule(items, time)
        const end = Math.max(...timed.map((t) => t.ends))
        for (const t of timed) {
          expect(t.slack).toBeGreaterThanOrEqual(0)
          if (t.ends === end) expect(t.slack).toBe(0)
          expect(t.drivenBy === 'start' || items.some((i) => i.id === t.drivenBy)).toBe(true)
        }
      }),
      { numRuns: 100 },
    )
  })

  it('slack is honest: without a limit on hands, that much later still ends on time', () => {
    const time = workTime({ firstDay, opens: 0, minutesADay: MINUTES_A_DAY, lastWeekday: 7, daysOff: [] })
    fc.assert(
      fc.property(network, (items) => {
        const timed = schedule(items, time)
        const end = Math.max(...timed.map((t) => t.ends))
        for (const t of timed) expect(t.ends + t.slack + longestBehind(items, t.id)).toBeLessThanOrEqual(end + 1e-6)
      }),
      { numRuns: 100 },
    )
  })
})

/** Work and waits that must pass after an item's end, days counted as the least they can take: from their own day's end. */
function longestBehind(items: readonly Item[], id: string): number {
  const item = items.find((i) => i.id === id)!
  const followers = items.filter((i) => i.after.includes(id))
  return Math.max(
    0,
    ...followers.map(
      (f) =>
        Math.max(item.waitMinutes, Math.max(0, item.waitDays - 1) * MINUTES_A_DAY) +
        f.minutes +
        longestBehind(items, f.id),
    ),
  )
}
