declare const volumeBrand: unique symbol
/** Litres. */
export type Volume = number & { readonly [volumeBrand]: 'l' }

export const litres = (value: number): Volume => value as Volume
/** US gallon = 231 cu in = 3.785 411 784 l (NIST SP 811, appendix B.8). */
export const LITRES_PER_US_GALLON = 3.785411784
/** US fluid ounce = 1/128 US gallon. */
export const LITRES_PER_US_FLUID_OUNCE = LITRES_PER_US_GALLON / 128
