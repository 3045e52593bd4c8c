import { type Length, nanometres } from '../units/length.ts'

/** One surveyed point of a wall edge: at height `z` (or, for a floor or ceiling, at `x`) the edge stands at `v`. */
export interface Knot {
  readonly at: Length
  readonly v: Length
}

/** A line straight between its knots (at least one, `at` rising); beyond the ends the nearest value is held. */
export type Edge = readonly Knot[]

/** Value of the edge at `at`: linear between knots, rounded once to the nearest nanometre. Throws on an edge without knots. */
export function edgeAt(edge: Edge, at: Length): Length {
  const first = edge[0]
  if (first === undefined) throw new RangeError('An edge has at least one knot.')
  let below = first
  for (const knot of edge) {
    if (knot.at >= at) return at <= first.at ? first.v : between(below, knot, at)
    below = knot
  }
  return below.v
}

function between(a: Knot, b: Knot, at: Length): Length {
  if (a.at === b.at) return b.v
  // Exact product in BigInt: nm × nm passes 2^53.
  const top = BigInt(b.v - a.v) * BigInt(at - a.at)
  const bottom = BigInt(b.at - a.at)
  return nanometres(a.v + Number(roundedQuotient(top, bottom)))
}

/** Nearest whole quotient, half away from zero, so that a mirrored wall rounds to mirrored figures. `bottom` > 0. */
export function roundedQuotient(top: bigint, bottom: bigint): bigint {
  const doubled = top < 0n ? -top * 2n + bottom : top * 2n + bottom
  const away = doubled / (bottom * 2n)
  return top < 0n ? -away : away
}

/** The `at` of each knot strictly between `from` and `to`, with both ends: where extremes of the edge can lie. */
export const stationsBetween = (edge: Edge, from: Length, to: Length): readonly Length[] => [
  from,
  ...edge.map((k) => k.at).filter((at) => at > from && at < to),
  to,
]
