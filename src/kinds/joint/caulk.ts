import { beadDepth } from './bead-depth.ts'
import type { JointKind } from './contract.ts'

/** A gap filled with caulk from its own depth. */
export const caulk: JointKind = {
  id: 'caulk',
  says: 'caulk',
  widest: (limits) => limits.caulkMost,
  depth: (gap, { beadLeast, beadMost }) => beadDepth({ gap, beadLeast, beadMost }),
  tape: 'plain',
  backed: false,
}
