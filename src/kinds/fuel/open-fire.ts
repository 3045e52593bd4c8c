import type { FuelKind } from './contract.ts'

export const openFire = {
  id: 'open-fire',
  says: 'open wood fire in a masonry fireplace',
  governedBy: 'masonry rule',
} as const satisfies FuelKind
