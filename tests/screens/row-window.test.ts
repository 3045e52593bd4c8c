import fc from 'fast-check'
import { expect, it } from 'vitest'
import { pageDown, pageUp, rowWindow } from '../../src/screens/row-window.ts'

const list = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 60 }).chain((heights) =>
  fc.record({
    heights: fc.constant(heights),
    chosen: fc.nat(heights.length - 1),
    room: fc.integer({ min: 6, max: 30 }),
  }),
)
const linesOf = (heights: readonly number[]) => heights.reduce((total, h) => total + h, 0)

it('shows the chosen row, whole rows only, and as many as there is room for', () => {
  fc.assert(
    fc.property(list, ({ heights, chosen, room }) => {
      const { from, to } = rowWindow(heights, chosen, room)
      expect(from).toBeLessThanOrEqual(chosen)
      expect(to).toBeGreaterThan(chosen)
      const lines = linesOf(heights.slice(from, to))
      expect(lines).toBeLessThanOrEqual(room)
      if (to < heights.length) expect(lines + (heights[to] ?? 0)).toBeGreaterThan(room)
      else if (from > 0) expect(lines + (heights[from - 1] ?? 0)).toBeGreaterThan(room)
    }),
  )
})

it('paging down from the first row shows every row, and up from the last row too', () => {
  fc.assert(
    fc.property(list, ({ heights, room }) => {
      for (const [start, end, page] of [
        [0, heights.length - 1, pageDown],
        [heights.length - 1, 0, pageUp],
      ] as const) {
        const seen = new Set<number>()
        for (let at = start, steps = 0; ; at = page(heights, at, room)) {
          const { from, to } = rowWindow(heights, at, room)
          for (let row = from; row < to; row++) seen.add(row)
          if (at === end) break
          expect(++steps).toBeLessThanOrEqual(heights.length)
        }
        expect(seen.size).toBe(heights.length)
      }
    }),
  )
})

it('moves by one window less one row where rows are of one line', () => {
  const heights = Array.from({ length: 100 }, () => 1)
  const first = rowWindow(heights, 0, 15)
  const second = rowWindow(heights, pageDown(heights, 0, 15), 15)
  expect([first, second]).toEqual([
    { from: 0, to: 15 },
    { from: 14, to: 29 },
  ])
})
