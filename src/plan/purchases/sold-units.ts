import { formula, within } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { UnitSystem } from '../../units/show-length.ts'
import { LITRES_PER_US_FLUID_OUNCE } from '../../units/volume.ts'
import { NEEDS } from './packs.ts'

/** 1 yd = 3 ft = 0.9144 m exactly (16 CFR 500.19: 1 ft = 30.48 cm). */
const METRES_PER_YARD = 0.9144

/** How shops of an inch market print what is counted in metric: the unit, and how much of ours is in one of theirs. */
const INCH_MARKET: Readonly<Record<string, { readonly unit: string; readonly holds: number }>> = {
  m: { unit: 'yd', holds: METRES_PER_YARD },
  l: { unit: 'fl oz', holds: LITRES_PER_US_FLUID_OUNCE },
}

/** The need and the pack in the units printed on the pack; counts of a millionth are the machine's, not the shop's. */
export function inSoldUnits(purchase: Purchase, units: UnitSystem): Purchase {
  const market = units === 'inch' ? INCH_MARKET[purchase.unit] : undefined
  const { unit, holds } = market ?? { unit: purchase.unit, holds: 1 }
  const need = within(purchase.id, () => needInUnits({ need: purchase.need, holds, unit }))
  const packSize = within(purchase.id, () => packInUnits({ packSize: purchase.packSize, holds, unit }))
  return { ...purchase, unit, need, packSize }
}

/** The need in the units of the pack. */
export const needInUnits = formula(
  {
    id: 'purchase.need',
    plain: 'need in metric / what one of the unit on the pack is in metric',
    source: '16 CFR 500.19 for yards and US fluid ounces',
    gives: 'number',
    from: { need: NEEDS },
    units: { need: 'number', holds: 'number' },
  },
  (of: { readonly need: number; readonly holds: number; readonly unit: string }): number => tidy(of.need / of.holds),
)

/** What a pack holds, in the units printed on it; two decimals at most: 10.1 fl oz, 60 yd. */
export const packInUnits = formula(
  {
    id: 'purchase.pack-size',
    plain: 'pack in metric / what one of the unit on the pack is in metric',
    source: '16 CFR 500.19 for yards and US fluid ounces',
    gives: 'number',
    units: { packSize: 'number', holds: 'number' },
  },
  (of: { readonly packSize: number; readonly holds: number; readonly unit: string }): number =>
    tidyPack(of.packSize / of.holds),
)

const tidy = (value: number): number => Math.round(value * 1e6) / 1e6
const tidyPack = (value: number): number => Math.round(value * 100) / 100
