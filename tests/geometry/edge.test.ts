import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { edgeAt, roundedQuotient, stationsBetween } from '../../src/geometry/edge.ts'
import { edgeThrough, rising } from '../../src/geometry/edge-line.ts'
import { diagonalFits, longestWithDiagonal } from '../../src/geometry/squares.ts'
import { inches, millimetres as mm, nanometres } from '../../src/units/length.ts'

const wall = [
  { at: inches(4), v: inches(41, 1, 4) },
  { at: inches(36), v: inches(41) },
]

describe('an edge between surveyed heights', () => {
  it('is held beyond the readings and straight between them', () => {
    expect(edgeAt(wall, inches(0))).toBe(inches(41, 1, 4))
    expect(edgeAt(wall, inches(80))).toBe(inches(41))
    expect(edgeAt(wall, inches(20))).toBe(inches(41, 1, 8))
  })

  it('rounds to the nearest nanometre, half away from zero', () => {
    expect([roundedQuotient(5n, 2n), roundedQuotient(-5n, 2n), roundedQuotient(4n, 3n)]).toEqual([3n, -3n, 1n])
  })

  it('never leaves the span of its knots', () => {
    const length = fc.integer({ min: 0, max: 3_000_000_000 }).map(nanometres)
    fc.assert(
      fc.property(fc.array(fc.tuple(length, length), { minLength: 1, maxLength: 6 }), length, (rows, at) => {
        const values = new Map(rows)
        const edge = edgeThrough(
          rows.map(([x]) => x),
          (x) => values.get(x)!,
        )
        const v = edgeAt(edge, at)
        expect(v).toBeGreaterThanOrEqual(Math.min(...values.values()))
        expect(v).toBeLessThanOrEqual(Math.max(...values.values()))
      }),
    )
  })

  it('names the heights where extremes can lie', () => {
    expect(stationsBetween(wall, inches(2), inches(30))).toEqual([inches(2), inches(4), inches(30)])
    expect(rising([mm(3), mm(1), mm(3)])).toEqual([mm(1), mm(3)])
  })
})

describe('diagonals compared by their squares', () => {
  it('knows 3-4-5, exactly', () => {
    expect(diagonalFits(mm(300), mm(400), mm(500))).toBe(true)
    expect(diagonalFits(mm(300), mm(400), nanometres(499_999_999))).toBe(false)
    expect(longestWithDiagonal(mm(300), mm(500))).toBe(mm(400))
  })

  it('of a 39 × 30 front is 49.203658 in (computed: √(39² + 30²))', () => {
    expect(diagonalFits(inches(39), inches(30), inches(49.203658))).toBe(false)
    expect(diagonalFits(inches(39), inches(30), inches(49.203659))).toBe(true)
  })

  it('gives 0 where nothing fits, and the longest side that does otherwise', () => {
    expect(longestWithDiagonal(mm(600), mm(500))).toBe(0)
    const length = fc.integer({ min: 1, max: 4_000_000_000 }).map(nanometres)
    fc.assert(
      fc.property(length, length, (other, room) => {
        const most = longestWithDiagonal(other, room)
        fc.pre(most > 0)
        expect(diagonalFits(most, other, room)).toBe(true)
        expect(diagonalFits(nanometres(most + 1), other, room)).toBe(false)
      }),
    )
  })
})
