import { inMetres, type Length } from './length.ts'

declare const areaBrand: unique symbol
/** Square metres, an ordinary number: areas feed purchases, never sizes. */
export type Area = number & { readonly [areaBrand]: 'm2' }

export const squareMetres = (value: number): Area => value as Area
export const areaOf = (length: Length, width: Length): Area => squareMetres(inMetres(length) * inMetres(width))
/** 1 sq ft = 0.09290304 m² exactly (16 CFR 500.19). */
export const SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304
