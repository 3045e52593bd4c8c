import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { longestRoundCorner } from '../../src/geometry/round-corner.ts'
import { throughOpening } from '../../src/geometry/through-opening.ts'
import { type Length, millimetres } from '../../src/units/length.ts'

const mm = millimetres
const ways = fc.integer({ min: 600, max: 2000 })

describe('a rigid rectangle round a right-angled corner', () => {
  it('is the ladder of the textbooks when it has no width: (a^⅔ + b^⅔)^(3/2)', () => {
    // Ladder round a corner of ways 8 and 27: 13^(3/2) = 46.872 (plane geometry, a standard calculus exercise).
    expect(longestRoundCorner({ first: mm(800), second: mm(2700) }, mm(0)) / 1e6).toBeCloseTo(13 ** 1.5 * 100, 4)
    fc.assert(
      fc.property(ways, ways, (a, b) => {
        const bound = (a ** (2 / 3) + b ** (2 / 3)) ** 1.5
        expect(longestRoundCorner({ first: mm(a), second: mm(b) }, mm(0)) / 1e6).toBeCloseTo(bound, 3)
      }),
    )
  })

  it('in equal ways is worst at 45°: 2·(√2·way − width)', () => {
    fc.assert(
      fc.property(ways, fc.integer({ min: 10, max: 500 }), (way, width) => {
        const bound = 2 * (Math.SQRT2 * way - width)
        expect(longestRoundCorner({ first: mm(way), second: mm(way) }, mm(width)) / 1e6).toBeCloseTo(bound, 3)
      }),
    )
  })

  it('never overlaps the inner corner at any angle it is turned through', () => {
    fc.assert(
      fc.property(ways, ways, fc.integer({ min: 10, max: 500 }), (a, b, width) => {
        const long = longestRoundCorner({ first: mm(a), second: mm(b) }, mm(width)) / 1e6
        for (let degrees = 1; degrees < 90; degrees++) {
          const at = (degrees * Math.PI) / 180
          // Ends of the long side on the outer walls; distance of the inner corner from that side.
          const [x, y] = [long * Math.cos(at), long * Math.sin(at)]
          const distance = (b * x + a * y - x * y) / long
          const other = (a * x + b * y - x * y) / long
          expect(Math.min(distance, other)).toBeGreaterThanOrEqual(width - 1e-3)
        }
      }),
    )
  })

  it('is nothing when it is wider than a way', () => {
    expect(longestRoundCorner({ first: mm(800), second: mm(600) }, mm(600))).toBe(0)
  })
})

describe('the end of a piece through a door', () => {
  const door = { width: mm(700), height: mm(2000) }
  it('goes straight when both sides are smaller, however it is turned', () => {
    expect(throughOpening({ width: mm(1900), height: mm(690) }, door)).toBe('straight')
  })
  it('goes tilted when it is a little too long and thin enough: a board of 2 × 2110 in a door of 700 × 2000', () => {
    // Diagonal of the door: √(700² + 2000²) = 2118.96.
    expect(throughOpening({ width: mm(2), height: mm(2110) }, door)).toBe('tilted')
    expect(throughOpening({ width: mm(2), height: mm(2119) }, door)).toBe('not')
  })
  it('agrees with turning it by hand through every tenth of a degree', () => {
    const size = fc.integer({ min: 20, max: 2400 })
    fc.assert(
      fc.property(size, size, (p, q) => {
        const fits = Array.from({ length: 901 }, (_, i) => (i * Math.PI) / 1800).some((a) => {
          const [s, c] = [Math.sin(a), Math.cos(a)]
          return p * c + q * s <= 700 + 1e-6 && p * s + q * c <= 2000 + 1e-6
        })
        // Turning by tenths of a degree misses the last hair: it may only be stricter.
        if (fits) expect(throughOpening({ width: mm(p) as Length, height: mm(q) }, door)).not.toBe('not')
        if (throughOpening({ width: mm(p), height: mm(q) }, door) !== 'not') {
          const nearly = Array.from({ length: 901 }, (_, i) => (i * Math.PI) / 1800).some((a) => {
            const [s, c] = [Math.sin(a), Math.cos(a)]
            return p * c + q * s <= 700 + 5 && p * s + q * c <= 2000 + 5
          })
          expect(nearly).toBe(true)
        }
      }),
    )
  })
})
