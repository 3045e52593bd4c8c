export interface CleanText {
  readonly text: string
  /** What was taken out, in words; undefined when nothing was. */
  readonly note: string | undefined
}

const BELL_OR_STRING_END = '(?:\\u0007|\\u001B\\\\|$)'
/** Escape sequences: strings for the window or clipboard (OSC, DCS …), then those that move or colour, then any two characters. */
const ESCAPES = new RegExp(
  `\\u001B[\\]PX^_][^\\u0007\\u001B]*${BELL_OR_STRING_END}|(?:\\u001B\\[|\\u009B)[0-?]*[ -/]*[@-~]?|\\u001B[^\\[\\]PX^_]?`,
  'g',
)
const LINE_ENDS = /[\r\n\t\u2028\u2029]+/g
const CONTROLS = /[\u0000-\u001F\u007F-\u009F]/g
/** Marks that reorder or hide text (the trick of CVE-2021-42574), and the byte-order mark. */
const BIDI = /[\u061C\u200B\u200E\u200F\u202A-\u202E\u2060-\u2064\u2066-\u2069\uFEFF]/g
const LONE_SURROGATES = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g

/** Text without control characters, escape sequences and marks that reorder it; what was taken out is said. */
export function cleanText(typed: string): CleanText {
  const lines = typed.replace(ESCAPES, '').replace(LINE_ENDS, ' ')
  const text = lines.replace(CONTROLS, '').replace(BIDI, '').replace(LONE_SURROGATES, '').trim()
  const taken = typed.replace(LINE_ENDS, ' ').trim() !== text
  return { text, note: taken ? 'Control characters were taken out.' : undefined }
}
