import fc from 'fast-check'
import { expect, it } from 'vitest'
import { cheapestPacks } from '../../../src/plan/purchases/cheapest-packs.ts'

it.each([
  ['a little needs the small tin', 0.5, [0, 1]],
  ['four small tins would cost more than the large one', 3, [1, 0]],
  ['a large one and a small one', 4.5, [1, 1]],
  ['nothing needs nothing', 0, [0, 0]],
])('%s (worked example, invented, computed by hand)', (_, need, counts) => {
  const sizes = [
    { size: 3.785, price: 6800 },
    { size: 0.946, price: 2300 },
  ]
  expect(cheapestPacks(need, sizes)).toEqual(counts)
})

it('takes the one with least left over of two equally cheap sets', () => {
  const sizes = [
    { size: 5, price: 100 },
    { size: 3, price: 100 },
  ]
  expect(cheapestPacks(2, sizes)).toEqual([0, 1])
})

it('covers the need, and no other set that covers it is cheaper', () => {
  const size = fc.record({ size: fc.integer({ min: 1, max: 8 }), price: fc.integer({ min: 1, max: 500 }) })
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30 }), size, size, (need, a, b) => {
      const [i, j] = cheapestPacks(need, [a, b])
      expect(i! * a.size + j! * b.size).toBeGreaterThanOrEqual(need)
      for (let k = 0; k <= need; k += 1) {
        for (let l = 0; l <= need; l += 1) {
          if (k * a.size + l * b.size >= need) {
            expect(k * a.price + l * b.price).toBeGreaterThanOrEqual(i! * a.price + j! * b.price)
          }
        }
      }
    }),
  )
})
