import { houseYear, leadTested } from '../job/chapters/job.ts'
import type { Plan } from '../plan/plan.ts'
import { lookAt } from '../plan/settle.ts'

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

/** Paint for homes could hold lead until 1978 in the US (16 CFR 1303); an unknown year counts as old. */
const LEAD_UNTIL = 1978

export function dangersOf(plan: Plan): Dangers {
  const look = lookAt(plan.job, plan.used, undefined)
  return {
    spraying: plan.coating.method !== 'hand' && plan.coating.where !== 'spray shop',
    leadPaint: (look(houseYear) ?? 0) < LEAD_UNTIL && look(leadTested) !== true,
    electricity: plan.devices.trades.length > 0 || plan.parts.some((part) => part.cutOuts.length > 0),
    fire: plan.mantel.breasts.some((breast) => breast.opening !== undefined),
    heavy: plan.fixings.twoPeople.size > 0,
    shelves: plan.shelves.shelves.length > 0,
    masonryPaint: plan.mantel.breasts.some((breast) => breast.paintedFace > 0),
  }
}
