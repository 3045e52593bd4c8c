import { expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { hollowPull } from '../../src/kinds/shelf/hollow-strength.ts'
import { inches } from '../../src/units/length.ts'
import { cutStep } from '../../src/units/round.ts'

const NEWTONS_PER_POUND = 4.4482216
const weightless = {
  ...figuresIn('inch'),
  number: (id: string) => (id === 'density.mdf' ? 0 : figuresIn('inch').number(id)),
}
const make = {
  thickness: inches(2, 1, 2),
  skin: inches(0, 1, 2),
  edge: inches(0, 3, 4),
  spareDepth: inches(0),
  figures: weightless,
  cut: cutStep(inches(0, 1, 16)),
}

// Worked by hand: 20 lb/sq ft on 41 × 15 in is 85.416667 lb, its middle 7.5 in out, screws 0.75 in above the cleat's lower
// edge: 85.416667 × 7.5 / 0.75 = 854.1667 lb, over three studs 284.7222 lb each. A #8 screw with 1 1/2 in of thread in spruce
// (G 0.41) is allowed 2850 · 0.41² · 0.164 · 1.5 = 117.8549 lb (NDS, wood screws in withdrawal, as printed in a design handbook,
// eq. 6.37): the back cleat alone fails by 2.4.
it('a shelf held by its back cleat alone pulls 854 lb on its screws, 285 lb on each of three', () => {
  const pull = hollowPull({
    make,
    depth: inches(15),
    load: 957.6051796,
    back: inches(41),
    cleatHeight: inches(1, 1, 2),
  })
  expect(pull / NEWTONS_PER_POUND).toBeCloseTo(854.1667, 2)
  expect(pull / NEWTONS_PER_POUND / 3).toBeCloseTo(284.7222, 2)
  expect(pull / NEWTONS_PER_POUND / 3 / (2850 * 0.41 ** 2 * 0.164 * 1.5)).toBeCloseTo(2.4158, 3)
})
