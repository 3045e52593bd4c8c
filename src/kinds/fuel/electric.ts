import type { FuelKind } from './contract.ts'

export const electricFire = { id: 'electric', says: 'electric fire', governedBy: 'manual' } as const satisfies FuelKind
