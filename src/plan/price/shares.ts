import * as asked from '../../job/chapters/price.ts'
import { formula, type Ref } from '../../things/formula.ts'
import { addMoney, type Money, minorUnits, roundMoney } from '../../units/money.ts'

const HUNDRED = 100
const PRACTICE = 'arithmetic; the share is common practice, no source'
const money = { gives: 'money', units: { share: 'percent' } } as const

/** Share of an amount, rounded once, half up. `percent` 5 = 5 %. */
export const shareOf = (amount: number, percent: number): Money => roundMoney((amount * percent) / HUNDRED)

interface Share {
  readonly amount: Money
  readonly share: number
}

/** A share of one amount, asked for in percent. */
const shareFormula = (id: string, plain: string, from: { readonly amount: Ref; readonly share: Ref }) =>
  formula<Share, Money>({ id, plain, source: PRACTICE, ...money, from }, ({ amount, share }) => shareOf(amount, share))

const MATERIALS = { id: 'price.materials' }

/** Abrasives, rags, bits, masks. */
export const sundriesShare = shareFormula('price.sundries', 'materials × sundries share', {
  amount: MATERIALS,
  share: asked.sundries,
})

/** Fetching and carrying what is bought. */
export const handlingShare = shareFormula('price.handling', 'materials × handling share', {
  amount: MATERIALS,
  share: asked.handling,
})

/** Rent, insurance, tools, the phone. */
export const overheadShare = shareFormula('price.overhead', 'direct cost × overhead share', {
  amount: { id: 'price.direct' },
  share: asked.overhead,
})

/** Old walls surprise. */
export const contingencyShare = formula(
  {
    id: 'price.contingency',
    plain: '(direct cost + overhead) × contingency share',
    source: PRACTICE,
    ...money,
    from: { share: asked.contingency, overhead: overheadShare },
  },
  (of: { readonly direct: Money; readonly overhead: Money; readonly share: number }): Money =>
    shareOf(addMoney(of.direct, of.overhead), of.share),
)

/** Tax on the price, once on the sum, never line by line. */
export const taxShare = shareFormula('price.tax', 'price before tax × tax', {
  amount: { id: 'price.before-tax' },
  share: asked.tax,
})

/** Profit on a cost: mark-up `cost × u`, margin `cost × g / (1 − g)`. Percent; a margin is below 100. */
export const profitOn = formula(
  {
    id: 'price.profit',
    plain: 'mark-up: cost × u; margin: cost × g / (1 − g)',
    source: PRACTICE,
    gives: 'money',
    from: { percent: asked.profit },
    units: { percent: 'percent' },
  },
  (of: { readonly cost: Money; readonly percent: number; readonly kind: 'markup' | 'margin' }): Money =>
    of.kind === 'markup' ? shareOf(of.cost, of.percent) : roundMoney((of.cost * of.percent) / (HUNDRED - of.percent)),
)

/** Payments by percent, each rounded once; the last takes what remains, so that nothing is lost. */
export const split = formula(
  {
    id: 'price.stage',
    plain: 'total × share of each stage; the last is what remains',
    source: 'arithmetic',
    gives: 'money',
    units: { percents: 'percent' },
  },
  ({ total, percents }: { readonly total: Money; readonly percents: readonly number[] }): readonly Money[] => {
    const early = percents.slice(0, -1).map((p) => shareOf(total, p))
    return percents.length === 0 ? [] : [...early, minorUnits(total - addMoney(...early))]
  },
)
