import { type Column, type Entry, type Field, NOT_MEASURED } from '../things/field.ts'
import { type Bay, namedBays } from '../things/place.ts'
import type { Show } from '../things/show.ts'
import { type Day, showDayAndYear } from '../units/day.ts'
import { type Length, NM_PER_MM } from '../units/length.ts'
import { type Money, showMoney } from '../units/money.ts'
import { parseLength } from '../units/parse-length.ts'

/** An answer as the review and the question show it, in the job's units: `41 1/4`, `left 15 1/2, right 15 5/8`, `three rows`. */
export function showAnswer(field: Pick<Field, 'entry'>, value: unknown, show: Show): string {
  if (value === undefined) return 'not answered'
  if (value === NOT_MEASURED) return 'not measured yet'
  return showEntry(field.entry, value, show)
}

// The one place where a kept answer is read by how it was typed: the job's schema has checked that they fit.
function showEntry(entry: Entry, value: unknown, show: Show): string {
  switch (entry.kind) {
    case 'length':
      return show.length(value as Length)
    case 'lengths':
      return showLengths(value as readonly Length[], entry.labels, show)
    case 'table':
      return showTable(value as readonly CellRow[], entry.columns, show)
    case 'bays':
      return namedBays(value as readonly Bay[])
        .map((b) => b.name)
        .join(' · ')
    case 'choice':
      return entry.options.find((o) => o.id === value)?.says ?? String(value)
    case 'yes-no':
      return value === true ? 'yes' : 'no'
    case 'money':
      return showMoney(value as Money)
    case 'percent':
      return `${String(value)} %`
    case 'day':
      return showDayAndYear(value as Day)
    case 'text':
      return value === '' ? 'none' : String(value)
    case 'count':
    case 'hours':
    case 'number':
      return String(value)
  }
}

const showLengths = (lengths: readonly Length[], labels: readonly string[] | undefined, show: Show): string =>
  lengths.map((l, i) => (labels?.[i] === undefined ? show.length(l) : `${labels[i]} ${show.length(l)}`)).join(', ')

type Cell = number | string | undefined
type CellRow = Readonly<Record<string, Cell>>

const showTable = (rows: readonly CellRow[], columns: readonly Column[], show: Show): string =>
  rows.length === 0 ? 'none' : rows.map((row) => showRow(row, columns, show)).join('; ')

/** `above floor 36, at the back 41`: the filled cells of one row. */
export const showRow = (row: CellRow, columns: readonly Column[], show: Show): string =>
  columns
    .filter((c) => row[c.id] !== undefined)
    .map((c) => `${c.says} ${showCell(row[c.id], c, show)}`)
    .join(', ')

/** One cell; a dash where nothing was measured. */
export function showCell(value: Cell, column: Column, show: Show): string {
  if (value === undefined) return '-'
  if (typeof value === 'number') return column.entry.kind === 'length' ? show.length(value as Length) : String(value)
  return column.entry.kind === 'choice' ? (column.entry.options.find((o) => o.id === value)?.says ?? value) : value
}

/** A kept row as one would type it again. */
export const typedRow = (row: CellRow, columns: readonly Column[], show: Show): string =>
  columns.map((c) => typedCell(row[c.id], c, show)).join(', ')

const typedCell = (value: Cell, column: Column, show: Show): string =>
  typeof value === 'number' && column.entry.kind === 'length'
    ? typedLength(value as Length, show)
    : showCell(value, column, show)

/** A length so written that it reads as the very same one; what the job's marks cannot show is written in millimetres. */
export function typedLength(value: Length, show: Show): string {
  const own = show.length(value)
  const again = parseLength(own, show.units)
  return again.kind === 'read' && again.value === value ? own : `${value / NM_PER_MM} mm`
}
