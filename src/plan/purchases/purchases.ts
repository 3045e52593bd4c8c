import type { Purchase } from '../../things/supplies.ts'
import type { Task } from '../../things/task.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import { lightPurchases } from '../lights/light-purchases.ts'
import { wastePurchases } from '../strip-out/waste.ts'
import { boughtIn } from './bought-in.ts'
import { coatingPurchases } from './coatings.ts'
import { edgeBandPurchases } from './edge-band.ts'
import { hardwarePurchases } from './hardware.ts'
import { jointPurchases } from './joint-supplies.ts'
import { panelPurchases } from './panels.ts'
import { inSoldUnits } from './sold-units.ts'

/** Everything to buy, rounded up to packs in this one place. Abrasives, rags and bits are sundries of the price. */
export const purchases = (context: PlanContext, built: Built, tasks: readonly Task[]): readonly Purchase[] =>
  [
    ...panelPurchases(context, built),
    ...hardwarePurchases(context, built),
    ...edgeBandPurchases(context, built),
    ...coatingPurchases(context, built),
    ...jointPurchases(context, built, tasks),
    ...boughtIn(built),
    ...lightPurchases(context, built.lights),
    ...wastePurchases(context, built.stripOut.waste),
  ]
    .filter((p) => p.packs > 0)
    .map((p) => ({ ...inSoldUnits(p, context.show.units), firstUsedBy: presentTask(p.firstUsedBy, tasks) }))

/** Steps that use materials, in the order of the trade. */
const USERS = [
  'W1',
  'W2',
  'W3',
  'W6',
  'W7',
  'W8',
  'B6',
  'B7',
  'F2',
  'F4',
  'F5',
  'F8',
  'F9',
  'F10',
  'D1',
  'D2',
  'D3',
  'D4',
  'D5',
  'D6',
  'E1',
]

/** The step itself when this job has it, or else the next one that uses materials. */
function presentTask(id: string, tasks: readonly Task[]): string {
  const named = (wanted: string) => tasks.find((t) => t.id === wanted || t.id.startsWith(`${wanted}.`))?.id
  const from = USERS.findIndex((u) => u === id || id.startsWith(`${u}.`))
  return (
    named(id) ??
    USERS.slice(Math.max(0, from))
      .map(named)
      .find((t) => t !== undefined) ??
    id
  )
}
