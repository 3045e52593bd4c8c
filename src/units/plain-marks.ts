const FRACTION_GLYPHS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
}

/**
 * Typed text with the marks a keyboard has: word processors and phones put curly quotes, prime marks, thin spaces and
 * fraction glyphs in their place. Lower case, because unit words are read in any case.
 */
export function plainMarks(typed: string): string {
  return typed
    .replace(/[\u00A0\u2000-\u200A\u202F\u205F\u3000\t]/g, ' ')
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${FRACTION_GLYPHS[glyph] ?? glyph}`)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2018\u2019\u201B\u2032\u00B4`]/g, "'")
    .replace(/[\u201C\u201D\u2033\u02BA]|''/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .toLowerCase()
    .trim()
}
