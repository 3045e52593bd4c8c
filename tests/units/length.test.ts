import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inches, millimetres, nanometres } from '../../src/units/length.ts'
import { cutStep } from '../../src/units/round.ts'
import { showLength } from '../../src/units/show-length.ts'

describe('lengths are exact (16 CFR 500.19: 1 in = 2.54 cm exactly)', () => {
  it.each([
    [inches(0, 1, 64), 396_875],
    [inches(0, 1, 16), 1_587_500],
    [inches(0, 23, 32), 18_256_250],
    [inches(41, 1, 32), 1_042_193_750],
    [millimetres(18), 18_000_000],
  ])('%d nm = %d nm', (length, nm) => {
    expect(length).toBe(nm)
  })

  it('refuses a fraction of a nanometre', () => {
    expect(() => nanometres(0.5)).toThrow(RangeError)
  })
})

describe('rounding to the cut step', () => {
  const sixteenths = cutStep(inches(0, 1, 16))
  it('39.00390625 in: down and near 39, up 39 1/16', () => {
    const v = inches(39.00390625)
    expect([sixteenths.down(v), sixteenths.near(v), sixteenths.up(v)]).toEqual([
      inches(39),
      inches(39),
      inches(39, 1, 16),
    ])
  })
  it('down ≤ v ≤ up, less than a step apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5e9, max: 5e9 }), (n) => {
        const v = nanometres(n)
        return (
          sixteenths.down(v) <= v + 1000 &&
          sixteenths.up(v) >= v - 1000 &&
          sixteenths.up(v) - sixteenths.down(v) <= sixteenths.step
        )
      }),
    )
  })
})

describe('printing', () => {
  it('reduces and carries fractions: 24/64 is 3/8, 11 63/64 at 1/16 is 12', () => {
    expect(showLength(inches(0, 24, 64), 'inch')).toBe('3/8')
    expect(showLength(inches(11, 63, 64), 'inch', 16)).toBe('12')
  })
})
