import { less, shortest, times } from '../../units/length.ts'
import type { FrontKind, LeafSize } from './contract.ts'
import { onStile } from './front-sizes.ts'
import { blankOf } from './slab.ts'

const fieldOf = ({ width, height, frame }: LeafSize) =>
  shortest(less(width, times(frame, 2)), less(height, times(frame, 2)))

/** One blank with a field routed into its face; the rim left standing is as wide as a stile. */
export const routedFront = {
  id: 'routed',
  says: 'routed from one blank',
  door: 'door',
  rate: 'leaf-routed',
  asksFrame: false,
  pieces: (leaf) => [blankOf(leaf, [{ says: 'field routed this far in from all four edges:', length: leaf.frame }])],
  field: fieldOf,
  handleIn: ({ frame }) => onStile({ stile: frame }),
} as const satisfies FrontKind
