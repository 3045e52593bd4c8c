import type { Purchase } from '../things/supplies.ts'
import type { Built } from './built.ts'
import type { PlanContext } from './context.ts'
import { boughtIn } from './purchases/bought-in.ts'
import { coatingPurchases } from './purchases/coatings.ts'
import { hardwarePurchases } from './purchases/hardware.ts'
import { jointPurchases } from './purchases/joint-supplies.ts'
import { panelPurchases } from './purchases/panels.ts'

/** Everything to buy, rounded up to packs in this one place. Abrasives, rags and bits are sundries of the price. */
export const purchases = (context: PlanContext, built: Built): readonly Purchase[] =>
  [
    ...panelPurchases(context, built),
    ...hardwarePurchases(context, built),
    ...coatingPurchases(context, built),
    ...jointPurchases(context, built),
    ...boughtIn(built),
  ].filter((p) => p.packs > 0)
