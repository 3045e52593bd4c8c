import type { Draft } from '../interview/draft.ts'
import type { Column, Option } from '../things/field.ts'
import { cellsOf, padCells } from './cells.ts'
import { airy, type Frame, fact, type Layout, marked } from './frame.ts'
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
  return [...header, ...windowed(layout, all, draft.row, room - header.length - 1), ...airy(layout)]
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
