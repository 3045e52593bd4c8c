import type { CostLine } from '../../plan/price/price.ts'
import { type BookCell, type BookSheet, FIRST_ROW } from '../book.ts'
import type { ForOffice } from '../for-office.ts'
import { liveMoney, moneyCell, roundAsOffice } from '../live.ts'

export type CostKind = 'labour' | 'materials' | 'bought in'

export interface KindLine {
  readonly kind: CostKind
  readonly line: CostLine
}

/** Every printed line of the cost, with the kind the price sums it under. */
export const costLines = ({ price }: ForOffice): readonly KindLine[] => [
  ...price.labour.map((line) => ({ kind: 'labour' as const, line })),
  ...price.materials.map((line) => ({ kind: 'materials' as const, line })),
  ...price.boughtIn.map((line) => ({ kind: 'bought in' as const, line })),
]

/** The lines: quantity times price, rounded to whole cents once. */
export const costSheet = (lines: readonly KindLine[], view: ForOffice): BookSheet => ({
  name: 'Lines',
  columns: [
    { head: 'kind', width: 12 },
    { head: 'what', width: 44 },
    { head: 'quantity', width: 10 },
    { head: 'unit', width: 9 },
    { head: 'each', width: 11 },
    { head: `amount, ${view.show.currency}`, width: 13 },
    { head: 'price', width: 14 },
  ],
  rows: lines.map(lineRow),
  frozenColumns: 2,
})

function lineRow({ kind, line }: KindLine, i: number): readonly BookCell[] {
  const row = FIRST_ROW + i
  const reckoned = roundAsOffice((line.quantity * line.each) / 100, 2)
  return [
    kind,
    line.says,
    { value: line.quantity, format: 'figure' },
    line.unit,
    moneyCell(line.each),
    liveMoney(line.amount, { formula: `ROUND(C${row}*E${row},2)`, reckoned }),
    line.known === 'invented' ? 'invented: ask' : null,
  ]
}
