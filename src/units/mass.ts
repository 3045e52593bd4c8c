declare const massBrand: unique symbol
/** Kilograms. */
export type Mass = number & { readonly [massBrand]: 'kg' }

export const kilograms = (value: number): Mass => value as Mass
/** 1 lb = 0.453 592 37 kg exactly (NIST SP 811, appendix B.8). */
export const KILOGRAMS_PER_POUND = 0.45359237
