import { expect } from 'vitest'
import { squareLeft, squareRight } from '../../src/job/chapters/wall.ts'
import { FIELDS } from '../../src/job/fields.ts'
import { answerOf, baysOf, type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import type { Part } from '../../src/things/part.ts'
import type { Length } from '../../src/units/length.ts'
import { parseLength } from '../../src/units/parse-length.ts'
import { showLength } from '../../src/units/show-length.ts'
import { reading } from '../outline/placed.ts'
import { variedJobs } from '../plan/varied-jobs.ts'
import { digest, sizeOf } from './digest.ts'
import { relations } from './holds.ts'
import { mirrored } from './mirror.ts'

const planned = (job: Job): Plan => makePlan(job, 'quick')

/**
 * Walls whose mirror differs by nothing but its sides: on a flat wall a left-over step goes to the left box, and where both
 * squares of an alcove disagree with its widths the left one governs.
 */
const turnable = variedJobs.filter((job) =>
  baysOf(job).every(
    ({ id, kind }) =>
      kind !== 'flat' && (reading(job, squareLeft, id) === undefined || reading(job, squareRight, id) === undefined),
  ),
)

relations('the same job', variedJobs, {
  'gives the same plan twice, and whatever the job is called': (job, plan) => {
    const once = digest(plan)
    expect(digest(plan)).toEqual(once)
    expect(digest(planned({ ...job, id: 'another-job' })).parts).toEqual(once.parts)
  },

  'gives the same plan when it was written to a file and read again': (job, plan) => {
    const read = jobSchema.parse(JSON.parse(JSON.stringify(job))) as Job
    expect(digest(planned(read))).toEqual(digest(plan))
  },

  'gives the same plan in whatever order its questions were answered': (job, plan) =>
    expect(digest(planned(answeredBackwards(job)))).toEqual(digest(plan)),

  'gives the same plan when its tape readings are typed in millimetres, or in feet and inches': (job, plan) => {
    const inMillimetres = retyped(job, (l) => `${l / 1e6} mm`)
    const inInches = retyped(job, (l) => (l % SIXTY_FOURTH === 0 ? `${showLength(l, 'inch', 64)} in` : `${l / 1e6} mm`))
    const sizes = plan.parts.map(sizeOf)
    expect(planned(inMillimetres).parts.map(sizeOf)).toEqual(sizes)
    expect(inInches).toEqual(job)
  },
})

relations('the same job in a mirror', turnable, {
  'seen in a mirror gives the parts of the other side, size by size': (job, plan) => {
    const there = planned(mirrored(job))
    expect(sorted(there.parts.filter(exact))).toEqual(sorted(plan.parts.filter(exact)))
    // What rounding leaves over goes to one side: these may differ by a cut step.
    const [strips, turned] = [plan, there].map((p) =>
      p.parts
        .filter((x) => !exact(x))
        .map(sizeOf)
        .sort(byNumbers),
    )
    expect(turned!.length).toBe(strips!.length)
    for (const [k, size] of strips!.entries())
      for (const [n, l] of size.entries()) expect(Math.abs(turned![k]![n]! - l)).toBeLessThanOrEqual(2 * SIXTEENTH)
  },
})

const SIXTY_FOURTH = 396_875
const SIXTEENTH = 4 * SIXTY_FOURTH

const byNumbers = (a: readonly number[], b: readonly number[]): number =>
  a.map((n, i) => n - b[i]!).find((d) => d !== 0) ?? 0

/** Every answer taken out and put in again, the last one first. */
const answeredBackwards = (job: Job): Job => {
  const given = FIELDS.flatMap((field) =>
    ['job', ...baysOf(job).map((b) => b.id)].flatMap((place) => {
      const value = answerOf(job, field, place)
      return value === undefined ? [] : [{ field, place, value }]
    }),
  )
  const bare: Job = { ...job, facts: {}, choices: {}, private: {} }
  return given.reverse().reduce<Job>((j, { field, place, value }) => withAnswer<unknown>(j, field, place, value), bare)
}

/** The job with every length typed anew in some words and read back, in a job of the same units. */
function retyped(job: Job, words: (l: Length) => string): Job {
  const units = (job.facts.job?.units as 'inch' | 'metric') ?? 'inch'
  const read = (l: number): number => {
    const reading = parseLength(words(l as Length), units)
    if (reading.kind === 'not-read') throw new Error(`${words(l as Length)} is not read`)
    return reading.value
  }
  const anew = (value: unknown): unknown => {
    if (typeof value === 'number') return read(value)
    if (Array.isArray(value)) return value.map(anew)
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, anew(v)]))
    return value
  }
  const lengths = (field: Field) => ['length', 'lengths', 'table'].includes(field.entry.kind)
  return FIELDS.filter(lengths).reduce<Job>(
    (j, field) =>
      ['job', ...baysOf(job).map((b) => b.id)].reduce<Job>((k, place) => {
        const value = answerOf(job, field, place)
        if (value === undefined || value === NOT_MEASURED) return k
        return withAnswer<unknown>(k, field, place, anew(value))
      }, j),
    job,
  )
}

const exact = (p: Part): boolean => p.name !== 'kick plate' && p.name !== 'wall filler'
const sorted = (parts: readonly Part[]): readonly string[] =>
  parts.map((p) => `${p.name} ${p.piece ?? ''} ${sizeOf(p).join(' ')}`).sort()
