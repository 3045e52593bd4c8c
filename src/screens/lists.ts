import type { Draft } from '../interview/draft.ts'
import type { Column, Option } from '../things/field.ts'
import { cellsOf, padCells } from './cells.ts'
import { BLANK, type Frame, fact, type Layout, marked } from './frame.ts'

/** The options of a choice, numbered; the one that stands carries the word "now". */
export function optionRows(
  layout: Layout,
  options: readonly Option[],
  chosen: string | undefined,
  now: unknown,
): readonly Frame[] {
  return options.map((o, i) => {
    const row = fact(layout, '', `${i + 1}  ${o.says}${o.id === now ? '   now' : ''}`)
    return o.id === chosen ? marked(layout, row) : row
  })
}

/** As many rows as there is room for, round the chosen one, with a line that says which of how many. */
export function windowed(layout: Layout, rows: readonly Frame[], chosen: number, room: number): Frame {
  const all = rows.flat()
  if (all.length <= room) return all
  const tallest = Math.max(...rows.map((r) => r.length))
  const count = Math.max(1, Math.floor((room - 1) / tallest))
  const from = Math.max(0, Math.min(chosen - Math.floor(count / 2), rows.length - count))
  const shown = rows.slice(from, from + count)
  return [...shown.flat(), ...fact(layout, '', `${from + 1} to ${from + shown.length} of ${rows.length}`)]
}

interface TableView {
  readonly columns: readonly Column[]
  readonly draft: Draft
  readonly typed: string
  readonly room: number
}

const BETWEEN = 2

/** The rows of a table under their column names; the row being typed has the mark. */
export function tableRows(layout: Layout, { columns, draft, typed, room }: TableView): Frame {
  const names = columns.map((c) => c.says)
  const width = layout.width - layout.facts
  const fits = names.reduce((total, n) => total + cellsOf(n) + BETWEEN, 0) <= width
  const header = fact(
    layout,
    '',
    fits
      ? names
          .map((n) => padCells(n, cellsOf(n) + BETWEEN))
          .join('')
          .trimEnd()
      : names.join(' · '),
  )
  const current = marked(
    layout,
    fact(layout, draft.row < draft.rows.length ? `row ${draft.row + 1}` : 'new row', typed),
  )
  const rows = draft.rows.map((row, i) => (i === draft.row ? current : fact(layout, '', aligned(row, names, fits))))
  const all = draft.row < draft.rows.length ? rows : [...rows, current]
  return [...header, ...windowed(layout, all, draft.row, room - header.length - 1), BLANK]
}

/** A kept row under the column names, when its cells can be told apart. */
function aligned(row: string, names: readonly string[], fits: boolean): string {
  const cells = row.trim().split(/\s{2,}/)
  if (!fits || cells.length > names.length) return row.trim().replace(/\s+/g, ' ')
  return cells
    .map((cell, i) => padCells(cell, cellsOf(names[i] ?? '') + BETWEEN))
    .join('')
    .trimEnd()
}
