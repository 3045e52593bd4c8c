import { type Length, longest, shortest } from '../units/length.ts'

/** A rectangle: the end of a piece, or a door. */
export interface Rectangle {
  readonly width: Length
  readonly height: Length
}

/**
 * How a flat rectangle goes through a rectangular opening: as it stands (or turned a quarter), tilted, or not at all.
 * Tilted: with p ≥ q its sides and a ≥ b the opening's, it fits when p > a, q ≤ b and
 * `b ≥ (2pqa + (p² − q²)·√(p² + q² − a²)) / (p² + q²)` (W. B. Carver, American Mathematical Monthly 64, 1957; from memory).
 */
export function throughOpening(piece: Rectangle, opening: Rectangle): 'straight' | 'tilted' | 'not' {
  const [p, q] = [longest(piece.width, piece.height), shortest(piece.width, piece.height)]
  const [a, b] = [longest(opening.width, opening.height), shortest(opening.width, opening.height)]
  if (p <= a && q <= b) return 'straight'
  if (q > b || p <= a) return 'not'
  const squares = p * p + q * q
  const needed = (2 * p * q * a + (p * p - q * q) * Math.sqrt(squares - a * a)) / squares
  return b >= needed ? 'tilted' : 'not'
}
