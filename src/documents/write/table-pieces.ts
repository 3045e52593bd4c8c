import type { Cell, Table, TableColumn, TableRow } from '../block.ts'
import type { Bench } from './block-pieces.ts'
import { drawBar, drawTick } from './fact-pieces.ts'
import { MM, TICK_SIDE, TYPE, WEIGHT } from './page-look.ts'
import type { TextLook } from './paper-pen.ts'
import type { Piece } from './piece.ts'
import type { TagBranch } from './tags.ts'

const HEAD: TextLook = { type: 'small', bold: true }
/** Between two columns, points. */
const COLUMN_GAP = 6
/** A thin rule under every so many rows: the eye keeps its line. */
const RULE_EVERY = 4

/** A table's rows, its head repeated on each page it runs over. */
export function tablePieces(table: Table, bench: Bench): readonly Piece[] {
  const branch = bench.tags.branch('Table')
  const head = headPiece(table.columns, bench, branch)
  const keepFirst = {}
  return [
    { ...head, before: 10, group: keepFirst },
    ...table.rows.map((row, i): Piece => {
      const ruled = (i + 1) % RULE_EVERY === 0
      return { ...rowPiece({ table, row, ruled }, bench, branch), head, group: i === 0 ? keepFirst : undefined }
    }),
  ]
}

function headPiece(columns: readonly TableColumn[], bench: Bench, branch: TagBranch): Piece {
  const { pen, tags, area } = bench
  const height =
    Math.max(TYPE.small.line, ...columns.map((c) => pen.heightOf(c.head, c.width * MM - COLUMN_GAP, HEAD))) + 4
  return {
    height,
    before: 0,
    group: undefined,
    draw: (y) => {
      const row = branch.row()
      eachColumn(columns, area.left, (c, x) =>
        row.cell('TH', () =>
          pen.write(c.head, { x, y, width: c.width * MM - COLUMN_GAP }, { ...HEAD, align: c.align ?? 'left' }),
        ),
      )
      tags.artifact(() => rule(bench, columns, y + height - 2, WEIGHT.heading))
    },
  }
}

function rowPiece(
  { table, row, ruled }: { readonly table: Table; readonly row: TableRow; readonly ruled: boolean },
  bench: Bench,
  branch: TagBranch,
): Piece {
  const { pen, tags, area } = bench
  const lookOf = lookIn(table)
  const heights = table.columns.map((c, i) => cellHeight(row.cells[i], c, lookOf(c), bench))
  const height = Math.max(TYPE[lookOf(table.columns[0]).type].line, ...heights) + 2
  return {
    height,
    before: 0,
    group: undefined,
    draw: (y) => {
      const tagged = branch.row()
      eachColumn(table.columns, area.left, (c, x, i) => {
        const cell = row.cells[i] ?? ''
        if (typeof cell === 'string') {
          tagged.cell('TD', () => pen.write(cell, { x, y, width: c.width * MM - COLUMN_GAP }, lookOf(c)))
        } else {
          tagged.cell('TD', () => undefined)
          tags.artifact(() => drawTick(pen.doc, x, y))
        }
      })
      tags.artifact(() => {
        if (row.bar === true) drawBar(bench, y, height - 2)
        if (ruled) rule(bench, table.columns, y + height - 1, WEIGHT.table)
      })
    },
  }
}

const lookIn =
  ({ small }: Table) =>
  (c: TableColumn | undefined): TextLook => ({
    type: small === true ? 'small' : 'text',
    bold: c?.bold === true,
    align: c?.align ?? 'left',
  })

const cellHeight = (cell: Cell | undefined, c: TableColumn, look: TextLook, { pen }: Bench): number =>
  typeof cell === 'object' ? TICK_SIDE * MM + 1 : pen.heightOf(cell ?? '', c.width * MM - COLUMN_GAP, look)

function eachColumn(
  columns: readonly TableColumn[],
  left: number,
  visit: (column: TableColumn, x: number, index: number) => void,
): void {
  let x = left
  for (const [i, column] of columns.entries()) {
    visit(column, x, i)
    x += column.width * MM
  }
}

function rule({ pen, area }: Bench, columns: readonly TableColumn[], y: number, weight: number): void {
  const width = columns.reduce((total, c) => total + c.width * MM, 0) - COLUMN_GAP
  pen.doc
    .lineWidth(weight)
    .moveTo(area.left, y)
    .lineTo(area.left + width, y)
    .stroke('black')
}
