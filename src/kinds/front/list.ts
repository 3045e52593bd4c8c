import { framedFront } from './framed.ts'
import { routedFront } from './routed.ts'
import { slabFront } from './slab.ts'

/** Every kind of front. Add one = one file + one line here. */
export const FRONTS = { framed: framedFront, routed: routedFront, slab: slabFront } as const
export type FrontId = keyof typeof FRONTS
