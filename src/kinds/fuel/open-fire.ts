import type { FuelKind } from './contract.ts'
import { MASONRY_CODES } from './masonry-codes.ts'

export const openFire = {
  id: 'open-fire',
  says: 'open wood fire in a masonry fireplace',
  governedBy: 'masonry rule',
  burns: true,
  heatsMasonry: true,
  woodRules: ({ code, figures }) => MASONRY_CODES[code](figures),
} as const satisfies FuelKind
