import { materialOf } from '../plan/materials.ts'
import type { Plan } from '../plan/plan.ts'
import type { MaterialId } from '../things/material.ts'

/** Each material of the job by its id, as it is asked for at the counter. */
export type MaterialNames = ReadonlyMap<MaterialId, string>

export const materialNames = (plan: Plan): MaterialNames =>
  new Map(plan.parts.map((part) => [part.material, materialOf(part.material, plan.figures).name]))
