import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fieldById } from '../../src/job/fields.ts'
import { type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import type { Fix, Message } from '../../src/things/message.ts'
import { isOf, KINDS } from './kinds-for-test.ts'
import { PROVOKED } from './provoked.ts'
import { measuredJobs } from './random-jobs.ts'

const stopsOf = (job: Job): readonly Message[] => makePlan(job, 'quick').messages.filter((m) => m.weight === 'stop')

/** The job with the answers of a fix put in, as one key does on the screen. */
const fixed = (job: Job, fix: Fix): Job =>
  fix.answers.reduce<Job>((now, { key, value }) => {
    const dot = key.indexOf('.')
    const field = fieldById(key.slice(dot + 1))
    expect(field, key).toBeDefined()
    return field === undefined ? now : withAnswer<unknown>(now, field, key.slice(0, dot), value)
  }, job)

/** Every fix of every stop of a job: its answers are ones the job may hold, and the stop is gone. */
function eachFixClears(job: Job): void {
  for (const stop of stopsOf(job))
    for (const fix of stop.fixes) {
      const after = fixed(job, fix)
      expect(jobSchema.safeParse(after).success, `${stop.code} ${fix.says}`).toBe(true)
      const left = stopsOf(after).filter(
        (m) => m.code === stop.code && m.about === stop.about && m.place === stop.place,
      )
      expect(
        left.map((m) => m.short),
        `${stop.code} ${stop.about}: ${fix.says}`,
      ).toEqual([])
    }
}

/** Stops nobody can answer away from the desk: another measurement, a manual, another layout of the whole thing. */
const NOTHING_TO_COMPUTE: Readonly<Record<string, string>> = {
  manualMissing: 'the distances stand in the manual of the appliance only',
  notMasonry: 'which appliance it is, and what its manual asks for, has to be looked up',
  shelfCannotPass: 'the wall is straightened or the shelf made in two; no figure does it',
  gapTooWide: 'the gap comes from the wall; it is closed by another piece',
  unusableSurvey: 'the reading is taken again',
  largerThanSheet: 'each piece says what its sheet holds; which size then suits is a matter of the whole run',
}

describe('what a stop offers', () => {
  const stops = Object.entries(PROVOKED).filter(([, job]) => stopsOf(job).length > 0)

  it.each(stops)('%s: each fix clears its stop', (_name, job) => {
    eachFixClears(job)
  })

  const computable = KINDS.filter(({ name, kind }) => kind.weight === 'stop' && NOTHING_TO_COMPUTE[name] === undefined)

  it.each(computable)('$name: a value that works is offered in words', ({ name, kind }) => {
    const job = PROVOKED[name]
    const raised = job === undefined ? [] : stopsOf(job).filter((m) => isOf(kind, m))
    expect(raised.flatMap((m) => m.fixes).map((f) => f.says.length > 3)).toContain(true)
  })

  it('holds on any wall', () => {
    fc.assert(fc.property(measuredJobs, eachFixClears), { numRuns: 12 })
  })
})
