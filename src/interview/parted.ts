/** Two spaces or a tab part figures as a comma does: `44  3/16` is two figures, `44 3/16` one. Any text, linear time. */
export const parted = (typed: string): string => typed.trim().replace(/(?<=[^\s,;])(?: {2,}|\t\s*)(?=[^\s,;])/g, ', ')

/** What to say when figures came out wrong and a comma without a space after it was read as a decimal mark; else nothing. */
export function joinedComma(typed: string): string {
  const [joined] = /\d+,\d+/.exec(typed) ?? []
  return joined === undefined
    ? ''
    : ` The comma in ${joined} was read as a decimal mark: put a space after it between two figures, like ${joined.replace(',', ', ')}.`
}

/** Why a line gave fewer figures than were meant, when its marks show it. */
export const joinedFigures = (typed: string): string => joinedComma(typed) || joinedFraction(typed)

/** What to say when a figure is missing and a fraction may have joined the whole number before it; else nothing. */
export const joinedFraction = (typed: string): string =>
  /\d\s+\d+\/\d/.test(typed)
    ? ' A fraction joins the figure before it: put a comma between two figures, like 44, 3/16.'
    : ''
