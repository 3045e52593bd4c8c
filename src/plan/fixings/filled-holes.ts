import type { FixingLine } from './fixing-line.ts'

/** Holes to fill: every trim pin leaves one; those of a back or a drawer box are not seen. */
export const filledHoles = (lines: readonly FixingLine[]): number =>
  lines.filter((l) => l.id.startsWith('pin.') && !UNSEEN.includes(l.id)).reduce((n, l) => n + l.count, 0)

const UNSEEN: readonly string[] = ['pin.back', 'pin.drawer']
