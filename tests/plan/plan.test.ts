import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bays, floor, returns, studs, widths } from '../../src/job/chapters/wall.ts'
import { devices as devicesField } from '../../src/job/chapters/wall-devices.ts'
import { FIELDS } from '../../src/job/fields.ts'
import { answerOf, baysOf, emptyJob, type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { NOT_MEASURED } from '../../src/things/field.ts'
import type { Part } from '../../src/things/part.ts'
import { type Length, less, nanometres } from '../../src/units/length.ts'
import { jobsWithEverything } from './hold-jobs.ts'
import { measuredJobs } from './random-jobs.ts'

/** Random jobs for each relation: a sample here; set RUNS=1000 for a long run. */
const RUNS = Number(process.env.RUNS ?? 20)
const plan = (job: Job): Plan => makePlan(job, 'quick')
const sizes = (parts: readonly Part[]): readonly string[] =>
  parts
    .map(
      (p) => `${p.name} ${p.piece ?? ''} ${p.length}x${p.width}x${p.thickness} rough ${p.roughLength}x${p.roughWidth}`,
    )
    .sort()

describe('the whole plan', () => {
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

  it('is the same twice', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        expect(sizes(plan(job).parts)).toEqual(sizes(plan(job).parts))
      }),
      { numRuns: 20 },
    )
  })

  it('gives each part an id of its own, whole positive sizes, and rough never under finished', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const { parts } = plan(job)
        expect(new Set(parts.map((p) => p.id)).size).toBe(parts.length)
        for (const p of parts) {
          expect(Math.min(p.length, p.width, p.thickness), `${p.id}`).toBeGreaterThan(0)
          expect(p.roughLength, p.id).toBeGreaterThanOrEqual(p.length)
          expect(p.roughWidth, p.id).toBeGreaterThanOrEqual(p.width)
        }
      }),
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

  it('puts every made part on one sheet or stick, whole and once', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const { parts, panels, messages } = plan(job)
        const laid = [
          ...panels.layouts.flatMap((l) => l.laid.map((x) => x.part.id)),
          ...panels.sticks.flatMap((s) => s.bars.flatMap((b) => b.pieces.map((x) => x.part.id))),
        ]
        const tooLarge = new Set(messages.filter((m) => m.code === 'S16').map((m) => m.part))
        const made = parts
          .filter((p) => p.supply === 'made' && !tooLarge.has(p.id))
          .flatMap((p) => Array.from({ length: p.quantity }, () => p.id))
        expect([...laid].sort()).toEqual([...made].sort())
      }),
      { numRuns: RUNS },
    )
  })
})

/** The wall seen in a mirror: bays reversed, left and right readings swapped. */
function mirrored(job: Job): Job {
  const list = answerOf(job, bays, 'job')
  if (list === undefined || list === NOT_MEASURED) return job
  return list.reduce<Job>(mirrorBay, withAnswer(job, bays, 'job', [...list].reverse()))
}

function mirrorBay(job: Job, bay: { readonly id: string }): Job {
  const swap = <T>(v: T | typeof NOT_MEASURED | undefined, turn: (v: T) => T): T | undefined =>
    v === undefined || v === NOT_MEASURED ? undefined : turn(v)
  const rows = swap(answerOf(job, widths, bay.id), (w) =>
    w.map(({ left, right, ...rest }) => ({
      ...rest,
      ...(right === undefined ? {} : { left: right }),
      ...(left === undefined ? {} : { right: left }),
    })),
  )
  const width: Length = rows?.[0]?.back ?? nanometres(0)
  const turned = (x: Length) => less(width, x)
  const steps: readonly ((j: Job) => Job)[] = [
    (j) => withAnswer(j, widths, bay.id, rows),
    (j) =>
      withAnswer(
        j,
        returns,
        bay.id,
        swap(answerOf(job, returns, bay.id), (r) => [...r].reverse()),
      ),
    (j) =>
      withAnswer(
        j,
        floor,
        bay.id,
        swap(answerOf(job, floor, bay.id), (f) => f.map((r) => ({ ...r, x: turned(r.x) })).reverse()),
      ),
    (j) =>
      withAnswer(
        j,
        studs,
        bay.id,
        swap(answerOf(job, studs, bay.id), (s) => s.map(turned).reverse()),
      ),
    (j) => withAnswer(j, devicesField, bay.id, answerOf(job, devicesField, bay.id)),
  ]
  return rows === undefined ? job : steps.reduce((j, step) => step(j), job)
}

describe('relations that must hold', () => {
  const alcovesOnly = measuredJobs.filter((job) => {
    const list = answerOf(job, bays, 'job')
    return list !== undefined && list !== NOT_MEASURED && list.every((b) => b.kind !== 'flat')
  })

  it('mirror the wall and the parts mirror: the same sizes on the other side', () => {
    fc.assert(
      fc.property(alcovesOnly, (job) => {
        const strip = (p: Plan) =>
          sizes(p.parts.filter((part) => part.name !== 'kick plate' && part.name !== 'wall filler'))
        expect(strip(plan(mirrored(job)))).toEqual(strip(plan(job)))
      }),
      { numRuns: RUNS },
    )
  })

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
  }, 120_000)
})

/** All that is printed of a part besides its name. */
const everything = (p: Part) => ({
  size: [p.length, p.width, p.thickness, p.roughLength, p.roughWidth, p.quantity],
  words: [p.taper, p.leaveLong, ...p.details],
  cutOuts: p.cutOuts,
})
