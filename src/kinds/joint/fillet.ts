import { beadDepth } from './bead-depth.ts'
import type { JointKind } from './contract.ts'

/** A scribed edge: only the small tooled corner is caulked. */
export const fillet: JointKind = {
  id: 'fillet',
  says: 'small fillet',
  widest: (limits) => limits.filletOnly,
  depth: (gap, { beadLeast, beadMost }) => beadDepth({ gap, beadLeast, beadMost }),
  tape: 'plain',
  backed: false,
}
