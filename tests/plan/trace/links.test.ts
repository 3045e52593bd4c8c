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

/** Families of parts and formulas that cannot yet say where every size is from. */
const WAITING: readonly string[] = [
  'body',
  'box',
  'counter',
  'filler-left',
  'filler-left-batten',
  'filler-right',
  'filler-right-batten',
  'fronts',
  'gable',
  'kick-plate',
  'mantel',
  'plinth',
]

/** `a/box-2/bottom` and `box.inside-width` are of the family `box`. */
const familyOf = ({ of }: MissingLink): string =>
  (of.includes('/') ? (of.split('/')[1] ?? of) : (of.split('.')[0] ?? of)).replace(/-\d+$/, '')

const open = (job: Job) => missingLinks(tracing(job)).filter((link) => !WAITING.includes(familyOf(link)))
const words = (links: readonly MissingLink[]) => [...new Set(links.map((l) => `${l.of} ${l.input}`))]

describe('every size of every part, and every number its formulas lean on', () => {
  it.each(['alcoves-inch', 'niche-metric'])('has a working of exactly its value: %s', (name) => {
    expect(words(open(demo(name)))).toEqual([])
  })

  it('has one in any job', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => expect(words(open(job))).toEqual([])),
      { numRuns: 12 },
    )
  })
})
