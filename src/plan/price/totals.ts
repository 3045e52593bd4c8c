import { discount as discountField } from '../../job/chapters/price.ts'
import { formula, type Ref } from '../../things/formula.ts'
import { addMoney, MINOR_UNITS, type Money, minorUnits } from '../../units/money.ts'
import type { CostLine } from './cost-line.ts'
import { hoursAmount, packsAmount } from './lines.ts'
import type { Rates } from './rates.ts'
import { contingencyShare, handlingShare, overheadShare, profitOn, sundriesShare, taxShare } from './shares.ts'

const ARITHMETIC = { source: 'arithmetic', gives: 'money' } as const

/** Sum of printed lines. */
const linesFormula = (id: string, plain: string, lines: readonly Ref[]) =>
  formula<{ readonly amounts: readonly Money[] }, Money>(
    { id, plain, ...ARITHMETIC, from: { amounts: lines } },
    ({ amounts }) => addMoney(...amounts),
  )

const labourSum = linesFormula('price.labour', 'lines of hours', [hoursAmount])
const materialsSum = linesFormula('price.materials', 'lines of materials', [packsAmount])
const boughtInSum = linesFormula('price.bought-in', 'lines of what is bought in, delivery included', [
  packsAmount,
  { id: 'deliveryCost' },
])

/** What the lines of each kind come to. */
export function linesTogether(lines: {
  readonly labour: readonly CostLine[]
  readonly materials: readonly CostLine[]
  readonly boughtIn: readonly CostLine[]
}): Pick<CostSums, 'labour' | 'materials' | 'boughtIn'> {
  const amounts = (some: readonly CostLine[]) => ({ amounts: some.map((l) => l.amount) })
  return {
    labour: labourSum(amounts(lines.labour)),
    materials: materialsSum(amounts(lines.materials)),
    boughtIn: boughtInSum(amounts(lines.boughtIn)),
  }
}

interface CostSums {
  readonly labour: Money
  readonly materials: Money
  readonly boughtIn: Money
  readonly travel: Money
  readonly rates: Pick<Rates, 'sundries' | 'handling' | 'overhead' | 'contingency'>
}

/** What the job takes before rent and risk. */
export const directCost = formula(
  {
    id: 'price.direct',
    plain: 'labour + materials + handling + bought in + sundries + travel',
    ...ARITHMETIC,
    from: { handling: handlingShare, sundries: sundriesShare },
  },
  (of: Omit<CostSums, 'rates'> & { readonly handling: Money; readonly sundries: Money }): Money =>
    addMoney(of.labour, of.materials, of.handling, of.boughtIn, of.sundries, of.travel),
)

/** What the job costs the shop. */
export const costTogether = formula(
  {
    id: 'price.cost',
    plain: 'direct cost + overhead + contingency',
    ...ARITHMETIC,
    from: { overhead: overheadShare, contingency: contingencyShare },
  },
  (of: { readonly direct: Money; readonly overhead: Money; readonly contingency: Money }): Money =>
    addMoney(of.direct, of.overhead, of.contingency),
)

/** The cost in its steps, whole cents. */
export function costed({ rates, ...sums }: CostSums) {
  const sundries = sundriesShare({ amount: sums.materials, share: rates.sundries })
  const handling = handlingShare({ amount: sums.materials, share: rates.handling })
  const direct = directCost({ ...sums, sundries, handling })
  const overhead = overheadShare({ amount: direct, share: rates.overhead })
  const contingency = contingencyShare({ direct, overhead, share: rates.contingency })
  return { sundries, handling, direct, overhead, contingency, cost: costTogether({ direct, overhead, contingency }) }
}

/** What rounding up to a whole amount adds. */
export const roundingUp = formula(
  {
    id: 'price.rounding',
    plain: 'cost + profit, up to a whole amount, − cost − profit',
    ...ARITHMETIC,
    units: { roundTo: 'number' },
  },
  (of: { readonly cost: Money; readonly profit: Money; readonly roundTo: number }): Money => {
    const exact = addMoney(of.cost, of.profit)
    const step = Math.max(1, Math.round(of.roundTo * MINOR_UNITS))
    return minorUnits(Math.ceil(exact / step) * step - exact)
  },
)

/** What is asked before tax. */
export const priceBeforeTax = formula(
  {
    id: 'price.before-tax',
    plain: 'cost + profit + rounding − discount',
    ...ARITHMETIC,
    from: { profit: profitOn, discount: discountField },
  },
  (of: { readonly cost: Money; readonly profit: Money; readonly rounding: Money; readonly discount: Money }): Money =>
    minorUnits(addMoney(of.cost, of.profit, of.rounding) - of.discount),
)

/** What the client pays. */
export const totalPrice = formula(
  { id: 'price.total', plain: 'price before tax + tax', ...ARITHMETIC, from: { tax: taxShare } },
  (of: { readonly beforeTax: Money; readonly tax: Money }): Money => addMoney(of.beforeTax, of.tax),
)

/** Cost and profit rounded up to a whole amount, less the discount; tax on that; total. */
export function priced({
  cost,
  rates,
}: {
  readonly cost: Money
  readonly rates: Pick<Rates, 'profit' | 'profitKind' | 'roundTo' | 'discount' | 'tax'>
}) {
  const { discount } = rates
  const profit = profitOn({ cost, percent: rates.profit, kind: rates.profitKind })
  const rounding = roundingUp({ cost, profit, roundTo: rates.roundTo })
  const beforeTax = priceBeforeTax({ cost, profit, rounding, discount })
  const tax = taxShare({ amount: beforeTax, share: rates.tax })
  return { profit, rounding, discount, beforeTax, tax, total: totalPrice({ beforeTax, tax }) }
}
