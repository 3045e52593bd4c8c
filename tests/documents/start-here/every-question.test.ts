import { describe, expect, it } from 'vitest'
import { forHelper } from '../../../src/documents/for-helper.ts'
import { questionWords } from '../../../src/documents/question-words.ts'
import { startHerePapers } from '../../../src/documents/start-here/start-here.ts'
import { writeOnePage } from '../../../src/documents/write/pdf.ts'
import { askedAt, FIELDS } from '../../../src/job/fields.ts'
import { baysOf, type Job, withAnswer } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { lookAt } from '../../../src/plan/settle.ts'
import { type Field, NOT_MEASURED, questionKey } from '../../../src/things/field.ts'
import type { NamedBay } from '../../../src/things/place.ts'
import { ASSETS, STAMP } from '../assets.ts'
import { demoJob } from '../fixture.ts'
import { pdfPages } from '../pdf-text.ts'

const job = demoJob('alcoves-inch')

interface Open {
  readonly field: Field
  readonly bay: NamedBay | undefined
}

/** Every question of the wall whose answer holds parts, at each place it is asked. */
const open: readonly Open[] = FIELDS.filter((f) => f.missing === 'hold').flatMap((field): readonly Open[] =>
  field.each === 'job'
    ? [{ field, bay: undefined }]
    : baysOf(job)
        .filter((bay) => askedAt(field, bay.kind))
        .map((bay) => ({ field, bay })),
)
const without = (from: Job, { field, bay }: Open): Job =>
  withAnswer<unknown>(from, field, bay?.id ?? 'job', NOT_MEASURED)

/** Those asked now, by one plan of the job. */
function askedNow(of: Job): readonly Open[] {
  const { used } = makePlan(of, 'quick')
  return open.filter(({ field, bay }) => field.when(lookAt(of, used, bay), bay))
}

async function firstPage(of: Job): Promise<string> {
  const view = forHelper(makePlan(of, 'quick'))
  const given = { view, contents: [{ folder: 'helper/', says: 'cut list' }], assets: ASSETS, stamp: STAMP }
  const pages = await pdfPages(await writeOnePage(startHerePapers(given), ASSETS, STAMP))
  expect(pages).toHaveLength(1)
  return (pages[0] ?? '').replace(/\s+/g, ' ')
}

const named = ({ field, bay }: Open): string =>
  questionWords(questionKey(bay?.id ?? 'job', field), baysOf(job)).short.toLowerCase()

describe('the first page of a wall of which nothing is measured', () => {
  it('names every measurement to take, at its place, on one page', async () => {
    const bare = open.reduce(without, job)
    const text = (await firstPage(bare)).toLowerCase()
    const waiting = askedNow(bare)
    expect(waiting.length).toBeGreaterThan(15)
    for (const o of waiting) expect(text, named(o)).toContain(named(o))
  }, 60_000)
})

describe('the first page with one measurement missing', () => {
  it.each(askedNow(job).map((o) => [named(o), o] as const))('names it and what waits: %s', async (name, o) => {
    const text = await firstPage(without(job, o))
    expect(text.toLowerCase()).toContain(name)
    expect(text).toContain('Waits for it:')
  })
})

describe('what was assumed', () => {
  it('stands in one line for the caliper and one for makers’ sheets, not a line each', () => {
    const { assumed } = forHelper(makePlan(job, 'quick'))
    expect(assumed.map((a) => a.word)).toEqual([...new Set(assumed.map((a) => a.word))])
    expect(assumed.find((a) => a.word === 'caliper')?.says).toMatch(/shelf skins 1\/4/)
  })
})
