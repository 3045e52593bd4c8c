import type { FuelKind } from './contract.ts'

export const stove = { id: 'stove', says: 'stove or insert', governedBy: 'manual' } as const satisfies FuelKind
