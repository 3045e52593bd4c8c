import { type Length, less, over, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'
import type { Leaf } from './fronts.ts'
import type { LeafMake } from './leaves.ts'

/**
 * Holes of a handle. Base leaf: the nearest hole a hand below the leaf's top; tall leaf: the handle's centre at a
 * height above the floor. `top` = height of the leaf's upper edge.
 */
export function handleHoles(
  context: PlanContext,
  make: LeafMake,
  leaf: { readonly run: Run; readonly top: Length },
): Leaf['handleHoles'] {
  const { figures } = context
  if (make.handle.kind === 'none') return []
  const fromHandleEdge = make.kind.handleIn({ frame: make.frame, figures })
  const nearest = figures.length('handle.base-down')
  const centre = less(leaf.top, figures.length('handle.tall-height'))
  if (make.handle.kind === 'knob') return [{ fromHandleEdge, fromTop: leaf.run.kind === 'base' ? nearest : centre }]
  const { spacing } = make.handle
  const first = leaf.run.kind === 'base' ? nearest : less(centre, over(spacing, 2))
  return [first, sum(first, spacing)].map((fromTop) => ({ fromHandleEdge, fromTop }))
}
