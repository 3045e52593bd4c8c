import { type Length, nanometres } from '../units/length.ts'

/** Two ways of these widths that meet at a right angle, seen from above. */
export interface Corner {
  readonly first: Length
  readonly second: Length
}

/** Turned by so many degrees at a time to find the narrowest place, then closer and closer round it. */
const STEPS = 180
const CLOSER = 60
const QUARTER = Math.PI / 2

/**
 * Longest rigid rectangle of a width that goes round a right-angled corner, down to the nanometre; 0 when it is wider than
 * one of the ways. With its long side touching both outer walls at an angle a to the first way's wall, the inner corner must
 * stay beyond its other side: `length ≤ (first · cos a + second · sin a − width) / (sin a · cos a)` for every a.
 * For a bare rod (width 0) it is `(first^⅔ + second^⅔)^(3/2)`: the ladder in a corridor, plane geometry.
 */
export function longestRoundCorner({ first, second }: Corner, width: Length): Length {
  if (width >= Math.min(first, second)) return nanometres(0)
  const room = (a: number): number => (first * Math.cos(a) + second * Math.sin(a) - width) / (Math.sin(a) * Math.cos(a))
  const step = QUARTER / STEPS
  const angles = Array.from({ length: STEPS - 1 }, (_, i) => (i + 1) * step)
  const narrowest = angles.reduce((best, a) => (room(a) < room(best) ? a : best), QUARTER / 2)
  return nanometres(Math.floor(leastBetween(room, narrowest - step, narrowest + step)))
}

/** Least value of a function that falls and then rises between two places, by thirds. */
function leastBetween(value: (at: number) => number, from: number, to: number): number {
  const shrink = (low: number, high: number, left: number): number => {
    if (left === 0) return value((low + high) / 2)
    const third = (high - low) / 3
    return value(low + third) < value(high - third)
      ? shrink(low, high - third, left - 1)
      : shrink(low + third, high, left - 1)
  }
  return shrink(Math.max(from, Number.EPSILON), Math.min(to, QUARTER - Number.EPSILON), CLOSER)
}
