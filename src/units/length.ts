declare const lengthBrand: unique symbol

/** A length in whole nanometres. 1/64 in = 396 875 nm, 1 mm = 1 000 000 nm, so tape and rule readings are exact. */
export type Length = number & { readonly [lengthBrand]: 'nm' }

export const NM_PER_INCH = 25_400_000
export const NM_PER_MM = 1_000_000

/** Brands a whole number of nanometres. Throws RangeError when it is not a safe whole number. */
export function nanometres(value: number): Length {
  if (!Number.isSafeInteger(value)) throw new RangeError(`A length is a whole number of nanometres; this is ${value}.`)
  return (value === 0 ? 0 : value) as Length
}

/** Inches, with an optional fraction: `inches(41, 1, 4)` = 41 1/4 in. Rounded once, to the nearest nanometre. */
export const inches = (whole: number, numerator = 0, denominator = 1): Length =>
  nanometres(Math.round((whole + numerator / denominator) * NM_PER_INCH))

/** Millimetres: `millimetres(18)` = 18 mm. Rounded once, to the nearest nanometre. */
export const millimetres = (value: number): Length => nanometres(Math.round(value * NM_PER_MM))

export const ZERO: Length = nanometres(0)

/** Sum of lengths: `sum(a, b, c)` = a + b + c. */
export const sum = (...lengths: readonly Length[]): Length =>
  nanometres(lengths.reduce<number>((total, l) => total + l, 0))

/** A length less others: `less(a, b, c)` = a − b − c. */
export const less = (from: Length, ...lengths: readonly Length[]): Length =>
  nanometres(lengths.reduce<number>((rest, l) => rest - l, from))

/** A length times a plain number, to the nearest nanometre. */
export const times = (length: Length, factor: number): Length => nanometres(Math.round(length * factor))

/** A length divided by a plain number, to the nearest nanometre. */
export const over = (length: Length, divisor: number): Length => nanometres(Math.round(length / divisor))

/** Plain ratio of two lengths. */
export const ratio = (a: Length, b: Length): number => a / b

export const longest = (first: Length, ...rest: readonly Length[]): Length => nanometres(Math.max(first, ...rest))

export const shortest = (first: Length, ...rest: readonly Length[]): Length => nanometres(Math.min(first, ...rest))

/** Absolute value. */
export const size = (length: Length): Length => nanometres(Math.abs(length))

export const negated = (length: Length): Length => nanometres(-length)

/** Metres, for areas, masses and beams; never for sizes of parts. */
export const inMetres = (length: Length): number => length / 1e9

/** Millimetres as a plain number, for drawing on paper. */
export const inMillimetres = (length: Length): number => length / NM_PER_MM
