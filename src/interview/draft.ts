import type { QuestionKey } from '../things/field.ts'
import { EMPTY_LINE, type Line, lineOf } from './line.ts'

/** What is being typed at a question. A table keeps one text a row; its current row is the line. */
export interface Draft {
  readonly line: Line
  readonly rows: readonly string[]
  /** Row being typed; `rows.length` = a new one. */
  readonly row: number
}

export const EMPTY_DRAFT: Draft = { line: EMPTY_LINE, rows: [], row: 0 }

/** A table's draft from the rows it has: the line stands on a new row. */
export const draftOfRows = (rows: readonly string[]): Draft => ({ line: EMPTY_LINE, rows, row: rows.length })

/** The draft standing on another row; what was typed in this one is kept. */
export function draftAtRow(draft: Draft, row: number): Draft {
  const rows = rowsWithLine(draft)
  const to = Math.max(0, Math.min(row, rows.length))
  return { rows, row: to, line: lineOf(rows[to] ?? '') }
}

/** All rows, the one being typed among them; an emptied row falls out. */
export function rowsWithLine({ line, rows, row }: Draft): readonly string[] {
  const text = line.text.trim()
  return [...rows.slice(0, row), ...(text === '' ? [] : [line.text]), ...rows.slice(row + 1)]
}

export type Drafts = Readonly<Record<QuestionKey | string, Draft>>

export function withoutDraft(drafts: Drafts, key: string): Drafts {
  const { [key]: _gone, ...rest } = drafts
  return rest
}
