import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  breakEven,
  breakEvenPrice,
  breakEvenRate,
  breakEvenWords,
  worthOf,
} from '../../../src/plan/make-or-buy/break-even.ts'
import { hours } from '../../../src/units/hours.ts'
import { minorUnits } from '../../../src/units/money.ts'

const outlay = (money: number, h: number) => ({ money: minorUnits(Math.round(money * 100)), hours: hours(h) })

describe('break-even (worked examples, invented, computed by hand)', () => {
  const make = outlay(310, 9)
  const buy = outlay(520, 1.5)

  it('make 310.00 + 9 h, buy 520.00 + 1.5 h: 210 / 7.5 = 28.00 an hour; who counts an hour at 40 buys', () => {
    expect(breakEven(make, buy)).toEqual({ kind: 'rate', rate: 2800, above: 'buy' })
    const at40 = (way: typeof make) => worthOf({ ...way, hourWorth: minorUnits(4000) })
    expect([at40(make), at40(buy)]).toEqual([67_000, 58_000])
    expect(breakEvenWords(breakEven(make, buy), 'USD')).toBe(
      'break-even at 28.00 USD an hour: above it buy, below it make',
    )
  })

  it('four leaves at 96 + 45 delivery + 2 h, or 38 of material each + 9 h: 277 / 7 = 39.571428… an hour', () => {
    const given = { buyMoney: 96 * 4 + 45, makeMoney: 38 * 4, makeHours: 9, buyHours: 2 }
    expect(breakEvenRate(given)).toBeCloseTo(39.571_428_571, 9)
    expect(breakEven(outlay(152, 9), outlay(429, 2))).toMatchObject({ rate: 3957, above: 'buy' })
  })

  it('the quote at which both cost alike: (310 + 9 × 40 − 1.5 × 40) / 4 leaves = 152.50 each', () => {
    const quantity = 4
    const alike = breakEvenPrice({ makeTotal: 67_000, buyFixed: 6000, quantity })
    expect(alike).toBe(15_250)
    expect(worthOf({ money: alike * quantity, hours: 1.5, hourWorth: minorUnits(4000) })).toBe(67_000)
  })
})

describe('no break-even', () => {
  it.each([
    [outlay(310, 9), outlay(520, 9), 'make'],
    [outlay(520, 9), outlay(310, 9), 'buy'],
    [outlay(520, 9), outlay(310, 2), 'buy'],
    [outlay(310, 2), outlay(520, 9), 'make'],
    [outlay(310, 9), outlay(310, 2), 'buy'],
    [outlay(310, 9), outlay(310, 9), 'equal'],
  ] as const)('%j against %j: %s', (make, buy, better) => {
    expect(breakEven(make, buy)).toEqual({ kind: 'none', better })
    expect(breakEvenWords(breakEven(make, buy), 'USD')).toMatch(/^no break-even/)
  })

  it('buying that saves money and takes more hours: making wins above the rate', () =>
    expect(breakEven(outlay(500, 2), outlay(300, 6))).toEqual({ kind: 'rate', rate: 5000, above: 'make' }))
})

describe('any two ways', () => {
  const way = fc
    .record({ money: fc.integer({ min: 0, max: 1e6 }), tenths: fc.integer({ min: 0, max: 500 }) })
    .map(({ money, tenths }) => ({ money: minorUnits(money), hours: hours(tenths / 10) }))

  it('a cent above the rate the one that is named wins, a cent below the other', () => {
    fc.assert(
      fc.property(way, way, (make, buy) => {
        const found = breakEven(make, buy)
        if (found.kind === 'none') return
        const winsAt = (rate: number) => {
          const [m, b] = [make.money + make.hours * rate, buy.money + buy.hours * rate]
          return b < m ? 'buy' : 'make'
        }
        const below = found.above === 'buy' ? 'make' : 'buy'
        expect(winsAt(found.rate + 1)).toBe(found.above)
        if (found.rate > 1) expect(winsAt(found.rate - 1)).toBe(below)
      }),
    )
  })
})
