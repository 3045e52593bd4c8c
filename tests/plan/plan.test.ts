import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bays } from '../../src/job/chapters/wall.ts'
import { FIELDS } from '../../src/job/fields.ts'
import { answerOf, baysOf, emptyJob, type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { NOT_MEASURED } from '../../src/things/field.ts'
import type { Part } from '../../src/things/part.ts'
import { jobsWithEverything } from './hold-jobs.ts'
import { measuredJobs } from './random-jobs.ts'

/** Random jobs for each relation: a sample here; set RUNS=1000 for a long run. */
const RUNS = Number(process.env.RUNS ?? 20)
const plan = (job: Job): Plan => makePlan(job, 'quick')
describe('the whole plan', { timeout: 600_000 }, () => {
  it('is made of a job with nothing answered, and of one with answers taken out at random', () => {
    expect(() => plan(emptyJob('empty-job', '2026-11-25'))).not.toThrow()
    fc.assert(
      fc.property(
        measuredJobs,
        fc.array(fc.tuple(fc.nat(FIELDS.length - 1), fc.constantFrom('job', 'a', 'b', 'c'), fc.boolean()), {
          maxLength: 12,
        }),
        (job, out) => {
          const thinned = out.reduce<Job>((j, [i, place, unmeasured]) => {
            const field = FIELDS[i]!
            if (answerOf(j, field, place) === undefined || field === bays) return j
            return withAnswer<unknown>(
              j,
              field,
              place,
              unmeasured && field.missing !== 'suggest' ? NOT_MEASURED : undefined,
            )
          }, job)
          expect(jobSchema.safeParse(thinned).success).toBe(true)
          plan(thinned)
        },
      ),
      { numRuns: RUNS },
    )
  })

  it('fills each run exactly: the box widths add up to it', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const { slots, boxes } = plan(job)
        for (const run of slots.runs) {
          const widthsOfRun = boxes.boxes.filter((b) => b.run.bay.id === run.bay.id).map((b) => b.width)
          if (widthsOfRun.length > 0) expect(widthsOfRun.reduce((t, w) => t + w, 0)).toBe(run.width)
        }
      }),
      { numRuns: RUNS },
    )
  })
})

describe('what waits', () => {
  it('a measurement that is missing holds every part it would change: size, cut-outs and words', () => {
    fc.assert(
      fc.property(jobsWithEverything, fc.nat(3), (job, at) => {
        const full = new Map(plan(job).parts.map((p) => [p.id, everything(p)]))
        const list = baysOf(job)
        const bay = list[at % list.length]?.id ?? 'job'
        for (const field of FIELDS.filter((f) => f.missing === 'hold')) {
          const place = field.each === 'job' ? 'job' : bay
          if (answerOf(job, field, place) === undefined) continue
          const without = plan(withAnswer<unknown>(job, field, place, NOT_MEASURED))
          for (const part of without.parts.filter((p) => p.waitsFor.length === 0))
            expect(everything(part), `${part.id} without ${place}.${field.id}`).toEqual(full.get(part.id))
        }
      }),
      { numRuns: Math.ceil(RUNS / 2) },
    )
  }, 600_000)
})

/** All that is printed of a part besides its name. */
const everything = (p: Part) => ({
  size: [p.length, p.width, p.thickness, p.roughLength, p.roughWidth, p.quantity],
  words: [p.taper, p.leaveLong, ...p.details],
  cutOuts: p.cutOuts,
})
