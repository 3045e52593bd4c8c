import type { Draft } from '../interview/draft.ts'
import { columnWords, exampleRow } from '../interview/example-row.ts'
import type { Column, Option } from '../things/field.ts'
import type { UnitSystem } from '../units/show-length.ts'
import { cellsOf, padCells } from './cells.ts'
import { airy, type Frame, type FrameLine, fact, type Layout, marked } from './frame.ts'
import { rowWindow } from './row-window.ts'

interface OptionView {
  readonly options: readonly Option[]
  readonly chosen: string | undefined
  /** The option that stands: it carries the word "now". */
  readonly now: unknown
  readonly room: number
}

/** The options of a choice, numbered, one a row; where that is too high, in a paragraph; where that is too, in a window. */
export function optionList(layout: Layout, view: OptionView): Frame {
  const words = view.options.map((o, i) => `${i + 1}  ${o.says}${o.id === view.now ? '   now' : ''}`)
  const rows = words.map((text, i) => {
    const row = fact(layout, '', text)
    return view.options[i]?.id === view.chosen ? marked(layout, row) : row
  })
  const high = rows.flat()
  if (high.length < view.room) return [...high, ...airy(layout)]
  const paragraph = fact(layout, 'choose', words.map((w) => w.replace(/ {2,}/g, ' ')).join(' · '))
  const chosen = view.options.findIndex((o) => o.id === view.chosen)
  return paragraph.length <= view.room ? paragraph : windowed(layout, rows, chosen, view.room)
}

/** As many rows as there is room for, round the chosen one, with a line that says which of how many. */
export function windowed(layout: Layout, rows: readonly Frame[], chosen: number, room: number): Frame {
  const all = rows.flat()
  if (all.length <= room) return all
  const heights = rows.map((r) => r.length)
  const { from, to } = rowWindow(heights, Math.max(0, chosen), room - 1)
  return [...rows.slice(from, to).flat(), ...fact(layout, '', `${from + 1} to ${to} of ${rows.length}`)]
}

interface TableView {
  readonly columns: readonly Column[]
  readonly draft: Draft
  readonly typed: string
  readonly units: UnitSystem
  readonly room: number
}

const BETWEEN = 2

/** The rows of a table under their column names; the row being typed has the mark. */
export function tableRows(layout: Layout, view: TableView): Frame {
  const { columns, draft, typed, room } = view
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
  const hints = hintRows(layout, view, room - header.length - 1 - Math.min(all.flat().length, LEAST_SHOWN))
  const left = room - header.length - hints.length - 1
  return [...hints, ...header, ...windowed(layout, all, draft.row, left), ...airy(layout)]
}

/** Rows of a table that are seen before its hints get room. */
const LEAST_SHOWN = 6

/** The words of the columns that take words and, while there is no row yet, an example: whole ones, as far as there is room. */
function hintRows(layout: Layout, { columns, draft, units }: TableView, room: number): Frame {
  const words = columnWords(columns).map(({ column, words: list }) => fact(layout, column, list))
  const like = draft.rows.length === 0 ? [fact(layout, 'like', exampleRow(columns, units))] : []
  const shown: FrameLine[] = []
  for (const hint of [...words, ...like, airy(layout)]) if (shown.length + hint.length <= room) shown.push(...hint)
  return shown
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
