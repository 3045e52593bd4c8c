import type { FuelKind } from './contract.ts'
import { manualOnly } from './manual-and-code.ts'

export const electricFire = {
  id: 'electric',
  says: 'electric fire',
  governedBy: 'manual',
  burns: true,
  heatsMasonry: false,
  flame: 'none',
  woodRules: manualOnly,
} as const satisfies FuelKind
