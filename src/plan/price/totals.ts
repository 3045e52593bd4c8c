import { formula } from '../../things/formula.ts'
import { addMoney, MINOR_UNITS, type Money, minorUnits, roundMoney } from '../../units/money.ts'
import type { PlanContext } from '../context.ts'
import type { CostLine } from './cost-line.ts'
import type { Rates } from './rates.ts'

export const sumOf = (lines: readonly CostLine[]): Money => addMoney(...lines.map((l) => l.amount))

const HUNDRED = 100
/** Share of an amount, rounded once, half up. `percent` 5 = 5 %. */
export const shareOf = (amount: number, percent: number): Money => roundMoney((amount * percent) / HUNDRED)

interface CostSums {
  readonly labour: Money
  readonly materials: Money
  readonly boughtIn: Money
  readonly travel: Money
  readonly rates: Pick<Rates, 'sundries' | 'handling' | 'overhead' | 'contingency'>
}

/**
 * Direct cost = labour + materials + handling + bought-in + sundries + travel; overhead on the direct cost;
 * contingency on both; cost = their sum. Whole cents.
 */
export const costed = formula(
  {
    id: 'price.cost',
    plain:
      'direct = labour + materials × (1 + handling + sundries) + bought-in + travel; overhead on direct; contingency on both',
    source: 'arithmetic; shares are common practice, no source',
  },
  ({ labour, materials, boughtIn, travel, rates }: CostSums) => {
    const sundries = shareOf(materials, rates.sundries)
    const handling = shareOf(materials, rates.handling)
    const direct = addMoney(labour, materials, handling, boughtIn, sundries, travel)
    const overhead = shareOf(direct, rates.overhead)
    const contingency = shareOf(addMoney(direct, overhead), rates.contingency)
    return { sundries, handling, direct, overhead, contingency, cost: addMoney(direct, overhead, contingency) }
  },
)

/** Profit on a cost: mark-up `cost × u`, margin `cost × g / (1 − g)`. Percent; a margin is below 100. */
export const profitOn = formula(
  { id: 'price.profit', plain: 'mark-up: cost × u; margin: cost × g / (1 − g)', source: 'arithmetic' },
  ({ cost, percent, kind }: { cost: Money; percent: number; kind: 'markup' | 'margin' }): Money =>
    kind === 'markup' ? shareOf(cost, percent) : roundMoney((cost * percent) / (HUNDRED - percent)),
)

/** Cost and profit rounded up to a whole amount, less the discount; tax on that; total. */
export const priced = formula(
  {
    id: 'price.total',
    plain: 'before tax = up(cost + profit, to a whole amount) − discount; total = before tax + tax',
    source: 'arithmetic',
  },
  ({ cost, rates }: { cost: Money; rates: Pick<Rates, 'profit' | 'profitKind' | 'roundTo' | 'discount' | 'tax'> }) => {
    const profit = profitOn({ cost, percent: rates.profit, kind: rates.profitKind })
    const exact = addMoney(cost, profit)
    const step = Math.max(1, Math.round(rates.roundTo * MINOR_UNITS))
    const rounding = minorUnits(Math.ceil(exact / step) * step - exact)
    const beforeTax = minorUnits(exact + rounding - rates.discount)
    const tax = shareOf(beforeTax, rates.tax)
    return { profit, rounding, discount: rates.discount, beforeTax, tax, total: addMoney(beforeTax, tax) }
  },
)

/** One payment. */
export interface Stage {
  readonly percent: number
  readonly says: string
  readonly amount: Money
}

/** Payments: each its share of the total, the last what remains. */
export function stagesOf({ figures }: PlanContext, total: Money): readonly Stage[] {
  const first = figures.number('money.stage-first')
  const middle = figures.number('money.stage-middle')
  const [onAcceptance, onBoxes, rest] = split(total, [first, middle, HUNDRED - first - middle])
  return [
    { percent: first, says: 'on acceptance, before anything is ordered', amount: onAcceptance ?? total },
    { percent: middle, says: 'when the boxes stand', amount: onBoxes ?? minorUnits(0) },
    { percent: HUNDRED - first - middle, says: 'at hand-over', amount: rest ?? minorUnits(0) },
  ]
}

/** Splits an amount by percent, each rounded once; the last takes the remainder, so that nothing is lost. */
export function split(total: Money, percents: readonly number[]): readonly Money[] {
  const early = percents.slice(0, -1).map((p) => shareOf(total, p))
  return percents.length === 0 ? [] : [...early, minorUnits(total - addMoney(...early))]
}
