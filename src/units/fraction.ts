/** A fraction in lowest terms: `reducedFraction(24, 64)` = `[3, 8]`; `[0, 1]` when the numerator is 0. */
export function reducedFraction(numerator: number, denominator: number): readonly [number, number] {
  const divisor = greatestCommonDivisor(numerator, denominator)
  return [numerator / divisor, denominator / divisor]
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
