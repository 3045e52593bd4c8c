import fc from 'fast-check'
import { describe, it } from 'vitest'
import type { Job } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'

/** Random jobs for each relation: a sample in `npm test`; RUNS=1000 for the long run. */
const RUNS = Number(process.env.RUNS ?? 25)
/** The same jobs every time, so that what is red stays red; SEED=n looks at others. */
const SEED = Number(process.env.SEED ?? 20_261_125)
/** Milliseconds the relations of one group may take: the long run takes minutes. */
const PATIENCE = 1_700_000

/** What a relation gives back for a job that says nothing about it: nothing there to compare. */
export const VACUOUS = 'vacuous'
/** Throws where the relation does not hold. */
export type Relation = (job: Job, plan: Plan) => unknown

interface Tried {
  vacuous: number
  failed: { readonly at: number; readonly why: unknown } | undefined
}

/**
 * Relations that must hold over the same random jobs, each a test of its own; every job is planned once for all of them.
 * A relation that fails is tried again alone, so that the smallest job that breaks it is named.
 */
export function relations(
  title: string,
  jobs: fc.Arbitrary<Job>,
  all: Readonly<Record<string, Relation>>,
  mostVacuous = 0.5,
): void {
  const sweep = once(() => tryAll(jobs, all))
  describe(`${title} (${RUNS} random jobs)`, { timeout: PATIENCE }, () => {
    it.each(Object.keys(all))('%s', (name) => {
      const { vacuous, failed } = sweep().get(name)!
      if (failed !== undefined) smallest(jobs, all[name]!, failed)
      if (vacuous > RUNS * mostVacuous) throw new Error(`${vacuous} of ${RUNS} random jobs prove nothing here.`)
    })
  })
}

function tryAll(jobs: fc.Arbitrary<Job>, all: Readonly<Record<string, Relation>>): ReadonlyMap<string, Tried> {
  const tried = new Map(Object.keys(all).map((name): [string, Tried] => [name, { vacuous: 0, failed: undefined }]))
  for (const [at, job] of fc.sample(jobs, { numRuns: RUNS, seed: SEED }).entries()) {
    const plan = makePlan(job, 'quick')
    for (const [name, result] of tried) {
      if (result.failed !== undefined) continue
      try {
        if (all[name]!(job, plan) === VACUOUS) result.vacuous += 1
      } catch (why) {
        result.failed = { at, why }
      }
    }
  }
  return tried
}

/** Throws with the smallest job found that breaks the relation; else with what broke it first. */
function smallest(jobs: fc.Arbitrary<Job>, relation: Relation, failed: NonNullable<Tried['failed']>): never {
  fc.assert(
    fc.property(jobs, (job) => {
      relation(job, makePlan(job, 'quick'))
    }),
    { numRuns: failed.at + 1, seed: SEED, interruptAfterTimeLimit: 60_000, markInterruptAsFailure: false },
  )
  throw failed.why
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
