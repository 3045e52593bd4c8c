import type { Cell, Workbook, Worksheet } from 'exceljs'
import { unzipSync, type Zippable, zipSync } from 'fflate'
import type { Book, BookCell, BookSheet, CellFormat } from '../book.ts'
import { sheetNames } from '../book.ts'
import type { Stamp } from '../document.ts'

/** The book as a workbook: same book and stamp, same bytes. */
export async function writeXlsx(book: Book, stamp: Stamp): Promise<Uint8Array> {
  const { default: ExcelJS } = await import('exceljs')
  const workbook = new ExcelJS.Workbook()
  const moment = new Date(`${stamp.date}T12:00:00Z`)
  workbook.created = moment
  workbook.modified = moment
  workbook.creator = stamp.tool
  workbook.lastModifiedBy = stamp.tool
  workbook.title = book.title
  workbook.calcProperties = { fullCalcOnLoad: true }
  const names = sheetNames(book.sheets.map((s) => s.name))
  for (const [i, sheet] of book.sheets.entries()) addSheet(workbook, names[i] ?? '', sheet, { book, stamp })
  return rezipped(new Uint8Array(await workbook.xlsx.writeBuffer()))
}

const A4 = 9

function addSheet(
  workbook: Workbook,
  name: string,
  sheet: BookSheet,
  { book, stamp }: { readonly book: Book; readonly stamp: Stamp },
): void {
  const worksheet = workbook.addWorksheet(name, {
    views: [{ state: 'frozen', xSplit: sheet.frozenColumns, ySplit: 1 }],
    pageSetup: {
      // Without a size it is Letter (ECMA-376, pageSetup).
      ...(book.paper === 'a4' ? { paperSize: A4 } : {}),
      orientation: sheet.tall === true ? 'portrait' : 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: '1:1',
    },
    headerFooter: {
      oddFooter: `&L${footText(book.title)} · ${name}&Rrevision ${stamp.revision} · ${stamp.date} · page &P of &N`,
    },
  })
  for (const [i, column] of sheet.columns.entries()) worksheet.getColumn(i + 1).width = column.width
  writeHead(worksheet, sheet)
  for (const [r, row] of sheet.rows.entries()) {
    for (const [c, cell] of row.entries()) writeCell(worksheet.getCell(r + 2, c + 1), cell)
  }
}

/** In a footer & begins a code; two stand for one. */
const footText = (text: string): string => text.replaceAll('&', '&&')

function writeHead(worksheet: Worksheet, sheet: BookSheet): void {
  for (const [i, column] of sheet.columns.entries()) {
    const cell = worksheet.getCell(1, i + 1)
    cell.value = column.head
    cell.font = { bold: true }
    cell.alignment = { wrapText: true, vertical: 'top' }
    cell.border = { bottom: { style: 'thin' } }
  }
}

const FORMATS: Readonly<Record<CellFormat, string>> = {
  money: '#,##0.00',
  percent: '0.##%',
  figure: '0.###',
  count: '0',
}

function writeCell(cell: Cell, content: BookCell): void {
  if (content === null || content === '') return
  cell.alignment = { wrapText: true, vertical: 'top' }
  if (typeof content === 'string') cell.value = plainText(content)
  else if ('bold' in content && typeof content.bold === 'string') {
    cell.value = plainText(content.bold)
    cell.font = { bold: true }
  } else if ('formula' in content) {
    cell.value = { formula: content.formula, result: content.result, date1904: false }
    cell.numFmt = FORMATS[content.format]
    if (content.bold === true) cell.font = { bold: true }
  } else if ('value' in content) {
    cell.value = content.value
    cell.numFmt = FORMATS[content.format]
  }
}

/** XML 1.0 holds no control characters but tab and line ends: they become spaces. */
const plainText = (text: string): string => text.normalize('NFC').replace(CONTROL, ' ').replace(LONE_HALF, ' ')

const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g
const LONE_HALF = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g

const FIXED_TIME = new Date(1980, 0, 1)
const TYPES = '[Content_Types].xml'

/** The library stamps its zip with today's time; the same files are packed again with a fixed one. */
function rezipped(bytes: Uint8Array): Uint8Array {
  const files = unzipSync(bytes)
  const names = Object.keys(files)
    .filter((name) => !name.endsWith('/'))
    .sort((a, b) => (a === TYPES ? -1 : b === TYPES ? 1 : a < b ? -1 : 1))
  const ordered: Zippable = {}
  for (const name of names) {
    const content = files[name]
    if (content !== undefined) ordered[name] = [content, { mtime: FIXED_TIME, level: 6 }]
  }
  return zipSync(ordered)
}
