/** How a figure in a cell is shown. */
export type CellFormat = 'money' | 'percent' | 'figure' | 'count'

/** A formula and what it gives: the result comes from the plan, because office programs show it before they reckon. */
export interface Live {
  readonly formula: string
  readonly result: number
  readonly format: CellFormat
  readonly bold?: boolean
}

export interface Figure {
  readonly value: number
  readonly format: CellFormat
}

export interface Bold {
  readonly bold: string
}

/** Text is always text: a leading = or + stays a letter. */
export type BookCell = string | null | Figure | Live | Bold

export interface BookColumn {
  readonly head: string
  /** Characters. */
  readonly width: number
}

/** One sheet: row 1 is its head, frozen and repeated on paper; rows begin at 2. */
export interface BookSheet {
  readonly name: string
  readonly columns: readonly BookColumn[]
  readonly rows: readonly (readonly BookCell[])[]
  /** Columns at the left that stay in sight. */
  readonly frozenColumns: number
  readonly tall?: boolean
}

/** A workbook before it is bytes. */
export interface Book {
  readonly title: string
  readonly paper: 'letter' | 'a4'
  readonly sheets: readonly BookSheet[]
}

/** The first row under the head. */
export const FIRST_ROW = 2

const LONGEST_NAME = 31

/** Only letters, figures with their point, and spaces, at most 31, and each name once: other signs break printing in some programs. */
export function sheetNames(wanted: readonly string[]): readonly string[] {
  const given: string[] = []
  for (const name of wanted) {
    const plain = name
      .normalize('NFC')
      .replace(/(?:(\d+) )?(\d+)\/(\d+)/g, asDecimal)
      .replace(/[^\p{L}\p{N}.]+|(?<!\d)\.|\.(?!\d)/gu, ' ')
      .trim()
    const base = plain === '' ? 'Sheet' : plain
    let unique = base.slice(0, LONGEST_NAME).trim()
    for (let n = 2; given.some((g) => g.toLowerCase() === unique.toLowerCase()); n += 1) {
      unique = `${base.slice(0, LONGEST_NAME - String(n).length - 1).trim()} ${n}`
    }
    given.push(unique)
  }
  return given
}

/** `1 7/16` reads `1.438` where no stroke may stand. */
const asDecimal = (_text: string, whole: string | undefined, top: string, bottom: string): string =>
  String(Math.round((Number(whole ?? 0) + Number(top) / Math.max(1, Number(bottom))) * 1000) / 1000)
