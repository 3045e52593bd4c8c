import { formula } from '../../things/formula.ts'
import { type Length, longest, shortest } from '../../units/length.ts'

/** Depth of a bead without backing: as deep as the gap is wide, at least `beadLeast`, at most `beadMost`. Lengths. */
export const beadDepth = formula(
  {
    id: 'joints.bead-depth',
    plain: 'the gap, at least the least bead depth, at most the most',
    source: 'common practice, no source',
    from: { beadLeast: { id: 'bead.least' }, beadMost: { id: 'bead.most' } },
  },
  (given: { readonly gap: Length; readonly beadLeast: Length; readonly beadMost: Length }): Length =>
    shortest(longest(given.gap, given.beadLeast), given.beadMost),
)
