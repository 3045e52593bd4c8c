import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, overlaps, shiftedClear } from '../../../src/documents/write/spread-text.ts'

describe('words that make way for others', () => {
  it('stay where they are when they are clear', () => {
    const box = { x: 0, y: 0, width: 10, height: 5 }
    expect(shiftedClear(box, [{ ...box, x: 20 }], 'x')).toEqual(box)
  })

  it('move along one axis only, and no further than they must', () => {
    const others = fc.array(fc.integer({ min: -30, max: 30 }), { maxLength: 2 })
    fc.assert(
      fc.property(others, (at) => {
        const box: Box = { x: 0, y: 0, width: 10, height: 5 }
        const taken = at.map((x): Box => ({ x, y: 0, width: 10, height: 5 }))
        const moved = shiftedClear(box, taken, 'x')
        const shift = Math.abs(moved.x)
        const nearer = Array.from({ length: shift }, (_, s) => [s, -s]).flat()
        return (
          moved.y === 0 &&
          !taken.some((other) => overlaps(moved, other)) &&
          nearer.every((x) => taken.some((other) => overlaps({ ...box, x }, other)))
        )
      }),
    )
  })
})
