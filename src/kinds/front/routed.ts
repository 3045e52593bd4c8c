import type { FrontKind } from './contract.ts'

export const routedFront = { id: 'routed', says: 'routed from one blank' } as const satisfies FrontKind
