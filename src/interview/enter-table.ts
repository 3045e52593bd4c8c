import type { Column, Entry, LengthRange } from '../things/field.ts'
import { inches, millimetres } from '../units/length.ts'
import { afterGap, endsHere } from '../units/parse-length.ts'
import { plainMarks } from '../units/plain-marks.ts'
import { scanLength } from '../units/scan-length.ts'
import type { Asking } from './asking.ts'
import { matchOption } from './enter-choice.ts'
import { outsideRange } from './enter-length.ts'
import { answer, type Entered, held, refused } from './entered.ts'
import { joinedComma, joinedFigures, parted } from './parted.ts'
import { showRow } from './show-answer.ts'

type TableEntry = Extract<Entry, { kind: 'table' }>
export type Row = Readonly<Record<string, number | string>>

/** Figures of a table have no range of their own: a wall is not longer, nor a lean larger, than this. */
const PLAIN: LengthRange = { inch: [inches(0), inches(600)], metric: [millimetres(0), millimetres(15_000)] }
const SIGNED: LengthRange = { inch: [inches(-24), inches(24)], metric: [millimetres(-600), millimetres(600)] }

/** A whole table: one row a line. `none` is an empty one where that is allowed. */
export function enterTable(text: string, entry: TableEntry, asking: Asking): Entered {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  if (entry.least === 0 && lines.length === 1 && /^(none|no|0)$/i.test(lines[0]?.trim() ?? ''))
    return answer([], 'none')
  if (lines.length < entry.least) return refused(`At least one row is needed: ${columnNames(entry)}.`)
  if (lines.length > entry.most)
    return refused(`${lines.length} rows are more than ${entry.most}. Keep those that differ most.`)
  const rows = lines.map((line) => enterRow(line, entry, asking))
  const bad = rows.findIndex((r) => r.kind === 'refused')
  const worst = rows[bad]
  if (worst?.kind === 'refused') return refused(lines.length > 1 ? `Row ${bad + 1}: ${worst.says}` : worst.says)
  const values = rows.map((r) => (r.kind === 'refused' ? undefined : r.value))
  const echo = `${rows.length} ${rows.length === 1 ? 'row' : 'rows'}`
  const slip = rows.find((r) => r.kind === 'held')
  return slip?.kind === 'held' ? held(values, echo, slip.says) : answer(values, echo)
}

/** One row: a cell for each column in order, `-` for a cell not measured, words for choices by a beginning. */
export function enterRow(typed: string, entry: TableEntry, asking: Asking): Entered {
  const line = plainMarks(parted(typed))
  const cells: Record<string, number | string> = {}
  let at = 0
  let slip: string | undefined
  for (const column of entry.columns) {
    const cell = readCell(line, afterGap(line, at), column, asking)
    if (cell.kind === 'refused') return refused(cell.says)
    if (cell.kind === 'short') return missingCells(entry, column, line)
    at = cell.end
    slip ??= cell.slip
    if (cell.value !== undefined) cells[column.id] = cell.value
    else if (column.needed) return refused(`${column.says}: a figure is needed here, a dash cannot stand for it.`)
    if (afterGap(line, at) >= line.length && restIsOptional(entry, column)) break
  }
  const over = line.slice(afterGap(line, at))
  if (over !== '') return refused(`"${over.slice(0, 40)}" is one more than the columns: ${columnNames(entry)}.`)
  const echo = showRow(cells, entry.columns, asking.show)
  const doubt = slip ?? commaDoubt(line, asking)
  return doubt === undefined ? answer(cells, echo) : held(cells, echo, doubt)
}

/** Inches are written with fractions: a comma inside a figure of an inch job was probably meant to part two. */
function commaDoubt(line: string, { show }: Asking): string | undefined {
  const joined = show.units === 'inch' ? joinedComma(line).trim() : ''
  return joined === '' ? undefined : `${joined} Enter keeps it.`
}

type CellRead =
  | { readonly kind: 'cell'; readonly value: number | string | undefined; readonly end: number; readonly slip?: string }
  | { readonly kind: 'refused'; readonly says: string }
  /** The line ends before this column. */
  | { readonly kind: 'short' }

function readCell(line: string, at: number, column: Column, asking: Asking): CellRead {
  if (at >= line.length) return { kind: 'short' }
  if (/^-(?=[\s;•|,]|$)/.test(line.slice(at, at + 2))) return { kind: 'cell', value: undefined, end: at + 1 }
  switch (column.entry.kind) {
    case 'choice':
      return readWord(line, at, column)
    case 'count':
      return readCount(line, at, column, column.entry)
    case 'length':
      return readFigure(line, at, column, column.entry.signed ? SIGNED : PLAIN, asking)
  }
}

function readCount(
  line: string,
  at: number,
  column: Column,
  { least, most }: { readonly least: number; readonly most: number },
): CellRead {
  const [word = ''] = line.slice(at).split(/[\s,;•|]+/)
  const value = /^\d{1,9}$/.test(word) ? Number(word) : undefined
  return value !== undefined && value >= least && value <= most
    ? { kind: 'cell', value, end: at + word.length }
    : {
        kind: 'refused',
        says: `${column.says}: "${word.slice(0, 40)}" is not a whole number from ${least} to ${most}.`,
      }
}

function readFigure(line: string, at: number, column: Column, range: LengthRange, asking: Asking): CellRead {
  const found = scanLength(line, at, asking.show.units)
  const word = line.slice(at).split(' ')[0] ?? ''
  if (found?.kind === 'not-read') return { kind: 'refused', says: `${column.says}: ${found.says}${joinedComma(word)}` }
  if (found === undefined || !endsHere(line, found.end))
    return { kind: 'refused', says: `${column.says}: "${word.slice(0, 40)}" is not a length.${joinedComma(word)}` }
  const slip = outsideRange(found, range, { ...asking, question: namedAs(column, asking) })
  if (slip?.kind === 'refused') return slip
  return slip === undefined
    ? { kind: 'cell', value: found.value, end: found.end }
    : { kind: 'cell', value: slip.value, end: found.end, slip: `${column.says}: ${slip.says}` }
}

const namedAs = (column: Column, asking: Asking) => ({
  ...asking.question,
  field: { ...asking.question.field, short: column.says },
})

/** A word of a choice column; the longest that fits, so that `cut through` is one word. */
function readWord(line: string, at: number, column: Column): CellRead {
  const options = column.entry.kind === 'choice' ? column.entry.options : []
  const [one = '', two = ''] = line.slice(at, at + 80).split(/[\s,;]+/)
  // A figure behind a word is the next column's.
  const both = /^\p{L}/u.test(two) ? matchOption(`${one} ${two}`, options) : undefined
  if (both?.kind === 'one')
    return { kind: 'cell', value: both.option.id, end: line.indexOf(two, at + one.length) + two.length }
  const found = matchOption(one, options)
  if (found.kind === 'one') return { kind: 'cell', value: found.option.id, end: at + one.length }
  const list = options.map((o) => o.says).join(', ')
  const lead = found.kind === 'several' ? `"${one}" fits several` : `"${one.slice(0, 40)}" is not one of them`
  return { kind: 'refused', says: `${column.says}: ${lead}. Type ${list}.` }
}

const restIsOptional = (entry: TableEntry, from: Column): boolean =>
  entry.columns.slice(entry.columns.indexOf(from) + 1).every((c) => !c.needed)

function missingCells(entry: TableEntry, from: Column, line: string): Entered {
  const rest = entry.columns.slice(entry.columns.indexOf(from)).filter((c) => c.needed)
  return refused(`The row ends before: ${rest.map((c) => c.says).join(', ')}.${joinedFigures(line)}`)
}

const columnNames = (entry: TableEntry): string => entry.columns.map((c) => c.says).join(', ')
