import { mkdtemp, readFile, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { boxHeight } from '../../src/job/chapters/cabinets.ts'
import { hourRate } from '../../src/job/chapters/price.ts'
import { type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { comparePlans } from '../../src/plan/compare/compare.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { inches } from '../../src/units/length.ts'
import { minorUnits, showMoney } from '../../src/units/money.ts'
import { runProgram } from './run-program.ts'

const DEMO = 'demo/alcoves-inch/job.json'
let job: Job
let lower = ''
beforeAll(async () => {
  job = jobSchema.parse(JSON.parse(await readFile(DEMO, 'utf8'))) as Job
  const folder = await mkdtemp(join(tmpdir(), 'nichework-'))
  lower = join(folder, 'lower.json')
  await writeFile(lower, JSON.stringify(withAnswer(job, boxHeight, 'job', inches(28))))
})

const compare = (...words: readonly string[]) => runProgram(['compare', ...words])

describe('nichework compare', () => {
  it('one answer changed says the same as the two job files', async () => {
    const typed = await compare(DEMO, '--with', 'job.boxHeight=28')
    expect(typed.code).toBe(0)
    expect(typed.stdout).toBe((await compare(DEMO, lower)).stdout)
    for (const heading of ['In short', 'Parts, finished size', 'Cost, USD']) expect(typed.stdout).toContain(heading)
    expect(typed.stdout).toMatch(/L1-S1 side +30 × .+ → 28 × /)
  })

  it('its short lines are those of the interview, whole', async () => {
    const { stdout } = await compare(DEMO, '--with', 'job.boxHeight=28', '--json')
    const found = JSON.parse(stdout)
    const plans = [job, withAnswer(job, boxHeight, 'job', inches(28))].map((j) => makePlan(j, 'thorough'))
    const said = comparePlans(plans[0]!, plans[1]!)
    expect(found.inShort).toEqual(said.filter((c) => c.mark === undefined).map((c) => c.says))
    expect(found.inShort.length).toBeGreaterThan(0)
    const total = found.cost.find((line: { id: string }) => line.id === 'total')
    if (total !== undefined) expect(total).toMatchObject({ was: plans[0]!.price.total, now: plans[1]!.price.total })
  })

  it('a dearer hour changes every line of hours and the sums above them, and no part', async () => {
    const { stdout } = await compare(DEMO, '--with', 'job.hourRate=100')
    const [before, after] = [job, withAnswer(job, hourRate, 'job', minorUnits(10_000))].map((j) =>
      makePlan(j, 'thorough'),
    )
    expect(stdout).not.toContain('Parts')
    expect(stdout).not.toContain('Dates')
    expect(stdout).toContain(`${showMoney(before!.price.total)} → ${showMoney(after!.price.total)}`)
  })

  it('says when nothing differs, and when the answer is not asked for', async () => {
    expect((await compare(DEMO, DEMO)).stdout).toBe('Nothing differs.\n')
    const bought = await compare(DEMO, '--with', 'job.boxQuote=250')
    expect(bought.stderr).toContain('job.boxQuote is not asked in this job')
    expect(bought.stdout).toBe('Nothing differs.\n')
  })

  it.each([
    [['job.json'], 'compare takes two jobs, or one job and an answer'],
    [[DEMO, DEMO, '--with', 'job.boxHeight=28'], 'compare takes two jobs, or one job and an answer'],
    [[DEMO, '--with', 'job.boxHeight'], '--with is written QUESTION=ANSWER'],
    [[DEMO, '--with', 'job.boxHeigth=28'], 'Nearest: job.boxHeight'],
    [[DEMO, '--with', 'job.boxHeight=tall'], 'job.boxHeight (box height): "tall"'],
    [[DEMO, '--with', 'a.boxKind=round'], 'One of: 1 base boxes · 2 tall boxes · 3 no boxes'],
    [[DEMO, '--with', 'job.sundries=90'], 'between 0 and 50'],
  ])('ends with 2 and words for: %j', async (words, said) => {
    const { code, stdout, stderr } = await compare(...words)
    expect(stderr).toContain(said)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
  })

  it('ends with 4 for a job that is not there, and never changes its input', async () => {
    expect((await compare(DEMO, 'nowhere.json')).code).toBe(4)
    const before = await stat(lower)
    await compare(lower, DEMO)
    expect((await stat(lower)).mtimeMs).toBe(before.mtimeMs)
  })
})
