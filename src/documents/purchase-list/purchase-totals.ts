import { showDay } from '../../units/day.ts'
import { addMoney } from '../../units/money.ts'
import type { OfficePurchase } from '../audience-fields.ts'
import { type BookCell, type BookSheet, FIRST_ROW } from '../book.ts'
import type { ForOffice } from '../for-office.ts'
import { liveMoney } from '../live.ts'
import { SHOP_ORDER, SHOPS } from '../shop-words.ts'
import { lineAmount } from './line-amount.ts'

/** What each shop comes to, when it is ordered, and the whole. */
export function purchaseTotals(lines: readonly OfficePurchase[], view: ForOffice): BookSheet {
  const last = FIRST_ROW + lines.length - 1
  const shops = SHOP_ORDER.filter((shop) => lines.some((line) => line.shop === shop))
  const sumOf = (some: readonly OfficePurchase[]) => addMoney(...some.map(lineAmount))
  const rows = shops.map((shop, i): readonly BookCell[] => {
    const total = sumOf(lines.filter((line) => line.shop === shop))
    const range = `Purchases!$A$${FIRST_ROW}:$A$${last},A${FIRST_ROW + i},Purchases!$I$${FIRST_ROW}:$I$${last}`
    const by = view.orderBy.find((o) => o.shop === shop)?.by
    return [
      SHOPS[shop],
      liveMoney(total, { formula: `SUMIF(${range})`, reckoned: total / 100 }),
      by === undefined ? null : showDay(by),
    ]
  })
  const total = sumOf(lines)
  const formula = `SUM(B${FIRST_ROW}:B${FIRST_ROW + shops.length - 1})`
  return {
    name: 'Totals',
    columns: [
      { head: 'shop', width: 16 },
      { head: `total, ${view.show.currency}`, width: 14 },
      { head: 'order by', width: 14 },
    ],
    rows: [...rows, [{ bold: 'all' }, liveMoney(total, { formula, reckoned: total / 100, bold: true }), null]],
    frozenColumns: 1,
    tall: true,
  }
}
