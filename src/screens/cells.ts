const splitter = new Intl.Segmenter('en', { granularity: 'grapheme' })
/** Scripts and signs that take two cells (Unicode Standard Annex 11: wide and fullwidth; emoji drawn as pictures). */
const WIDE =
  /^[\u1100-\u115F\u2E80-\u303E\u3041-\u33FF\u3400-\u4DBF\u4E00-\u9FFF\uA000-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\u{20000}-\u{3FFFD}]|\p{Emoji_Presentation}|\uFE0F/u
const NO_WIDTH = /^[\p{Mark}\u200B-\u200F\u2060\uFEFF]+$/u

/** How many terminal cells a text takes. */
export const cellsOf = (text: string): number =>
  /^[ -~]*$/.test(text) ? text.length : letters(text).reduce((total, letter) => total + widthOf(letter), 0)

/** The beginning of a text that fits into so many cells. */
export function fitCells(text: string, cells: number): string {
  let room = cells
  const kept: string[] = []
  for (const letter of letters(text)) {
    room -= widthOf(letter)
    if (room < 0) break
    kept.push(letter)
  }
  return kept.join('')
}

/** The end of a text that fits into so many cells. */
export function fitEnd(text: string, cells: number): string {
  let room = cells
  const kept: string[] = []
  for (const letter of letters(text).toReversed()) {
    room -= widthOf(letter)
    if (room < 0) break
    kept.unshift(letter)
  }
  return kept.join('')
}

/** Filled up with spaces to so many cells. */
export const padCells = (text: string, cells: number): string => text + ' '.repeat(Math.max(0, cells - cellsOf(text)))

/** Lines of at most so many cells, cut between words; only a word longer than a line is cut inside. */
export function wrapCells(text: string, cells: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ').flatMap((w) => pieces(w, cells))) {
    const longer = line === '' ? word : `${line} ${word}`
    if (cellsOf(longer) <= cells) line = longer
    else {
      lines.push(line)
      line = word
    }
  }
  return [...lines, line]
}

function pieces(word: string, cells: number): readonly string[] {
  if (cellsOf(word) <= cells) return [word]
  const head = fitCells(word, cells) || word
  return [head, ...(head === word ? [] : pieces(word.slice(head.length), cells))]
}

const letters = (text: string): readonly string[] => [...splitter.segment(text)].map((s) => s.segment)
const widthOf = (letter: string): number => (NO_WIDTH.test(letter) ? 0 : WIDE.test(letter) ? 2 : 1)
