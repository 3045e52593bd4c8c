import { formula } from '../../things/formula.ts'
import { type Length, longest, over } from '../../units/length.ts'
import type { JointKind } from './contract.ts'

/** Depth of a bead over backer rod: half the gap, at least `beadLeast`. Lengths. */
export const backedDepth = formula(
  {
    id: 'joints.backed-depth',
    plain: 'half the gap, at least the least bead depth',
    source: 'common practice, no source',
    from: { beadLeast: { id: 'bead.least' } },
  },
  (given: { readonly gap: Length; readonly beadLeast: Length }): Length => longest(over(given.gap, 2), given.beadLeast),
)

/** A gap too deep to fill: backer rod first, then a bead over it. */
export const backedCaulk: JointKind = {
  id: 'backed-caulk',
  says: 'backer rod, then caulk',
  widest: (limits) => limits.rodMost,
  depth: (gap, { beadLeast }) => backedDepth({ gap, beadLeast }),
  tape: 'plain',
  backed: true,
}
