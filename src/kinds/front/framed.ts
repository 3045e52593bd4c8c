import type { FrontKind } from './contract.ts'

export const framedFront = { id: 'framed', says: 'framed: stiles, rails and a panel' } as const satisfies FrontKind
