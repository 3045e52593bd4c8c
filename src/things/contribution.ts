import type { JointDraft } from './joint.ts'
import type { Message } from './message.ts'
import type { Part } from './part.ts'

/** What each step of the plan adds to the whole, besides its own result. */
export interface Contribution {
  readonly parts: readonly Part[]
  readonly joints: readonly JointDraft[]
  readonly messages: readonly Message[]
}

export const NOTHING: Contribution = { parts: [], joints: [], messages: [] }

/** All contributions in the order given. */
export const merged = (...all: readonly Contribution[]): Contribution => ({
  parts: all.flatMap((c) => c.parts),
  joints: all.flatMap((c) => c.joints),
  messages: all.flatMap((c) => c.messages),
})
