import { formula, type Ref } from '../../things/formula.ts'
import { type Money, roundMoney } from '../../units/money.ts'

/** A need a hair over a pack is that pack: needs are sums of machine numbers. */
const HAIR = 1e-9

/** Formulas a need comes from: counted, summed over joints, in tins, or pieces of hardware. */
export const NEEDS: readonly Ref[] = [
  'panels.sheets',
  'sticks.of-each',
  'joints.caulk-in-all',
  'joints.tape-in-all',
  'joints.rod-in-all',
  'purchase.litres-in-tins',
  'hardware.need',
].map((id) => ({ id }))

/** Whole packs that hold the need. `unit` is what both are counted in. */
export const packsFor = formula(
  {
    id: 'purchase.packs',
    plain: 'need / what a pack holds, up to whole packs',
    source: 'arithmetic',
    gives: 'count',
    from: { need: NEEDS },
    units: { need: 'number', packSize: 'number' },
  },
  (of: { readonly need: number; readonly packSize: number; readonly unit: string }): number =>
    Math.max(0, Math.ceil(of.need / of.packSize - HAIR)),
)

/** Packs bought: those of the need, and one more where running out would stop the work. */
export const packsWithSpare = formula(
  {
    id: 'purchase.with-spare.packs',
    plain: 'packs that hold the need + 1 when they are more than need no spare',
    source: 'common practice, no source',
    gives: 'count',
    from: { packs: packsFor },
    units: { noSpareUpTo: 'count' },
  },
  (of: { readonly packs: number; readonly noSpareUpTo: number }): number =>
    of.packs > of.noSpareUpTo ? of.packs + 1 : of.packs,
)

/**
 * Price of one pack: the figures of the price list for it, each under the last word of its id (`caulk` for `price.caulk`),
 * times what the pack holds of what the price is for. Rounded once, half up.
 */
export const packPrice = formula<{ readonly holds?: number } & Readonly<Record<string, number>>, Money>(
  {
    id: 'purchase.price-each',
    plain: 'price in the list × what a pack holds of it',
    source: 'arithmetic; the price as its row says',
    gives: 'money',
    units: { holds: 'number' },
  },
  (factors) => roundMoney(Object.values(factors).reduce((product, factor) => product * factor, 1)),
)
