import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { CutOut, PartId } from '../things/part.ts'
import type { BoxPlan } from './boxes.ts'
import type { PlanContext } from './context.ts'
import type { Survey } from './survey.ts'

export interface DevicePlan {
  /** Cut-outs by the part they go into (box backs, box sides). */
  readonly cutOuts: ReadonlyMap<PartId, readonly CutOut[]>
  /** Devices to be moved or extended by a licensed trade, in words. */
  readonly trades: readonly {
    readonly trade: 'electrician' | 'gas fitter' | 'heating fitter'
    readonly says: string
    readonly bay: string
  }[]
  readonly contribution: Contribution
}

export function devices(_context: PlanContext, _survey: Survey, _boxes: BoxPlan): DevicePlan {
  return { cutOuts: new Map(), trades: [], contribution: NOTHING }
}
