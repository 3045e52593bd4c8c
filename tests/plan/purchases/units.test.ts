import fc from 'fast-check'
import { expect, it } from 'vitest'
import { makePlan } from '../../../src/plan/plan.ts'
import { measuredJobs } from '../random-jobs.ts'

it('a count of pieces is bought in whole pieces, and never more than one pack over the need', () => {
  fc.assert(
    fc.property(measuredJobs, (job) => {
      for (const p of makePlan(job, 'quick').purchases.filter((x) => x.shop === 'hardware')) {
        if (p.unit === 'piece') expect(p.packSize, p.item).toBeGreaterThanOrEqual(1)
        expect(p.packs * p.packSize, p.item).toBeGreaterThanOrEqual(p.need - 1e-9)
        expect((p.packs - 1 - (p.spare === '1 spare' ? 1 : 0)) * p.packSize, p.item).toBeLessThan(p.need)
      }
    }),
    { numRuns: 10 },
  )
})

it('names every item once', () => {
  fc.assert(
    fc.property(measuredJobs, (job) => {
      const items = makePlan(job, 'quick').purchases.map((p) => `${p.shop} ${p.item} ${p.packSize}`)
      expect(new Set(items).size).toBe(items.length)
    }),
    { numRuns: 10 },
  )
})
