declare const hoursBrand: unique symbol
/** Working hours, an ordinary number. */
export type Hours = number & { readonly [hoursBrand]: 'h' }

export const hours = (value: number): Hours => value as Hours
/** `6.8`: one decimal, as the papers print them. */
export const showHours = (value: Hours): string => (Math.round(value * 10) / 10).toFixed(1)
