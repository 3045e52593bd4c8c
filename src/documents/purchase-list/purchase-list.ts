import { showDay } from '../../units/day.ts'
import type { OfficePurchase } from '../audience-fields.ts'
import { type Book, type BookCell, type BookSheet, FIRST_ROW } from '../book.ts'
import type { PacketDocument } from '../document.ts'
import { type ForOffice, forOffice } from '../for-office.ts'
import { liveMoney, liveNumber, moneyCell } from '../live.ts'
import { paperSize } from '../paper-size.ts'
import { SHOP_ORDER, SHOPS } from '../shop-words.ts'
import { writeXlsx } from '../write/xlsx.ts'
import { lineAmount } from './line-amount.ts'
import { purchaseTotals } from './purchase-totals.ts'

/** Everything to buy, shop by shop. */
export const purchaseList: PacketDocument = {
  id: 'purchase-list',
  reader: 'office',
  says: 'purchase list',
  needed: (plan) => plan.purchases.length > 0,
  write: async (plan, _assets, stamp) => [
    { path: 'office/purchase-list.xlsx', bytes: await writeXlsx(purchaseBook(forOffice(plan)), stamp) },
  ],
}

/** The workbook: the lines, then what each shop comes to. */
export function purchaseBook(view: ForOffice): Book {
  const lines = SHOP_ORDER.flatMap((shop) => view.purchases.filter((p) => p.shop === shop))
  return {
    title: `${view.title} · purchase list`,
    paper: paperSize(view.show.units),
    sheets: [linesSheet(lines, view), purchaseTotals(lines, view)],
  }
}

function linesSheet(lines: readonly OfficePurchase[], view: ForOffice): BookSheet {
  return {
    name: 'Purchases',
    columns: [
      { head: 'shop', width: 12 },
      { head: 'item', width: 34 },
      { head: 'for', width: 28 },
      { head: 'need', width: 9 },
      { head: 'unit', width: 8 },
      { head: 'pack holds', width: 9 },
      { head: 'packs', width: 7 },
      { head: 'each', width: 10 },
      { head: `line, ${view.show.currency}`, width: 11 },
      { head: 'price is', width: 12 },
      { head: 'spare', width: 18 },
      { head: 'order by', width: 12 },
      { head: 'bought', width: 8 },
    ],
    rows: lines.map((line, i) => purchaseRow(line, FIRST_ROW + i, view)),
    frozenColumns: 2,
  }
}

const PRICE_IS = { invented: 'invented: ask', answered: 'asked', yours: 'yours' } as const

function purchaseRow(line: OfficePurchase, row: number, view: ForOffice): readonly BookCell[] {
  const by = view.orderBy.find((o) => o.shop === line.shop)?.by
  return [
    SHOPS[line.shop],
    line.item,
    line.use,
    { value: line.need, format: 'figure' },
    line.unit,
    { value: line.packSize, format: 'figure' },
    liveNumber(line.packs, `ROUNDUP(D${row}/F${row},0)`, packsReckoned(line), 'count'),
    moneyCell(line.priceEach),
    liveMoney(lineAmount(line), { formula: `G${row}*H${row}`, reckoned: (line.packs * line.priceEach) / 100 }),
    PRICE_IS[line.priceKnown],
    line.spare,
    by === undefined ? null : showDay(by),
    '☐',
  ]
}

const packsReckoned = (line: OfficePurchase): number => Math.ceil(line.need / line.packSize)
