import { MINOR_UNITS, type Money } from '../units/money.ts'
import type { BookCell, CellFormat } from './book.ts'

/** A money figure that stands by itself. */
export const moneyCell = (amount: Money): BookCell => ({ value: amount / MINOR_UNITS, format: 'money' })

/**
 * A money cell with its formula. `reckoned` is what the formula gives, worked out beside it; where the plan's figure is
 * another (a rounding the formula cannot follow), the plan's figure stands alone: no cell ever shows one and recalculates to another.
 */
export function liveMoney(
  planned: Money,
  live: { readonly formula: string; readonly reckoned: number; readonly bold?: boolean },
): BookCell {
  if (Math.round(live.reckoned * MINOR_UNITS) !== planned) return moneyCell(planned)
  return {
    formula: live.formula,
    result: planned / MINOR_UNITS,
    format: 'money',
    ...(live.bold === true ? { bold: true } : {}),
  }
}

/** A plain number with its formula, under the same rule. */
export const liveNumber = (planned: number, formula: string, reckoned: number, format: CellFormat): BookCell =>
  planned === reckoned ? { formula, result: planned, format } : { value: planned, format }

/** ROUND of office programs: half away from zero, at `digits`. */
export function roundAsOffice(value: number, digits: number): number {
  const factor = 10 ** digits
  const away = Math.floor(Math.abs(value) * factor + 0.5 + 1e-9) / factor
  return value < 0 ? -away : away
}
