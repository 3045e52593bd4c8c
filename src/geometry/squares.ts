import { type Length, nanometres } from '../units/length.ts'

const squared = (l: Length): bigint => BigInt(l) * BigInt(l)

/** Whether a rectangle `a` × `b` passes a straight space of `room` by its diagonal: a² + b² ≤ room², exact (nm² passes 2^53). */
export const diagonalFits = (a: Length, b: Length, room: Length): boolean =>
  room > 0 && squared(a) + squared(b) <= squared(room)

/** The longest side whose rectangle with `other` still passes `room` by its diagonal, to the nm; 0 when none does. */
export function longestWithDiagonal(other: Length, room: Length): Length {
  const rest = squared(room) - squared(other)
  return rest <= 0n || room <= 0 ? nanometres(0) : nanometres(Number(wholeRoot(rest)))
}

/** Largest whole number whose square is not over `n` (Newton's steps from above). */
function wholeRoot(n: bigint): bigint {
  let root = 1n << BigInt(Math.ceil(n.toString(2).length / 2))
  for (;;) {
    const next = (root + n / root) / 2n
    if (next >= root) return root
    root = next
  }
}
