import { formula } from '../../things/formula.ts'
import { type Length, longest, shortest } from '../../units/length.ts'
import type { GapLimits } from './contract.ts'

/** Depth of a bead without backing: as deep as the gap is wide, at least `beadLeast`, at most `beadMost`. Lengths. */
export const beadDepth = formula(
  {
    id: 'joints.bead-depth',
    plain: 'the gap, at least the least bead depth, at most the most',
    source: 'common practice, no source',
  },
  ({ gap, limits }: { readonly gap: Length; readonly limits: GapLimits }): Length =>
    shortest(longest(gap, limits.beadLeast), limits.beadMost),
)
