import { type Length, longest, nanometres } from '../../units/length.ts'
import { heightForDistance, rootDown, squaredDistance, type WoodRule } from './wood-rule.ts'

/** Figures of a rule that lets wood stand out further the further away it is. */
export interface RisingFigures {
  /** No wood at all nearer than this. */
  readonly least: Length
  /** Up to here, this distance included, the projection is limited. */
  readonly within: Length
  /** Projection allowed for each unit of distance. */
  readonly outPerDistance: number
}

/** Ratios are printed in thousandths at most (0.125, 0.12): compared as whole numbers, never by dividing. */
const THOUSAND = 1000n

/**
 * The rule of a masonry fireplace: nothing nearer than `least`; up to `within` a piece at distance a may stand out p ≤ ratio × a;
 * further away no limit. a² = beside² + above². At exactly `within` the limit still holds (the stricter reading).
 */
export function risingRule(about: Pick<WoodRule, 'id' | 'says' | 'source'>, figures: RisingFigures): WoodRule {
  const ratio = BigInt(Math.round(figures.outPerDistance * Number(THOUSAND)))
  const least = BigInt(figures.least) ** 2n
  const within = BigInt(figures.within) ** 2n
  return {
    ...about,
    allows: (piece) => {
      const away = squaredDistance(piece)
      if (away < least) return false
      return away > within || BigInt(piece.standsOut) ** 2n * THOUSAND ** 2n <= ratio ** 2n * away
    },
    mostOut: (piece) => {
      const away = squaredDistance(piece)
      if (away < least) return 'none'
      return away > within ? 'any' : nanometres(Number(rootDown((ratio ** 2n * away) / THOUSAND ** 2n)))
    },
    leastAbove: (piece) => heightForDistance(leastDistance(figures, ratio, piece.standsOut), piece.beside),
  }
}

function leastDistance(figures: RisingFigures, ratio: bigint, standsOut: Length): Length {
  const needed = nanometres(Number((BigInt(standsOut) * THOUSAND + ratio - 1n) / ratio))
  if (needed > figures.within) return nanometres(figures.within + 1)
  return longest(needed, figures.least)
}
