import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/interview/answers.ts'
import { waitingConfirms } from '../../src/interview/confirmed.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { onHold } from '../../src/things/part.ts'
import { day } from '../../src/units/day.ts'

const read = (demo: string, file: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../demo/${demo}/${file}`, import.meta.url), 'utf8'))

describe.each(['alcoves-inch', 'niche-metric'])('demo/%s', (demo) => {
  const { job, faults } = readAnswers(read(demo, 'answers.json'), { id: `demo-${demo}`, today: day('2026-11-20') })

  it('is the job its answers give (npx tsx src/build/demo-jobs.ts writes it)', () => {
    expect(faults).toEqual([])
    expect(read(demo, 'job.json')).toEqual(JSON.parse(JSON.stringify(job)))
  })

  it('can be packed: no stop, no confirmation open, nothing on HOLD', () => {
    const plan = makePlan(job, 'quick')
    expect(plan.messages.filter((m) => m.weight === 'stop')).toEqual([])
    expect(waitingConfirms(job, plan.messages)).toEqual([])
    expect(plan.parts.filter(onHold)).toEqual([])
  })

  it('says that it is invented', () => {
    expect(job.demo).toBe(true)
    expect(JSON.stringify(job.private)).toMatch(/invented/i)
  })
})

it('the inch demo is the wall it is meant to show', () => {
  const { job } = readAnswers(read('alcoves-inch', 'answers.json'), {
    id: 'demo-alcoves-inch',
    today: day('2026-11-20'),
  })
  const plan = makePlan(job, 'quick')
  expect(plan.bays.map((b) => b.kind)).toEqual(['alcove', 'breast', 'alcove'])
  expect(plan.shelves.shelves.filter((s) => s.bay.letter === 'L')).toHaveLength(3)
  expect(plan.supply.requests.map((r) => r.id)).toEqual(['fronts'])
  expect([...plan.devices.cutOuts.values()].flat().filter((c) => c.what.includes('outlet'))).toHaveLength(2)
  expect(plan.mantel.breasts[0]?.screen).toBeDefined()
})
