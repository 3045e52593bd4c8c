import type { Stick } from '../../things/material.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, nanometres, sum, ZERO } from '../../units/length.ts'

/** One stock length and what is cut from it, in order. */
export interface Bar {
  readonly pieces: readonly { readonly part: Part; readonly length: Length }[]
  readonly left: Length
}

/** Sticks cut from stock lengths. */
export interface StickPlan {
  readonly material: Stick
  readonly bars: readonly Bar[]
}

/**
 * Cuts parts from stock lengths: longest first, each from the first bar it still fits, one kerf after each piece.
 * Every part must fit the stock length.
 */
export const cutSticks = (material: Stick, parts: readonly Part[], kerf: Length): StickPlan => ({
  material,
  bars: parts
    .flatMap((part) => Array.from({ length: part.quantity }, () => part))
    .toSorted((a, b) => b.roughLength - a.roughLength)
    .reduce<readonly Bar[]>((bars, part) => withPiece(bars, part, material.stockLength, kerf), []),
})

function withPiece(bars: readonly Bar[], part: Part, stock: Length, kerf: Length): readonly Bar[] {
  const at = bars.findIndex((bar) => bar.left >= part.roughLength)
  const bar = bars[at] ?? { pieces: [], left: stock }
  const filled: Bar = {
    pieces: [...bar.pieces, { part, length: part.roughLength }],
    left: nanometres(Math.max(ZERO, less(bar.left, sum(part.roughLength, kerf)))),
  }
  return at < 0 ? [...bars, filled] : bars.with(at, filled)
}
