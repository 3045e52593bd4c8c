declare const moneyBrand: unique symbol
/** Whole minor units (cents) of the job's currency. */
export type Money = number & { readonly [moneyBrand]: 'minor' }

export const MINOR_UNITS = 100

/** Whole minor units; throws RangeError on a fraction of a cent. */
export function minorUnits(value: number): Money {
  if (!Number.isSafeInteger(value)) throw new RangeError(`Money is counted in whole cents; this is ${value}.`)
  return (value === 0 ? 0 : value) as Money
}

/** Rounds a computed amount in minor units to whole ones, half away from zero (commercial rounding). */
export function roundMoney(value: number): Money {
  // A product of whole cents with a rate can miss .5 by a rounding error of the machine: 1e-6 of a cent is forgiven.
  const away = Math.floor(Math.abs(value) + 0.5 + 1e-6)
  return minorUnits(value < 0 ? -away : away)
}

export const addMoney = (...amounts: readonly Money[]): Money => minorUnits(amounts.reduce<number>((t, m) => t + m, 0))

/** `1,892.10`: grouped in threes, two decimals, no sign of a currency (it is said once in the job). */
export function showMoney(amount: Money): string {
  const whole = Math.floor(Math.abs(amount) / MINOR_UNITS)
  const cents = String(Math.abs(amount) % MINOR_UNITS).padStart(2, '0')
  return `${amount < 0 ? '-' : ''}${String(whole).replace(/\B(?=(\d{3})+$)/g, ',')}.${cents}`
}
