import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { daysOff, workWeek } from '../../src/job/chapters/install.ts'
import { startDay } from '../../src/job/chapters/job.ts'
import { discount, hourRate } from '../../src/job/chapters/price.ts'
import { shelfCount } from '../../src/job/chapters/shelves.ts'
import { baysOf, withAnswer } from '../../src/job/job.ts'
import { changesSince, comparePlans, issuedParts } from '../../src/plan/compare/compare.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { addDays, day, daysBetween, weekday } from '../../src/units/day.ts'
import { minorUnits } from '../../src/units/money.ts'
import { measuredJobs } from './random-jobs.ts'

const RUNS = { numRuns: 12 }

describe('the calendar of any measured wall', () => {
  it('suggests a working day a week away, and plans nothing on days off', () => {
    fc.assert(
      fc.property(measuredJobs, fc.array(fc.integer({ min: 7, max: 50 }), { maxLength: 8 }), (job, off) => {
        const created = day(job.created)
        const away = off.map((n) => addDays(created, n))
        const busy = withAnswer(withAnswer(job, workWeek, 'job', 'mon-sat'), daysOff, 'job', away.join(' '))
        const { calendar } = makePlan(busy, 'quick')
        expect(daysBetween(created, calendar.start)).toBeGreaterThanOrEqual(7)
        for (const t of calendar.tasks) {
          for (const d of [t.start, t.finish]) {
            expect(weekday(d)).toBeLessThanOrEqual(6)
            expect(away).not.toContain(d)
          }
        }
      }),
      RUNS,
    )
  })

  it('orders in time: no order-by day before its order is planned, none after its user starts', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const { calendar } = makePlan(job, 'quick')
        for (const order of calendar.orderBy) {
          const user = calendar.tasks.find((t) => t.id === order.forTask)!
          expect(order.by <= user.start).toBe(true)
          expect(order.by >= calendar.start).toBe(true)
        }
      }),
      RUNS,
    )
  })

  it('says a start in the past, with the finish it would have from today', () => {
    const [job] = fc.sample(measuredJobs, { numRuns: 1, seed: 3 })
    const late = makePlan(withAnswer(job!, startDay, 'job', addDays(day(job!.created), -30)), 'quick')
    const said = late.messages.find((m) => m.code === 'N31')
    const today = makePlan(withAnswer(job!, startDay, 'job', day(job!.created)), 'quick')
    expect(said?.values.finish).toBeDefined()
    expect(today.messages.some((m) => m.code === 'N31')).toBe(false)
    expect(said?.fixes[0]?.answers[0]?.value).toBe(job!.created)
  })
})

describe('purchases and price of any measured wall', () => {
  const sum = (lines: readonly { readonly amount: number }[]) => lines.reduce((t, l) => t + l.amount, 0)

  it('covers every need, names a step that exists, and adds up', () => {
    fc.assert(
      fc.property(measuredJobs, (job) => {
        const p = makePlan(job, 'quick')
        const ids = new Set(p.calendar.tasks.map((t) => t.id))
        for (const b of p.purchases) {
          expect(b.packs * b.packSize, b.id).toBeGreaterThanOrEqual(b.need - 1e-4)
          expect(ids.has(b.firstUsedBy), `${b.id} used by ${b.firstUsedBy}`).toBe(true)
        }
        expect(new Set(p.purchases.map((b) => b.id)).size).toBe(p.purchases.length)
        const { price } = p
        expect(price.direct).toBe(
          sum(price.labour) +
            sum(price.materials) +
            sum(price.boughtIn) +
            price.sundries +
            price.handling +
            price.travel,
        )
        expect(price.beforeTax).toBe(price.cost + price.profit + price.rounding - price.discount)
        expect(price.total).toBe(price.beforeTax + price.tax)
        expect(price.stages.reduce((t, s) => t + s.amount, 0)).toBe(price.total)
        expect(price.hours).toBeCloseTo(
          price.labour.reduce((t, l) => t + l.quantity, 0),
          9,
        )
        for (const line of [...price.labour, ...price.materials]) {
          expect(Math.abs(line.amount - line.quantity * line.each), line.id).toBeLessThanOrEqual(0.5 + 1e-6)
        }
      }),
      RUNS,
    )
  })

  it('stops a discount below the direct cost, and its fix clears it', () => {
    const [job] = fc.sample(measuredJobs, { numRuns: 1, seed: 5 })
    const cheap = withAnswer(job!, discount, 'job', minorUnits(5_000_000))
    const stop = makePlan(cheap, 'quick').messages.find((m) => m.code === 'S18')
    const most = stop?.fixes[0]?.answers[0]?.value
    expect(typeof most).toBe('number')
    const cured = makePlan(withAnswer(job!, discount, 'job', minorUnits(Number(most))), 'quick')
    expect(cured.messages.some((m) => m.code === 'S18')).toBe(false)
    const overdone = makePlan(withAnswer(job!, discount, 'job', minorUnits(Number(most) + 1)), 'quick')
    expect(overdone.messages.some((m) => m.code === 'S18')).toBe(true)
  })
})

describe('what a change of answer changes', () => {
  const [job] = fc.sample(
    measuredJobs.filter((j) => baysOf(j)[0]?.kind === 'alcove'),
    { numRuns: 1, seed: 9 },
  )
  const before = makePlan(withAnswer(job!, shelfCount, 'a', 2), 'quick')
  const after = makePlan(withAnswer(job!, shelfCount, 'a', 1), 'quick')

  it('is nothing when nothing changes', () => {
    expect(comparePlans(before, before)).toEqual([])
    expect(changesSince(issueOf(before), before)).toEqual([])
  })

  it('names the shelves first, then what it saves, by weight', () => {
    const changes = comparePlans(before, after)
    expect(changes.some((c) => /2 shelves at .* → 1 shelf at /.test(c.says))).toBe(true)
    expect(changes.some((c) => /^price [\d,.]+ → [\d,.]+$/.test(c.says))).toBe(true)
    for (const [i, c] of changes.entries())
      expect(c.weight).toBeLessThanOrEqual(changes[i - 1]?.weight ?? Number.POSITIVE_INFINITY)
    expect(comparePlans(before, after)).toEqual(changes)
  })

  it('only the price and nothing built changes with the hour rate', () => {
    const dearer = makePlan(
      withAnswer(withAnswer(job!, shelfCount, 'a', 2), hourRate, 'job', minorUnits(9900)),
      'quick',
    )
    expect(comparePlans(before, dearer).map((c) => c.says.split(' ')[0])).toEqual(['price'])
  })

  it('tells someone who has started to cut which parts are gone, changed or new', () => {
    const gone = changesSince(issueOf(before), after)
    expect(gone.some((c) => c.says.endsWith('is gone: do not use it'))).toBe(true)
    const issued = issueOf(before)
    const side = before.parts.find((p) => p.waitsFor.length === 0 && p.piece === undefined)!
    const was = issued.parts[side.mark]!
    const dimensions = was.split(' × ')
    const old = { ...issued, parts: { ...issued.parts, [side.mark]: ['1234', ...dimensions.slice(1)].join(' × ') } }
    expect(changesSince(old, before).map((c) => c.says)).toEqual([
      `${side.mark} ${side.name} was 1234, now ${dimensions[0]}: cut again`,
    ])
  })
})

const issueOf = (plan: Plan) => ({ revision: 1, on: '2026-11-25', tool: 'test', parts: issuedParts(plan) })
