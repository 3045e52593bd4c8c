import type { FuelKind } from './contract.ts'
import { manualAndCode } from './manual-and-code.ts'

export const gas = {
  id: 'gas',
  says: 'gas appliance',
  governedBy: 'manual',
  burns: true,
  heatsMasonry: true,
  flame: 'open',
  woodRules: manualAndCode,
} as const satisfies FuelKind
