import type { Part } from '../../things/part.ts'
import { type Length, longest, shortest } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'

/** Larger end of a tapering piece as its length, the other end in words. */
export function tapered(
  { show }: PlanContext,
  ends: { readonly back: Length; readonly front: Length },
): Pick<Part, 'length'> & Partial<Pick<Part, 'taper'>> {
  const length = longest(ends.back, ends.front)
  if (ends.back === ends.front) return { length }
  const other = ends.back < ends.front ? 'back' : 'front'
  return { length, taper: `${other} ${show.length(shortest(ends.back, ends.front))}` }
}
