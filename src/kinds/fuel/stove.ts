import type { FuelKind } from './contract.ts'
import { manualAndCode } from './manual-and-code.ts'

export const stove = {
  id: 'stove',
  says: 'stove or insert',
  governedBy: 'manual',
  burns: true,
  heatsMasonry: true,
  flame: 'closed',
  woodRules: manualAndCode,
} as const satisfies FuelKind
