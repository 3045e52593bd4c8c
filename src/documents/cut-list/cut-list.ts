import type { Book } from '../book.ts'
import type { PacketDocument } from '../document.ts'
import { type ForHelper, forHelper } from '../for-helper.ts'
import { paperSize } from '../paper-size.ts'
import { writeXlsx } from '../write/xlsx.ts'
import { cutListKey } from './cut-list-key.ts'
import { cutListSheets } from './cut-list-rows.ts'

/** What is sawn here, material by material. */
export const cutList: PacketDocument = {
  id: 'cut-list',
  reader: 'helper',
  says: 'cut list',
  needed: (plan) => plan.parts.some((part) => part.supply === 'made'),
  write: async (plan, _assets, stamp) => [
    { path: 'helper/cut-list.xlsx', bytes: await writeXlsx(cutListBook(forHelper(plan)), stamp) },
  ],
}

/** The workbook: a sheet a material, the key last. */
export const cutListBook = (view: ForHelper): Book => ({
  title: `${view.title} · cut list`,
  paper: paperSize(view.show.units),
  sheets: [...cutListSheets(view), cutListKey(view)],
})
