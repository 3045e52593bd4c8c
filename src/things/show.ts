import { type Length, NM_PER_INCH } from '../units/length.ts'
import { showLength, showLengthWithUnit, type UnitSystem } from '../units/show-length.ts'

/** Writes values as this job writes them. Messages, task texts and documents all use it; it never rounds a size. */
export interface Show {
  readonly units: UnitSystem
  readonly currency: string
  /** `41 1/4` */
  readonly length: (l: Length) => string
  /** `41 1/4 in` */
  readonly withUnit: (l: Length) => string
  /** Mass in the job's units: `35 lb (15.9 kg)` in an inch job, `15.9 kg` in a metric one. */
  readonly mass: (kg: number) => string
  /** Area in the job's units: `42 sq ft` or `3.9 m²`. */
  readonly area: (m2: number) => string
  /** Volume in the job's units: `4.2 cu ft` or `120 l`. */
  readonly volume: (litres: number) => string
}

const POUNDS_PER_KILOGRAM = 1 / 0.45359237
const CUBIC_FEET_PER_LITRE = 1 / 28.316846592
const SQUARE_FEET_PER_SQUARE_METRE = 1 / 0.09290304

export function showIn(units: UnitSystem, currency: string): Show {
  return {
    units,
    currency,
    length: (l) => showLength(l, units),
    withUnit: (l) => showLengthWithUnit(l, units),
    mass: (kg) =>
      units === 'inch' ? `${Math.round(kg * POUNDS_PER_KILOGRAM)} lb (${significant(kg)} kg)` : `${significant(kg)} kg`,
    area: (m2) =>
      units === 'inch' ? `${significant(m2 * SQUARE_FEET_PER_SQUARE_METRE)} sq ft` : `${significant(m2)} m²`,
    volume: (l) => (units === 'inch' ? `${significant(l * CUBIC_FEET_PER_LITRE)} cu ft` : `${significant(l)} l`),
  }
}

/** Three significant figures, without an exponent. */
export const significant = (value: number): string => String(Number(value.toPrecision(3)))

/** `41.127`: three decimals of an inch (or of a millimetre), for the where-from key only. */
export const showExact = (l: Length, units: UnitSystem): string =>
  String(Math.round((l / (units === 'inch' ? NM_PER_INCH : 1e6)) * 1000) / 1000)
