import type { UnitSystem } from '../units/show-length.ts'

/** Letter where tapes are in inches, A4 where they are in millimetres. */
export const paperSize = (units: UnitSystem): 'letter' | 'a4' => (units === 'inch' ? 'letter' : 'a4')

/** The unit, said once: `inches`, `millimetres`. */
export const unitWord = (units: UnitSystem): string => (units === 'inch' ? 'inches' : 'millimetres')

/** `in` or `mm`, for the head of a column. */
export const unitSign = (units: UnitSystem): string => (units === 'inch' ? 'in' : 'mm')
