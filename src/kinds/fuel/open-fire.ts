import { codeRules } from './code-rules.ts'
import type { FuelKind } from './contract.ts'

export const openFire = {
  id: 'open-fire',
  says: 'open wood fire in a masonry fireplace',
  governedBy: 'masonry rule',
  burns: true,
  heatsMasonry: true,
  flame: 'open',
  woodRules: ({ figures, profiles }) => codeRules(figures, profiles),
} as const satisfies FuelKind
