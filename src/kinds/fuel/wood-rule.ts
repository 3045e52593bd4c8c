import { type Length, nanometres } from '../../units/length.ts'

/** A piece of wood seen from an opening, in the plane of the face: its separations (0 where it overlaps) and how far it stands out. */
export interface WoodPiece {
  /** To the side of the opening. */
  readonly beside: Length
  /** Above the opening. */
  readonly above: Length
  readonly standsOut: Length
}

/** One printed rule, or one appliance's manual, about wood near an opening. */
export interface WoodRule {
  readonly id: string
  readonly says: string
  readonly source: string
  readonly allows: (piece: WoodPiece) => boolean
  /** The furthest a piece at this place may stand out; `any` = no limit from this rule, `none` = no wood here at all. */
  readonly mostOut: (piece: WoodPiece) => Length | 'any' | 'none'
  /** The least height over the opening at which the piece is allowed, at its own place to the side; undefined = no height helps. */
  readonly leastAbove: (piece: WoodPiece) => Length | undefined
}

/** Distance of a piece from the opening, squared: exact, in nm². */
export const squaredDistance = (piece: WoodPiece): bigint => BigInt(piece.beside) ** 2n + BigInt(piece.above) ** 2n

/** Least height so that the distance is at least `distance`, with the piece's separation to the side. */
export function heightForDistance(distance: Length, beside: Length): Length {
  const rest = BigInt(distance) ** 2n - BigInt(beside) ** 2n
  return rest <= 0n ? nanometres(0) : nanometres(Number(rootUp(rest)))
}

/** Largest whole root not over the value: exact where a plain square root is not. */
export function rootDown(value: bigint): bigint {
  if (value < 2n) return value
  let guess = BigInt(Math.floor(Math.sqrt(Number(value))))
  while (guess * guess > value) guess -= 1n
  while ((guess + 1n) * (guess + 1n) <= value) guess += 1n
  return guess
}

const rootUp = (value: bigint): bigint => {
  const down = rootDown(value)
  return down * down === value ? down : down + 1n
}
