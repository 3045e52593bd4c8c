import type { Plan } from '../../src/plan/plan.ts'
import type { Part } from '../../src/things/part.ts'

/** Everything a reader of the papers could tell two plans apart by. */
export const digest = (plan: Plan) => ({
  parts: plan.parts,
  joints: plan.joints.joints,
  sheets: plan.panels.layouts.map((l) => [l.material.id, l.laid.map((x) => [x.part.id, x.x, x.y])]),
  purchases: plan.purchases,
  tasks: plan.calendar.tasks,
  price: plan.price,
  messages: plan.messages,
})

/** Sizes of one part, printed ones only. */
export const sizeOf = (p: Part) => [p.length, p.width, p.thickness, p.roughLength, p.roughWidth, p.quantity]

/** Sizes by part id. */
export const sizesById = (plan: Plan): ReadonlyMap<string, readonly number[]> =>
  new Map(plan.parts.map((p) => [p.id, sizeOf(p)]))
