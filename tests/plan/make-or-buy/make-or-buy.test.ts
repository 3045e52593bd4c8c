import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { boxesWay, frontsWay, sprayingWay } from '../../../src/job/chapters/make-or-buy.ts'
import { type Job, jobSchema, withAnswer } from '../../../src/job/job.ts'
import { makeOrBuy } from '../../../src/plan/make-or-buy/make-or-buy.ts'
import { makePlan } from '../../../src/plan/plan.ts'

const demo = jobSchema.parse(JSON.parse(readFileSync('demo/alcoves-inch/job.json', 'utf8'))) as Job

describe('making against buying, by whole plans', () => {
  const found = makeOrBuy(demo)

  it('looks at boxes, doors and spraying of the demo', () =>
    expect(found.map((one) => one.id)).toEqual(['boxes', 'fronts', 'spraying']))

  it.each(['boxes', 'fronts', 'spraying'] as const)('%s: each way as the plan made that way has it', (id) => {
    const one = found.find((f) => f.id === id)
    const field = { boxes: boxesWay, fronts: frontsWay, spraying: sprayingWay }[id]
    for (const way of ['make', 'buy'] as const) {
      const plan = makePlan(withAnswer(demo, field, 'job', way), 'quick')
      expect(one?.[way].finish).toBe(plan.calendar.finish)
      expect(one?.[way].price).toBe(plan.price.total)
      const labour = plan.price.labour.reduce((sum, line) => sum + line.amount, 0)
      expect(one?.[way].money).toBe(plan.price.direct - labour)
    }
    expect(one?.option).toBe((one?.buy.price ?? 0) - (one?.make.price ?? 0))
  })

  it('at the quote where both cost alike, they do, to the cent a piece', () => {
    for (const one of found) {
      if (one.priceAlike === undefined || one.per !== 'piece') continue
      const plan = makePlan(
        withAnswer(demo, { boxes: boxesWay, fronts: frontsWay, spraying: sprayingWay }[one.id], 'job', 'buy'),
        'quick',
      )
      const request = plan.supply.requests.find((r) => r.id === one.id)
      const pieces = request?.lines.reduce((n, line) => n + line.quantity, 0) ?? 0
      const moved = one.buy.total - (request?.quoted ?? 0) + pieces * one.priceAlike
      expect(Math.abs(moved - one.make.total)).toBeLessThanOrEqual(pieces)
    }
  })
})

describe('the choice moves parts', () => {
  it.each([
    ['make', 'make'],
    ['make', 'buy'],
    ['buy', 'make'],
    ['buy', 'buy'],
  ] as const)('boxes %s, doors %s: each part is in exactly one of cut list or one request', (boxes, fronts) => {
    const job = withAnswer(withAnswer(demo, boxesWay, 'job', boxes), frontsWay, 'job', fronts)
    const { parts, panels, supply } = makePlan(job, 'quick')
    const cut = new Set([
      ...panels.layouts.flatMap((layout) => layout.laid.map((laid) => laid.part.id)),
      ...panels.sticks.flatMap((stick) => stick.bars.flatMap((bar) => bar.pieces.map(({ part }) => part.id))),
    ])
    for (const part of parts) {
      const asked = supply.requests.filter(
        (request) =>
          request.id === part.supply &&
          request.lines.some((line) => line.mark === part.mark || line.details.some((d) => d.includes(part.mark))),
      )
      expect([cut.has(part.id) ? 1 : 0, asked.length]).toEqual(part.supply === 'made' ? [1, 0] : [0, 1])
    }
  })
})
