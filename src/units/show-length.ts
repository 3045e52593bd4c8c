import { reducedFraction } from './fraction.ts'
import { type Length, NM_PER_INCH, NM_PER_MM } from './length.ts'

export type UnitSystem = 'inch' | 'metric'

/** Finest fraction of an inch ever printed. */
const FINEST = 64

/**
 * A length as the trade writes it, without its unit: `41 1/4` in an inch job, `1048` in a metric one.
 * Prints to the nearest 1/`denominator` in (reduced, carried) or the nearest 0.1 mm; a metric figure has no trailing zero.
 */
export function showLength(length: Length, units: UnitSystem, denominator: number = FINEST): string {
  return units === 'metric' ? showMillimetres(length) : showInches(length, denominator)
}

/** The length with its unit: `41 1/4 in`, `1048 mm`. */
export const showLengthWithUnit = (length: Length, units: UnitSystem, denominator: number = FINEST): string =>
  `${showLength(length, units, denominator)} ${units === 'metric' ? 'mm' : 'in'}`

function showMillimetres(length: Length): string {
  const tenths = Math.round((length / NM_PER_MM) * 10)
  return String(tenths / 10)
}

function showInches(length: Length, denominator: number): string {
  const parts = Math.round((Math.abs(length) * denominator) / NM_PER_INCH)
  const whole = Math.floor(parts / denominator)
  const [top, bottom] = reducedFraction(parts - whole * denominator, denominator)
  const sign = length < 0 && parts > 0 ? '-' : ''
  if (top === 0) return `${sign}${whole}`
  return whole === 0 ? `${sign}${top}/${bottom}` : `${sign}${whole} ${top}/${bottom}`
}
