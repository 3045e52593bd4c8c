import { describe, expect, it } from 'vitest'
import { squareMetres } from '../../src/units/area.ts'
import { inches, millimetres } from '../../src/units/length.ts'
import { cutStep } from '../../src/units/round.ts'
import { showLength } from '../../src/units/show-length.ts'
import { LITRES_PER_US_FLUID_OUNCE, LITRES_PER_US_GALLON } from '../../src/units/volume.ts'

describe('16 CFR 500.19: 1 in = 2.54 cm exactly, in whole nanometres', () => {
  it.each([
    ['1/64', inches(0, 1, 64), 396_875],
    ['1/32', inches(0, 1, 32), 793_750],
    ['1/16', inches(0, 1, 16), 1_587_500],
    ['1/8', inches(0, 1, 8), 3_175_000],
    ['3/16', inches(0, 3, 16), 4_762_500],
    ['1/4', inches(0, 1, 4), 6_350_000],
    ['3/4', inches(0, 3, 4), 19_050_000],
    ['23/32', inches(0, 23, 32), 18_256_250],
    ['41 1/32', inches(41, 1, 32), 1_042_193_750],
    ['41 65/512, read off and rounded once', inches(41, 65, 512), 1_044_624_609],
    ['1 ft = 30.48 cm', inches(12), 304_800_000],
  ])('%s in', (_, length, nanometres) => expect(length).toBe(nanometres))

  it('1 sq ft = 929.0304 sq cm', () => expect(squareMetres(0.3048 ** 2)).toBeCloseTo(0.09290304, 12))
})

describe('NIST SP 811, appendix B.8', () => {
  it('a US gallon is 231 cu in = 3.785411784 l; a fluid ounce is 231/128 cu in', () => {
    expect(LITRES_PER_US_GALLON).toBeCloseTo(3.785411784, 12)
    expect(LITRES_PER_US_FLUID_OUNCE / 0.016387064).toBeCloseTo(1.8046875, 9)
    expect(0.016387064 / LITRES_PER_US_FLUID_OUNCE).toBeCloseTo(0.554113, 6)
  })
})

/** Worked by hand. */
describe('rounding to a cut step', () => {
  const v = inches(39.00390625)
  const step = (denominator: number) => cutStep(inches(0, 1, denominator))
  it('39.00390625 in: down and near 39; up 39 1/16, 39 1/32, 39 1/64', () => {
    expect([step(16).down(v), step(16).near(v), step(64).near(v)]).toEqual([inches(39), inches(39), inches(39)])
    expect([16, 32, 64].map((d) => step(d).up(v))).toEqual([16, 32, 64].map((d) => inches(39, 1, d)))
  })
  it('41.126953125 in: down and near 41 1/8', () => {
    expect([step(16).down, step(16).near].map((round) => round(inches(41.126953125)))).toEqual([
      inches(41, 1, 8),
      inches(41, 1, 8),
    ])
  })
  it('18 mm is 45/64 in to the nearest 1/64, 11/16 to the nearest 1/16; 600 mm is 23 5/8', () => {
    expect([step(64).near(millimetres(18)), step(16).near(millimetres(18))]).toEqual([
      inches(0, 45, 64),
      inches(0, 11, 16),
    ])
    expect(step(16).near(millimetres(600))).toBe(inches(23, 5, 8))
  })
  it('24/64 prints 3/8, and 11 63/64 to the nearest 1/16 prints 12', () => {
    expect(showLength(inches(0, 24, 64), 'inch')).toBe('3/8')
    expect(showLength(step(16).near(inches(11, 63, 64)), 'inch')).toBe('12')
  })
})
