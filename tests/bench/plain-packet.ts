import { once } from 'node:events'
import { ZipArchive } from 'archiver'
import exceljs from 'exceljs'
import pdfkit from 'pdfkit'
import type { Assets } from '../../src/documents/document.ts'

/** How much a packet holds: the anchor writes as much, plainly. */
export interface Amount {
  readonly pages: readonly number[]
  readonly rows: readonly number[]
}

const LINES_A_PAGE = 45
const COLUMNS = 10

/** The packet's own libraries writing as many plain pages and rows into one zip. */
export async function plainPacket({ pages, rows }: Amount, assets: Assets): Promise<number> {
  const files: Buffer[] = []
  for (const count of pages) files.push(await plainPdf(count, assets))
  for (const count of rows) files.push(await plainSheet(count))
  const zip = new ZipArchive({ zlib: { level: 9 } })
  let length = 0
  zip.on('data', (piece: Buffer) => {
    length += piece.length
  })
  for (const [index, file] of files.entries()) zip.append(file, { name: `file-${index}` })
  await zip.finalize()
  return length
}

async function plainPdf(pages: number, assets: Assets): Promise<Buffer> {
  const document = new pdfkit({ autoFirstPage: false })
  const pieces: Buffer[] = []
  document.on('data', (piece: Buffer) => pieces.push(piece))
  document.registerFont('plain', Buffer.from(assets.fonts.regular))
  for (let page = 0; page < pages; page++) {
    document.addPage().font('plain').fontSize(9)
    for (let line = 0; line < LINES_A_PAGE; line++)
      document.text(`Line ${line} of page ${page}: a part, its size 41 1/4 × 23 1/2, where it goes.`)
  }
  const ended = once(document, 'end')
  document.end()
  await ended
  return Buffer.concat(pieces)
}

async function plainSheet(rows: number): Promise<Buffer> {
  const book = new exceljs.Workbook()
  const sheet = book.addWorksheet('Sheet')
  for (let row = 0; row < rows; row++)
    sheet.addRow(Array.from({ length: COLUMNS }, (_, column) => (column % 2 === 0 ? row * column : `cell ${row}`)))
  return Buffer.from(await book.xlsx.writeBuffer())
}
