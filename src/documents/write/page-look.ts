/** Points in a millimetre. */
export const MM = 72 / 25.4

/** Type sizes in points, with their line heights: no others are used, none smaller. */
export const TYPE = {
  title: { size: 22, line: 26 },
  heading: { size: 14, line: 18 },
  figure: { size: 12, line: 16 },
  text: { size: 10.5, line: 14 },
  small: { size: 8.5, line: 11 },
} as const
export type TypeSize = keyof typeof TYPE

/** Line weights in points. */
export const WEIGHT = { table: 0.25, dimension: 0.35, heading: 0.5, edge: 0.7, outline: 1 } as const

/** The narrow column of words, the gap, and the black bar in the margin, mm. */
export const WORD_WIDTH = 32
export const WORD_GAP = 4
export const BAR_WIDTH = 1.5
/** A tick box is big enough for a glove and a thick pencil, mm. */
export const TICK_SIDE = 5

/** One live area that both paper sizes hold: left margin for punch holes. Millimetres. */
const LIVE = { upright: { width: 178, height: 245 }, landscape: { width: 247, height: 170 } } as const
const MARGIN = { left: 20, top: 16 } as const
const SHEETS = { a4: { short: 210, long: 297 }, letter: { short: 215.9, long: 279.4 } } as const

/** Where things may stand on one page, in points from its upper left corner. */
export interface PageArea {
  readonly pageWidth: number
  readonly pageHeight: number
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

export function pageArea(size: 'letter' | 'a4', turned: 'upright' | 'landscape'): PageArea {
  const sheet = SHEETS[size]
  const live = LIVE[turned]
  const [width, height] = turned === 'upright' ? [sheet.short, sheet.long] : [sheet.long, sheet.short]
  return {
    pageWidth: width * MM,
    pageHeight: height * MM,
    left: MARGIN.left * MM,
    top: MARGIN.top * MM,
    width: live.width * MM,
    height: live.height * MM,
  }
}

/** Paper for a drawing in millimetres: the live area less the title. */
export const drawingArea = (turned: 'upright' | 'landscape'): { readonly width: number; readonly height: number } => ({
  width: LIVE[turned].width - 2,
  height: LIVE[turned].height - 20,
})
