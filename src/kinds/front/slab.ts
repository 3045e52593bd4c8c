import type { FrontKind } from './contract.ts'

export const slabFront = { id: 'slab', says: 'slab, plain' } as const satisfies FrontKind
