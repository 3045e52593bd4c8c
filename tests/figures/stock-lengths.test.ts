import { expect, it } from 'vitest'
import { thicknessSold } from '../../src/figures/stock-lengths.ts'
import { inches, millimetres } from '../../src/units/length.ts'

// Plywood sold as 3/4 in is often 18 mm (0.7087 in) or 23/32: a forum and a magazine, as noted for panels. Common practice.
it.each([
  ['18 mm in an inch job is sold as 3/4', millimetres(18), 'inch', inches(0, 3, 4)],
  ['0.703 in is sold as 3/4', inches(0.703), 'inch', inches(0, 3, 4)],
  ['6 mm in an inch job is sold as 1/4', millimetres(6), 'inch', inches(0, 1, 4)],
  ['18.2 mm is sold as 18', millimetres(18.2), 'metric', millimetres(18)],
  ['2 in is its own name', inches(2), 'inch', inches(2)],
] as const)('%s', (_says, measured, units, sold) => {
  expect(thicknessSold(measured, units)).toBe(sold)
})
