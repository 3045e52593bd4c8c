/** A piece of paper that words stand on, in points. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const TOUCH = 0.01

export const overlaps = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - TOUCH &&
  b.x < a.x + a.width - TOUCH &&
  a.y < b.y + b.height - TOUCH &&
  b.y < a.y + a.height - TOUCH

/** How far words are moved aside at most, in steps of a point: further away nobody knows whose they are. */
const FURTHEST = 60

/** The box moved the least way along one axis that takes it clear of the others; where it was when no way is short enough. */
export function shiftedClear(box: Box, taken: readonly Box[], axis: 'x' | 'y'): Box {
  for (let shift = 0; shift <= FURTHEST; shift += 1) {
    for (const by of [-shift, shift]) {
      const moved = { ...box, [axis]: box[axis] + by }
      if (!taken.some((other) => overlaps(moved, other))) return moved
    }
  }
  return box
}
