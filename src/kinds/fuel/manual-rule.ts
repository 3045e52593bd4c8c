import { type Length, ZERO } from '../../units/length.ts'
import type { WoodPiece, WoodRule } from './wood-rule.ts'

/** What an appliance's manual keeps clear, and how far wood may stand out beyond that. */
export interface ManualFigures {
  readonly above: Length
  readonly sides: Length
  readonly standsOut: Length
}

/** A manual's clearances: no wood inside the rectangle they draw round the opening, none standing out further than the manual says. */
export function manualRule(figures: ManualFigures): WoodRule {
  const outside = (piece: WoodPiece) => piece.above >= figures.above || piece.beside >= figures.sides
  return {
    id: 'manual',
    says: 'the appliance’s manual',
    source: 'the appliance’s manual, as entered',
    allows: (piece) => outside(piece) && piece.standsOut <= figures.standsOut,
    mostOut: (piece) => (outside(piece) ? figures.standsOut : 'none'),
    leastAbove: (piece) => {
      if (piece.standsOut > figures.standsOut) return undefined
      return piece.beside >= figures.sides ? ZERO : figures.above
    },
  }
}
