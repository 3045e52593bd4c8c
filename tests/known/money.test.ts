import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { profitOn, shareOf, split } from '../../src/plan/price/shares.ts'
import { costed, priced } from '../../src/plan/price/totals.ts'
import { addMoney, minorUnits, roundMoney } from '../../src/units/money.ts'

const money = (amount: number) => minorUnits(Math.round(amount * 100))

describe('mark-up and margin (arithmetic, no source): markup = m / (1 − m)', () => {
  it.each([
    [10, 11.1111],
    [15, 17.6471],
    [20, 25],
    [25, 33.3333],
    [30, 42.8571],
    [35, 53.8462],
    [40, 66.6667],
    [50, 100],
  ])('margin %s %% is mark-up %s %%', (margin, markup) => {
    const cost = money(1_000_000)
    expect(profitOn({ cost, percent: margin, kind: 'margin' }) / cost).toBeCloseTo(markup / 100, 6)
  })

  it('on a cost of 1000.00: 30 % mark-up 300.00, 30 % margin 428.57; 20 % mark-up 200.00, margin 250.00', () => {
    const cost = money(1000)
    expect(profitOn({ cost, percent: 30, kind: 'markup' })).toBe(30_000)
    expect(profitOn({ cost, percent: 30, kind: 'margin' })).toBe(42_857)
    expect(profitOn({ cost, percent: 20, kind: 'markup' })).toBe(20_000)
    expect(profitOn({ cost, percent: 20, kind: 'margin' })).toBe(25_000)
  })
})

describe('half a cent goes up, away from zero', () => {
  // Rule names from documentation of decimal rounding; 0.125 half-up → 0.13 read in a public worked example; others computed.
  it.each([
    [234.5, 235],
    [235.5, 236],
    [267.5, 268],
    [12.5, 13],
    [732.5, 733],
    [-234.5, -235],
  ])('%s cents → %s', (exact, rounded) => expect(roundMoney(exact)).toBe(rounded))

  it('2.675 times one hundred, where binary floating point falls short', () =>
    expect(roundMoney(2.675 * 100)).toBe(268))
})

describe('tax at 8.25 % (worked example, invented, computed by hand)', () => {
  const perLine = (lines: readonly number[]) => addMoney(...lines.map((l) => shareOf(money(l), 8.25)))

  it('lines 19.99, 29.99, 14.99: by line and on the sum 5.36', () => {
    expect(perLine([19.99, 29.99, 14.99])).toBe(536)
    expect(shareOf(money(64.97), 8.25)).toBe(536)
  })

  it('three lines of 0.10: 0.03 by line, 0.02 on the sum; the price is taxed on the sum', () => {
    expect(perLine([0.1, 0.1, 0.1])).toBe(3)
    const rates = { profit: 0, profitKind: 'markup', roundTo: 0.01, discount: money(0), tax: 8.25 } as const
    expect(priced({ cost: money(0.3), rates }).tax).toBe(2)
  })
})

describe('stages', () => {
  it('100.00 in three equal parts: 33.33, 33.33, 33.34', () => {
    const third = 100 / 3
    expect(split({ total: money(100), percents: [third, third, third] })).toEqual([3333, 3333, 3334])
  })

  it('6,307.00 at 30, 40, 30 %: 1,892.10, 2,522.80 and the rest (invented, computed by hand)', () => {
    expect(split({ total: money(6307), percents: [30, 40, 30] })).toEqual([189_210, 252_280, 189_210])
  })

  it('never lose a cent', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1 }),
        (total, percents) => {
          expect(addMoney(...split({ total: minorUnits(total), percents }))).toBe(total)
        },
      ),
    )
  })
})

describe('the whole price', () => {
  const RATES = { sundries: 5, handling: 10, overhead: 15, contingency: 5 }

  it('adds up by hand: labour 3000.00, materials 800.00, bought in 500.00, travel 90.00 (invented, computed by hand)', () => {
    const cost = costed({
      labour: money(3000),
      materials: money(800),
      boughtIn: money(500),
      travel: money(90),
      rates: RATES,
    })
    // 3000 + 800 + 80 + 500 + 40 + 90 = 4510; 15 % = 676.50; 5 % of 5186.50 = 259.325 → 259.33; cost 5445.83.
    expect(cost).toEqual({
      sundries: 4000,
      handling: 8000,
      direct: 451_000,
      overhead: 67_650,
      contingency: 25_933,
      cost: 544_583,
    })
    // 20 % = 1089.166 → 1089.17; 6535.00 is 6540.00 rounded up to tens; less 40.00; tax 6 % of 6500.00.
    const rates = { profit: 20, profitKind: 'markup', roundTo: 10, discount: money(40), tax: 6 } as const
    expect(priced({ cost: cost.cost, rates })).toEqual({
      profit: 108_917,
      rounding: 500,
      discount: 4000,
      beforeTax: 650_000,
      tax: 39_000,
      total: 689_000,
    })
  })

  it('is the sum of what is printed, whatever the shares', () => {
    const share = fc.integer({ min: 0, max: 990 }).map((n) => n / 10)
    const sum = fc.integer({ min: 0, max: 1e8 }).map(minorUnits)
    fc.assert(
      fc.property(
        sum,
        sum,
        share,
        share,
        fc.constantFrom('markup' as const, 'margin' as const),
        (labour, materials, a, b, kind) => {
          const c = costed({
            labour,
            materials,
            boughtIn: minorUnits(0),
            travel: minorUnits(0),
            rates: { sundries: a, handling: b, overhead: b, contingency: a },
          })
          expect(c.direct).toBe(labour + materials + c.sundries + c.handling)
          expect(c.cost).toBe(c.direct + c.overhead + c.contingency)
          const p = priced({
            cost: c.cost,
            rates: { profit: a, profitKind: kind, roundTo: 10, discount: minorUnits(123), tax: b },
          })
          expect(p.beforeTax).toBe(c.cost + p.profit + p.rounding - 123)
          expect((p.beforeTax + 123) % 1000).toBe(0)
          expect(p.rounding).toBeGreaterThanOrEqual(0)
          expect(p.rounding).toBeLessThan(1000)
          expect(p.total).toBe(p.beforeTax + p.tax)
        },
      ),
    )
  })
})
