import type { Part } from '../things/part.ts'
import type { BoxPlan } from './boxes/boxes.ts'
import type { CarryingIn } from './carrying-in/carrying-in.ts'
import type { CoatingPlan } from './coating/coating.ts'
import type { DevicePlan } from './devices/devices.ts'
import type { Extras } from './extras/extras.ts'
import type { FixingPlan } from './fixings/fixings.ts'
import type { FrontPlan } from './fronts/fronts.ts'
import type { JointPlan } from './joints/joints.ts'
import type { LightPlan } from './lights/lights.ts'
import type { MantelPlan } from './mantel/mantel.ts'
import type { PanelPlan } from './panels/panels.ts'
import type { Slots } from './run/slot.ts'
import type { ShelfPlan } from './shelves/shelves.ts'
import type { StripOut } from './strip-out/strip-out.ts'
import type { SupplyPlan } from './supply/supply.ts'
import type { Survey } from './survey/survey.ts'
import type { TopPlan } from './tops/tops-and-ends.ts'

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
  readonly lights: LightPlan
  /** Pieces added by hand. */
  readonly extras: Extras
  readonly stripOut: StripOut
  readonly carryingIn: CarryingIn
  readonly supply: SupplyPlan
  /** All parts with their supplier and cut-outs, in written order. */
  readonly parts: readonly Part[]
  readonly panels: PanelPlan
  readonly coating: CoatingPlan
  readonly joints: JointPlan
  readonly fixings: FixingPlan
}
