import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { costingBook } from '../../src/documents/costing/costing.ts'
import { forHelper } from '../../src/documents/for-helper.ts'
import { forOffice } from '../../src/documents/for-office.ts'
import { withOwnFigures } from '../../src/job/job.ts'
import { openJob } from '../../src/job/open.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { recording } from '../../src/things/formula.ts'
import { inches } from '../../src/units/length.ts'

const demo = openJob(readFileSync('demo/alcoves-inch/job.json'), 'demo')
const own = {
  'door.stile': { inch: '2 1/2 in', because: 'our cutter' },
  'kick.set-back': { inch: '3 in', because: 'room for shoes' },
  'price.tape': { value: 720, because: 'bought by the case' },
}
const mine = withOwnFigures(demo, own)

describe('a plan of a job that carries figures of the person’s own', () => {
  it('reckons with them, and the next job does not', () => {
    const before = makePlan(demo, 'quick')
    const plan = makePlan(mine, 'quick')
    expect(plan.figures.length('kick.set-back')).toBe(inches(3))
    expect(JSON.stringify(plan.parts)).not.toBe(JSON.stringify(before.parts))
    expect(JSON.stringify(makePlan(demo, 'quick').parts)).toBe(JSON.stringify(before.parts))
  })

  it('is the same wherever the job is opened', () => {
    const again = openJob(new TextEncoder().encode(JSON.stringify(mine)), 'job.json')
    expect(JSON.stringify(makePlan(again, 'quick').parts)).toBe(JSON.stringify(makePlan(mine, 'quick').parts))
  })

  it('says of a suggestion that it is yours, and why', () => {
    const yours = [...makePlan(mine, 'quick').used.values()].filter((used) => used.suggestedOrigin === 'yours')
    expect(yours.map((used) => used.because).join()).toMatch(/usual for a painted door; by your own figures/)
    expect([...makePlan(demo, 'quick').used.values()].some((used) => used.suggestedOrigin === 'yours')).toBe(false)
  })

  it('traces them to the setting', () => {
    const { workings } = recording(() => makePlan(mine, 'quick'))
    const read = workings.filter((w) => w.kind === 'figure' && w.id === 'kick.set-back')
    expect(read.length).toBeGreaterThan(0)
    expect(new Set(read.map((w) => w.source))).toEqual(new Set(['your setting: room for shoes']))
  })

  it('a price of one’s own is not called invented', () => {
    const known = (job: typeof demo) => makePlan(job, 'quick').purchases.find((p) => p.id === 'tape')?.priceKnown
    expect([known(demo), known(mine)]).toEqual(['invented', 'yours'])
  })

  it('shows in the packet what is not the published figure: all of it to the office, nothing of money to a helper', () => {
    const plan = makePlan(mine, 'quick')
    expect(forOffice(plan).ownFigures.map(({ id, published, yours }) => [id, published, yours])).toEqual([
      ['door.stile', '2 1/4 in', '2 1/2 in'],
      ['kick.set-back', '2 in', '3 in'],
      ['price.tape', '600 cents', '720 cents'],
    ])
    expect(forHelper(plan).ownFigures.map((line) => line.id)).toEqual(['door.stile', 'kick.set-back'])
    const sheet = costingBook(forOffice(plan)).sheets.find(({ name }) => name === 'Own figures')
    expect(sheet?.rows[1]).toEqual([
      'kick.set-back',
      'kick plate behind the box front',
      '2 in',
      '3 in',
      'your setting: room for shoes',
    ])
    expect(costingBook(forOffice(makePlan(demo, 'quick'))).sheets.map(({ name }) => name)).not.toContain('Own figures')
  })
})
