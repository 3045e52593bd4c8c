import type { FuelKind } from './contract.ts'

export const noFire = {
  id: 'none',
  says: 'nothing burns here, closed for good',
  governedBy: 'nothing',
  burns: false,
  heatsMasonry: false,
  flame: 'none',
  woodRules: () => [],
} as const satisfies FuelKind
