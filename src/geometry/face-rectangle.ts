import { type Length, longest, nanometres, sum, ZERO } from '../units/length.ts'

/** A rectangle in the plane of a face: x from its left end, z up from the level line's zero. */
export interface FaceRectangle {
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
}

export const rightOf = (r: FaceRectangle): Length => sum(r.x, r.width)
export const topOf = (r: FaceRectangle): Length => sum(r.z, r.height)

/** Gaps between two rectangles sideways and upright; 0 on an axis where they overlap or touch. */
export const separationOf = (
  a: FaceRectangle,
  b: FaceRectangle,
): { readonly beside: Length; readonly above: Length } => ({
  beside: gapBetween([a.x, rightOf(a)], [b.x, rightOf(b)]),
  above: gapBetween([a.z, topOf(a)], [b.z, topOf(b)]),
})

type Span = readonly [from: Length, to: Length]
const gapBetween = (a: Span, b: Span): Length => longest(ZERO, nanometres(a[0] - b[1]), nanometres(b[0] - a[1]))
