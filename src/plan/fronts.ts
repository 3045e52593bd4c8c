import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { QuestionKey } from '../things/field.ts'
import type { Length } from '../units/length.ts'
import type { Mass } from '../units/mass.ts'
import type { Box, BoxPlan } from './boxes.ts'
import type { PlanContext } from './context.ts'

/** One leaf (door). x, z = its lower left corner in the bay's own axes. */
export interface Leaf {
  readonly box: Box
  readonly mark: string
  readonly id: string
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
  readonly thickness: Length
  readonly hingeSide: 'left' | 'right'
  readonly hinges: number
  /** Cup centres from the leaf's lower end. */
  readonly cups: readonly Length[]
  readonly cupFromEdge: Length
  readonly handleHoles: readonly { readonly fromHandleEdge: Length; readonly fromTop: Length }[]
  readonly mass: Mass
  readonly waitsFor: readonly QuestionKey[]
}

export interface FrontPlan {
  readonly style: string
  readonly leaves: readonly Leaf[]
  readonly contribution: Contribution
}

export function fronts(_context: PlanContext, _boxes: BoxPlan): FrontPlan {
  return { style: 'slab', leaves: [], contribution: NOTHING }
}
