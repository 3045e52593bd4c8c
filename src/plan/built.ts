import type { Part } from '../things/part.ts'
import type { BoxPlan } from './boxes.ts'
import type { CoatingPlan } from './coating.ts'
import type { DevicePlan } from './devices.ts'
import type { FixingPlan } from './fixings.ts'
import type { FrontPlan } from './fronts.ts'
import type { JointPlan } from './joints.ts'
import type { MantelPlan } from './mantel.ts'
import type { PanelPlan } from './panels/panels.ts'
import type { ShelfPlan } from './shelves.ts'
import type { Slots } from './slot.ts'
import type { SupplyPlan } from './supply.ts'
import type { Survey } from './survey.ts'
import type { TopPlan } from './tops-and-ends.ts'

/** Everything that is built, before time and money: what tasks, purchases and price are worked out from. */
export interface Built {
  readonly survey: Survey
  readonly slots: Slots
  readonly boxes: BoxPlan
  readonly devices: DevicePlan
  readonly fronts: FrontPlan
  readonly tops: TopPlan
  readonly mantel: MantelPlan
  readonly shelves: ShelfPlan
  readonly supply: SupplyPlan
  /** All parts with their supplier and cut-outs, in written order. */
  readonly parts: readonly Part[]
  readonly panels: PanelPlan
  readonly coating: CoatingPlan
  readonly joints: JointPlan
  readonly fixings: FixingPlan
}
