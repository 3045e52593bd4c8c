import type { HelperLayout } from '../audience-fields.ts'
import { type Block, type Cell, type TableColumn, TICK } from '../block.ts'

type Line = HelperLayout['lines'][number]

/** Rows that stand under the drawing of a sheet in one column, and letters that stand in a row. */
const ONE_COLUMN = { rows: 20, letters: 85 } as const

/** The rows of cuts with a box to tick, down one column or down two. */
export function sawTable(lines: readonly Line[]): Block {
  const rows = lines.reduce((total, line) => total + Math.ceil(line.says.length / ONE_COLUMN.letters), 0)
  if (rows <= ONE_COLUMN.rows) {
    return { kind: 'table', columns: columnsOf(178), rows: lines.map((line) => ({ cells: cellsOf(line) })) }
  }
  const half = Math.ceil(lines.length / 2)
  return {
    kind: 'table',
    small: true,
    columns: [...columnsOf(89), ...columnsOf(89)],
    rows: lines.slice(0, half).map((line, i) => ({ cells: [...cellsOf(line), ...cellsOf(lines[half + i])] })),
  }
}

/** Numbers, words and box of one column, millimetres. */
const columnsOf = (width: number): readonly TableColumn[] => [
  { head: 'cut', width: 18, bold: true },
  { head: 'how, at the fence', width: width - 26 },
  { head: '', width: 8 },
]

const cellsOf = (line: Line | undefined): readonly Cell[] =>
  line === undefined ? ['', '', ''] : [numbersOf(line), line.says, TICK]

const numbersOf = ({ first, last }: Line): string => (first === last ? `${first}` : `${first}–${last}`)
