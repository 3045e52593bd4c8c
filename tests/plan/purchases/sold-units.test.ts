import { expect, it } from 'vitest'
import { inSoldUnits } from '../../../src/plan/purchases/sold-units.ts'
import type { Purchase } from '../../../src/things/supplies.ts'
import { minorUnits } from '../../../src/units/money.ts'

const tape: Purchase = {
  id: 'tape',
  item: 'masking tape',
  use: '',
  shop: 'hardware',
  need: 43.644,
  unit: 'm',
  packSize: 54.864,
  packs: 1,
  spare: '',
  priceEach: minorUnits(600),
  priceKnown: 'invented',
  firstUsedBy: 'D2',
}

// 16 CFR 500.19: 1 ft = 30.48 cm, so 60 yd = 54.864 m. NIST SP 811 B.8: US fl oz = 29.5735 ml, so 0.298693 l = 10.1 fl oz.
it('is counted as the pack is printed: yards and fluid ounces in an inch job', () => {
  expect(inSoldUnits(tape, 'inch')).toMatchObject({ unit: 'yd', packSize: 60 })
  expect(inSoldUnits({ ...tape, unit: 'l', packSize: 0.298693 }, 'inch')).toMatchObject({
    unit: 'fl oz',
    packSize: 10.1,
  })
})

it('stays metric in a metric job', () => {
  expect(inSoldUnits(tape, 'metric')).toMatchObject({ unit: 'm', need: 43.644, packSize: 54.86 })
})
