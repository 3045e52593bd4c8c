import { formula } from '../../things/formula.ts'
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
 * Which stock length each piece is cut from (1, 2, …): each from the first it still fits, one kerf after each piece.
 * Pieces longest first; every one must fit the stock length.
 */
export const stickOfEach = formula(
  {
    id: 'sticks.of-each',
    plain: 'longest piece first, each from the first stock length it still fits, a saw cut after each',
    source: 'common practice, no source',
    gives: 'count',
    from: { stockLength: { id: 'stick.length' } },
    units: { roughLengths: 'length' },
  },
  (of: {
    readonly roughLengths: readonly Length[]
    readonly stockLength: Length
    readonly kerf: Length
  }): readonly number[] =>
    of.roughLengths.reduce<{ readonly left: readonly Length[]; readonly bars: readonly number[] }>(
      ({ left, bars }, length) => {
        const fits = left.findIndex((l) => l >= length)
        const at = fits < 0 ? left.length : fits
        return {
          left: left.toSpliced(at, 1, afterCut(left[at] ?? of.stockLength, length, of.kerf)),
          bars: [...bars, at + 1],
        }
      },
      { left: [], bars: [] },
    ).bars,
)

/** Cuts parts from stock lengths. */
export function cutSticks(material: Stick, parts: readonly Part[], kerf: Length): StickPlan {
  const pieces = parts
    .flatMap((part) => Array.from({ length: part.quantity }, () => part))
    .toSorted((a, b) => b.roughLength - a.roughLength)
  const stockLength = material.stockLength
  const barOf = stickOfEach({ roughLengths: pieces.map((part) => part.roughLength), stockLength, kerf })
  const bars = Array.from({ length: Math.max(0, ...barOf) }, (_, bar) => {
    const own = pieces.filter((_, i) => barOf[i] === bar + 1)
    return {
      pieces: own.map((part) => ({ part, length: part.roughLength })),
      left: own.reduce((left, part) => afterCut(left, part.roughLength, kerf), stockLength),
    }
  })
  return { material, bars }
}

/** What is left of a length when a piece and its saw cut are taken off; the last cut may fall in the air. */
const afterCut = (left: Length, piece: Length, kerf: Length): Length =>
  nanometres(Math.max(ZERO, less(left, sum(piece, kerf))))
