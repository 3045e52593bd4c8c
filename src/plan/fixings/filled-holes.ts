import type { FixingLine } from './fixing-line.ts'

/** Holes to fill: every trim pin leaves one; the pins of a back are not seen. */
export const filledHoles = (lines: readonly FixingLine[]): number =>
  lines.filter((l) => l.id.startsWith('pin.') && l.id !== 'pin.back').reduce((n, l) => n + l.count, 0)
