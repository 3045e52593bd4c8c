import type { Plan } from '../plan/plan.ts'
import { cutInShop } from './cut-out-words.ts'

/** What can hurt somebody on this job: each prints its caution. */
export interface Dangers {
  readonly spraying: boolean
  readonly leadPaint: boolean
  readonly electricity: boolean
  readonly fire: boolean
  readonly heavy: boolean
  readonly shelves: boolean
  readonly masonryPaint: boolean
}

export function dangersOf(plan: Plan): Dangers {
  return {
    spraying: plan.coating.method !== 'hand' && plan.coating.where !== 'spray shop',
    leadPaint: plan.stripOut.paint.mayHoldLead,
    electricity:
      plan.devices.trades.length + plan.stripOut.trades.length + plan.lights.drivers.length > 0 ||
      plan.parts.some((part) => part.cutOuts.some((cut) => !cutInShop(cut))),
    fire: plan.mantel.breasts.some((breast) => breast.opening !== undefined),
    heavy: plan.fixings.twoPeople.size > 0,
    shelves: plan.shelves.shelves.length > 0,
    masonryPaint: plan.mantel.breasts.some((breast) => breast.paintedFace > 0),
  }
}
