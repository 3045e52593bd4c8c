import type { Length } from '../units/length.ts'
import type { Edge } from './edge.ts'

/** The edge through a value at each station; stations are put in rising order, each once. */
export const edgeThrough = (stations: readonly Length[], valueAt: (at: Length) => Length): Edge =>
  rising(stations).map((at) => ({ at, v: valueAt(at) }))

/** Each length once, from the least to the greatest. */
export const rising = (lengths: readonly Length[]): readonly Length[] => [...new Set(lengths)].sort((a, b) => a - b)
