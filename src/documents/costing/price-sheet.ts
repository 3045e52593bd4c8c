import { addMoney, MINOR_UNITS, type Money, minorUnits } from '../../units/money.ts'
import { type BookCell, type BookSheet, FIRST_ROW } from '../book.ts'
import type { ForOffice } from '../for-office.ts'
import { liveMoney, roundAsOffice } from '../live.ts'
import type { CostKind, KindLine } from './cost-lines.ts'

/** One step of the price: its rate in column B, its amount in column C. */
interface Step {
  readonly id: string
  readonly says: string
  readonly rate?: number
  readonly amount: Money
  /** The formula over the rows of other steps, and what it gives in whole currency. */
  readonly from: (
    row: (id: string) => number,
    at: (id: string) => number,
  ) => readonly [formula: string, reckoned: number]
  readonly bold?: boolean
}

/** The price in the order it is reckoned, every step live over the one above it. */
export function priceSheet(view: ForOffice, lines: readonly KindLine[]): BookSheet {
  const steps = stepsOf(view, lines)
  const row = (id: string) => FIRST_ROW + steps.findIndex((s) => s.id === id)
  const at = (id: string) => (steps.find((s) => s.id === id)?.amount ?? 0) / MINOR_UNITS
  return {
    name: 'Price',
    columns: [
      { head: 'step', width: 40 },
      { head: 'rate', width: 10 },
      { head: `amount, ${view.show.currency}`, width: 16 },
    ],
    rows: steps.map((step): readonly BookCell[] => {
      const [formula, reckoned] = step.from(row, at)
      const bold = step.bold === true
      return [
        bold ? { bold: step.says } : step.says,
        step.rate === undefined ? null : { value: step.rate / 100, format: 'percent' },
        formula === ''
          ? { value: step.amount / MINOR_UNITS, format: 'money' }
          : liveMoney(step.amount, { formula, reckoned, bold }),
      ]
    }),
    frozenColumns: 1,
    tall: true,
  }
}

function stepsOf(view: ForOffice, lines: readonly KindLine[]): readonly Step[] {
  const { price } = view
  const { rates } = price
  return [
    kindStep('labour', 'labour', lines),
    kindStep('materials', 'materials', lines),
    kindStep('bought in', 'bought in', lines),
    shareStep({ id: 'sundries', says: 'sundries, of materials', rate: rates.sundries, amount: price.sundries }, [
      'materials',
    ]),
    shareStep({ id: 'handling', says: 'handling, of materials', rate: rates.handling, amount: price.handling }, [
      'materials',
    ]),
    { id: 'travel', says: 'travel', amount: price.travel, from: () => ['', 0] },
    sumStep('direct', 'direct cost', price.direct, [
      'labour',
      'materials',
      'bought in',
      'sundries',
      'handling',
      'travel',
    ]),
    shareStep({ id: 'overhead', says: 'overhead, of direct cost', rate: rates.overhead, amount: price.overhead }, [
      'direct',
    ]),
    shareStep(
      {
        id: 'contingency',
        says: 'contingency, of direct cost and overhead',
        rate: rates.contingency,
        amount: price.contingency,
      },
      ['direct', 'overhead'],
    ),
    sumStep('cost', 'cost', price.cost, ['direct', 'overhead', 'contingency']),
    profitStep(view),
    { id: 'discount', says: 'discount', amount: price.discount, from: () => ['', 0] },
    beforeTaxStep(view),
    shareStep({ id: 'tax', says: 'tax', rate: rates.tax, amount: price.tax }, ['beforeTax']),
    { ...sumStep('total', 'total', price.total, ['beforeTax', 'tax']), bold: true },
    ...stageSteps(view),
  ]
}

function kindStep(id: CostKind, says: string, lines: readonly KindLine[]): Step {
  const own = lines.filter((l) => l.kind === id).map((l) => l.line.amount)
  const amount = addMoney(...own)
  const last = FIRST_ROW + Math.max(lines.length, 1) - 1
  const range = (column: string) => `Lines!$${column}$${FIRST_ROW}:$${column}$${last}`
  return { id, says, amount, from: () => [`SUMIF(${range('A')},"${id}",${range('F')})`, amount / MINOR_UNITS] }
}

const cells = (row: (id: string) => number, ids: readonly string[]): string => ids.map((id) => `C${row(id)}`).join('+')
const total = (at: (id: string) => number, ids: readonly string[]): number => ids.reduce((sum, id) => sum + at(id), 0)

const sumStep = (id: string, says: string, amount: Money, ids: readonly string[]): Step => ({
  id,
  says,
  amount,
  bold: true,
  from: (row, at) => [cells(row, ids), total(at, ids)],
})

const shareStep = (
  step: Pick<Step, 'id' | 'says' | 'amount'> & { readonly rate: number },
  ids: readonly string[],
): Step => ({
  ...step,
  from: (row, at) => [
    `ROUND((${cells(row, ids)})*B${row(step.id)},2)`,
    roundAsOffice((total(at, ids) * step.rate) / 100, 2),
  ],
})

/** Mark-up is a part of the cost, margin a part of the price: one is named. */
function profitStep({ price }: ForOffice): Step {
  const { profit: rate, profitKind } = price.rates
  const step = {
    id: 'profit',
    says: `profit, as ${profitKind === 'markup' ? 'mark-up on cost' : 'margin of the price'}`,
    rate,
    amount: price.profit,
  }
  if (profitKind === 'markup') return shareStep(step, ['cost'])
  return {
    ...step,
    from: (row, at) => [
      `ROUND(C${row('cost')}*B${row('profit')}/(1-B${row('profit')}),2)`,
      roundAsOffice((at('cost') * rate) / (100 - rate), 2),
    ],
  }
}

/** Cost and profit rounded up to a whole amount, then the discount taken off. */
function beforeTaxStep({ price }: ForOffice): Step {
  const { roundTo } = price.rates
  return {
    id: 'beforeTax',
    says: `before tax, rounded up to ${roundTo}, less discount`,
    amount: price.beforeTax,
    bold: true,
    from: (row, at) => [
      `ROUNDUP(ROUND((C${row('cost')}+C${row('profit')})/${roundTo},8),0)*${roundTo}-C${row('discount')}`,
      Math.ceil(roundAsOffice((at('cost') + at('profit')) / roundTo, 8)) * roundTo - at('discount'),
    ],
  }
}

/** Each stage its share of the total; the last takes what is left, so that they add up to the cent. */
function stageSteps({ price }: ForOffice): readonly Step[] {
  const last = price.stages.length - 1
  return price.stages.map((stage, i): Step => {
    const id = `stage-${i}`
    const step = { id, says: `to pay: ${stage.says}`, rate: stage.percent, amount: stage.amount }
    if (i < last) return shareStep(step, ['total'])
    const before = price.stages.slice(0, last).map((_, k) => `stage-${k}`)
    return {
      ...step,
      from: (row, at) => [
        [`C${row('total')}`, ...before.map((b) => `C${row(b)}`)].join('-'),
        minorUnits(Math.round((at('total') - total(at, before)) * MINOR_UNITS)) / MINOR_UNITS,
      ],
    }
  })
}
