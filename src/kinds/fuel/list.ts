import { electricFire } from './electric.ts'
import { gas } from './gas.ts'
import { noFire } from './none.ts'
import { openFire } from './open-fire.ts'
import { stove } from './stove.ts'

/** Everything that may burn in the opening. Add one = one file + one line here. */
export const FUELS = { 'open-fire': openFire, stove, gas, electric: electricFire, none: noFire } as const
export type FuelId = keyof typeof FUELS
