import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Job } from '../../../src/job/job.ts'
import { jobIn, openJson } from '../../../src/job/open.ts'
import { type MissingLink, missingLinks } from '../../../src/plan/trace/missing-links.ts'
import { tracing } from '../../../src/plan/trace/tracing.ts'
import { measuredJobs } from '../random-jobs.ts'

const demo = (name: string): Job => {
  const file = `demo/${name}/job.json`
  return jobIn(openJson(readFileSync(file), file), file)
}

const open = (job: Job): readonly MissingLink[] => missingLinks(tracing(job))
const words = (links: readonly MissingLink[]) => [...new Set(links.map((l) => `${l.of} ${l.input}`))]

describe('every size of every part, and every number its formulas lean on', () => {
  it.each(['alcoves-inch', 'niche-metric'])('has a working of exactly its value: %s', (name) => {
    expect(words(open(demo(name)))).toEqual([])
  })

  it('has one in any job', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        expect(words(open(job))).toEqual([])
      }),
      { numRuns: 12 },
    )
  })
})
