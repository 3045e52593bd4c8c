import { type MakeOrBuy, makeOrBuy } from '../../plan/make-or-buy/make-or-buy.ts'
import type { Book, BookCell, BookSheet } from '../book.ts'
import type { PacketDocument } from '../document.ts'
import { type ForOffice, forOffice } from '../for-office.ts'
import { paperSize } from '../paper-size.ts'
import { writeXlsx } from '../write/xlsx.ts'
import { costLines, costSheet } from './cost-lines.ts'
import { makeOrBuySheet } from './make-or-buy-sheet.ts'
import { priceSheet } from './price-sheet.ts'

/** How the price comes about, line by line. */
export const costing: PacketDocument = {
  id: 'costing',
  reader: 'office',
  says: 'costing',
  needed: () => true,
  write: async (plan, _assets, stamp) => [
    { path: 'office/costing.xlsx', bytes: await writeXlsx(costingBook(forOffice(plan), makeOrBuy(plan.job)), stamp) },
  ],
}

/** The workbook: the price in steps, the lines it sums, making against buying, and what only the office knows. */
export function costingBook(view: ForOffice, compared: readonly MakeOrBuy[] = []): Book {
  const lines = costLines(view)
  return {
    title: `${view.title} · costing`,
    paper: paperSize(view.show.units),
    sheets: [
      priceSheet(view, lines),
      costSheet(lines, view),
      ...(compared.length === 0 ? [] : [makeOrBuySheet(compared, view.show.currency)]),
      notesSheet(view),
      ...ownFigureSheets(view),
    ],
  }
}

/** What this job reckons with that is not the published figure; no sheet when there is none. */
const ownFigureSheets = ({ ownFigures }: ForOffice): readonly BookSheet[] =>
  ownFigures.length === 0
    ? []
    : [
        {
          name: 'Own figures',
          columns: [
            { head: 'figure', width: 24 },
            { head: 'what', width: 44 },
            { head: 'published', width: 16 },
            { head: 'this job', width: 16 },
            { head: 'why', width: 50 },
          ],
          rows: ownFigures.map(({ id, says, published, yours, because }) => [id, says, published, yours, because]),
          frozenColumns: 1,
        },
      ]

function notesSheet(view: ForOffice): BookSheet {
  const said: readonly (readonly [string, string | undefined])[] = [
    ['client', view.client],
    ['reached', view.contact],
    ['site', view.siteAddress],
    ['note', view.privateNote],
    ['prices', 'A price marked "invented: ask" is made up. Put in what your shop asks before you quote.'],
  ]
  return {
    name: 'Notes',
    columns: [
      { head: 'what', width: 12 },
      { head: 'says', width: 90 },
    ],
    rows: said.flatMap(([word, text]): readonly (readonly BookCell[])[] => (text === undefined ? [] : [[word, text]])),
    frozenColumns: 0,
    tall: true,
  }
}
