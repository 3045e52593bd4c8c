import type { FuelKind } from './contract.ts'

export const gas = { id: 'gas', says: 'gas appliance', governedBy: 'manual' } as const satisfies FuelKind
