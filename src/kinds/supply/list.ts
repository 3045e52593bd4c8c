import { boughtBoxes } from './boxes.ts'
import type { SupplyKind } from './contract.ts'
import { boughtFronts } from './fronts.ts'
import { sprayingOut } from './spraying.ts'

/** Everything that can be bought in or done outside. Add one = one file + one line here. */
export const SUPPLIES: Readonly<Record<SupplyKind['id'], SupplyKind>> = {
  boxes: boughtBoxes,
  fronts: boughtFronts,
  spraying: sprayingOut,
}
