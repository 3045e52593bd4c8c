import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { Length } from '../units/length.ts'
import type { BoxPlan } from './boxes.ts'
import type { PlanContext } from './context.ts'
import type { DevicePlan } from './devices.ts'
import type { Slots } from './slot.ts'

export interface TopPlan {
  /** Height of the counter's upper face by bay id (box top where there is no counter). */
  readonly counterTop: ReadonlyMap<string, Length>
  readonly contribution: Contribution
}

/** Counters, gables and wall fillers. */
export function topsAndEnds(_context: PlanContext, _slots: Slots, _boxes: BoxPlan, _devices: DevicePlan): TopPlan {
  return { counterTop: new Map(), contribution: NOTHING }
}
