/** A line being typed: its text and the place of the cursor, counted in what the eye takes for one letter. */
export interface Line {
  readonly text: string
  readonly cursor: number
}

export type LineEdit =
  | { readonly kind: 'insert'; readonly text: string }
  | { readonly kind: 'backspace' | 'delete' | 'left' | 'right' | 'start' | 'end' | 'clear' | 'clear-word' }

export const EMPTY_LINE: Line = { text: '', cursor: 0 }

/** Longest line kept while typing; a longer paste is kept to the end of it, and refused on Enter with the limit. */
const LONGEST_KEPT = 5000

export const lineOf = (text: string): Line => ({ text, cursor: letters(text).length })

/** The line after one edit. */
export function editLine(line: Line, edit: LineEdit): Line {
  const all = letters(line.text)
  const before = all.slice(0, line.cursor)
  const after = all.slice(line.cursor)
  switch (edit.kind) {
    case 'insert':
      return joined([...before, ...letters(edit.text.slice(0, LONGEST_KEPT - line.text.length))], after)
    case 'backspace':
      return joined(before.slice(0, -1), after)
    case 'delete':
      return joined(before, after.slice(1))
    case 'left':
      return { ...line, cursor: Math.max(0, line.cursor - 1) }
    case 'right':
      return { ...line, cursor: Math.min(all.length, line.cursor + 1) }
    case 'start':
      return { ...line, cursor: 0 }
    case 'end':
      return { ...line, cursor: all.length }
    case 'clear':
      return EMPTY_LINE
    case 'clear-word':
      return joined(letters(withoutLastWord(before.join(''))), after)
  }
}

const withoutLastWord = (text: string): string => {
  const trimmed = text.trimEnd()
  return trimmed.slice(0, trimmed.lastIndexOf(' ') + 1)
}

function joined(before: readonly string[], after: readonly string[]): Line {
  const head = before.join('')
  // Joining can melt a letter and a mark into one, so the cursor is counted anew.
  return { text: head + after.join(''), cursor: letters(head).length }
}

const splitter = new Intl.Segmenter('en', { granularity: 'grapheme' })
const letters = (text: string): readonly string[] => [...splitter.segment(text)].map((s) => s.segment)
