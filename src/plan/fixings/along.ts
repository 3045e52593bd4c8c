import { formula } from '../../things/formula.ts'
import type { Length } from '../../units/length.ts'

/** Rows shorter than this many end distances hold one fastener in the middle. */
const SHORT_ROW = 3

/**
 * Fasteners in a row: both ends `end` in, no two more than `pitch` apart: max(2, 1 + ⌈(length − 2·end) / pitch⌉);
 * one when the row is shorter than three end distances. Lengths.
 */
export const along = formula(
  {
    id: 'fixings.along',
    plain:
      '1 + (length − twice the end distance) / pitch, up to a whole one, at least 2; 1 when shorter than 3 end distances',
    source: 'common practice, no source',
    gives: 'count',
    units: { length: 'length', end: 'length', pitch: 'length' },
  },
  ({ length, end, pitch }: { readonly length: Length; readonly end: Length; readonly pitch: Length }): number =>
    length < SHORT_ROW * end ? 1 : Math.max(2, 1 + Math.ceil((length - 2 * end) / pitch)),
)
