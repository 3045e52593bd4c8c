import type { Joint, JointDraft } from '../things/joint.ts'
import type { Message } from '../things/message.ts'
import type { PlanContext } from './context.ts'

export interface JointPlan {
  readonly joints: readonly Joint[]
  /** Litres of caulk by colour, whole job. */
  readonly caulk: Readonly<Record<'built-in' | 'wall', number>>
  readonly tape: number
  readonly passes: number
  readonly messages: readonly Message[]
}

/** Kind, passes, tape and caulk of every joint; numbers them bay by bay. */
export function joints(_context: PlanContext, _drafts: readonly JointDraft[]): JointPlan {
  return { joints: [], caulk: { 'built-in': 0, wall: 0 }, tape: 0, passes: 0, messages: [] }
}
