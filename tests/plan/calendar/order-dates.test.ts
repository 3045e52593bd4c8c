import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makePlan } from '../../../src/plan/plan.ts'
import { daysBetween } from '../../../src/units/day.ts'
import { measuredJobs } from '../random-jobs.ts'

describe('the last day to order', () => {
  it('is never before the order can leave, and early enough for the task that uses it', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const { tasks, orderBy } = makePlan(job, 'quick').calendar
        for (const { by, forTask } of orderBy) {
          const user = tasks.find((t) => t.id === forTask)
          const orders = tasks.filter((t) => user?.after.includes(t.id) && t.wait.workingDays > 0)
          expect(Math.min(...orders.map((order) => daysBetween(order.finish, by)))).toBeGreaterThanOrEqual(0)
          expect(daysBetween(by, user?.start ?? by)).toBeGreaterThanOrEqual(0)
        }
      }),
      { numRuns: 30 },
    )
  })
})
