import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { BoxPlan } from './boxes.ts'
import type { PlanContext } from './context.ts'
import type { Slots } from './slot.ts'

/** Plinth frames, kick plates, top fillers of tall runs, and the messages of section "levels". */
export function plinths(_context: PlanContext, _slots: Slots, _boxes: BoxPlan): Contribution {
  return NOTHING
}
