import { formula } from '../../things/formula.ts'
import { type Length, longest, over } from '../../units/length.ts'
import type { GapLimits, JointKind } from './contract.ts'

/** Depth of a bead over backer rod: half the gap, at least `beadLeast`. Lengths. */
export const backedDepth = formula(
  {
    id: 'joints.backed-depth',
    plain: 'half the gap, at least the least bead depth',
    source: 'common practice, no source',
  },
  ({ gap, limits }: { readonly gap: Length; readonly limits: GapLimits }): Length =>
    longest(over(gap, 2), limits.beadLeast),
)

/** A gap too deep to fill: backer rod first, then a bead over it. */
export const backedCaulk: JointKind = {
  id: 'backed-caulk',
  says: 'backer rod, then caulk',
  widest: (limits) => limits.rodMost,
  depth: (gap, limits) => backedDepth({ gap, limits }),
  tape: 'plain',
  backed: true,
}
