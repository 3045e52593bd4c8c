import type { Length } from '../../units/length.ts'
import { heightForDistance, squaredDistance, type WoodPiece, type WoodRule } from './wood-rule.ts'

/** Figures of a rule with one distance for shallow wood and a larger one for wood that stands out. */
export interface SteppedFigures {
  readonly least: Length
  /** A piece standing out no further than this is shallow. */
  readonly shallow: Length
  readonly deepLeast: Length
}

/**
 * Shallow wood stays `least` away all round, deeper wood `deepLeast`. Where the text speaks of the height above the opening
 * only, the distance is asked of the sides too: the safe reading.
 */
export function steppedRule(about: Pick<WoodRule, 'id' | 'says' | 'source'>, figures: SteppedFigures): WoodRule {
  const needed = (piece: WoodPiece) => (piece.standsOut > figures.shallow ? figures.deepLeast : figures.least)
  const reaches = (piece: WoodPiece, distance: Length) => squaredDistance(piece) >= BigInt(distance) ** 2n
  return {
    ...about,
    allows: (piece) => reaches(piece, needed(piece)),
    mostOut: (piece) => {
      if (!reaches(piece, figures.least)) return 'none'
      return reaches(piece, figures.deepLeast) ? 'any' : figures.shallow
    },
    leastAbove: (piece) => heightForDistance(needed(piece), piece.beside),
  }
}
