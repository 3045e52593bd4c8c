import type { Shape } from '../../geometry/drawing.ts'
import type { Length } from '../../units/length.ts'
import type { OnPaper } from './drawing-piece.ts'
import { TYPE } from './page-look.ts'
import type { PaperPen, TextLook } from './paper-pen.ts'
import { type Box, shiftedClear } from './spread-text.ts'

type Label = Extract<Shape, { readonly kind: 'label' }>

/**
 * The mark, then sizes, in the middle of each piece; sizes that do not fit are left out, and a mark alone is shown
 * smaller. A mark wider than its piece moves along the piece until it is clear of the others. All stand on white: a dashed
 * line behind them stops there. Gives where words stand.
 */
export function drawLabels(labels: readonly Label[], place: OnPaper, pen: PaperPen): readonly Box[] {
  const all = labels.flatMap((label) => setOut(label, place, pen))
  const taken: Box[] = []
  for (const { box, lines, fits, along } of all.toSorted((a, b) => Number(b.fits) - Number(a.fits))) {
    const at = fits ? box : shiftedClear(box, taken, along)
    taken.push(at)
    pen.doc
      .rect(at.x + 1, at.y + 1, at.width - 2, at.height - 2)
      .fill('white')
      .fillColor('black')
    let y = at.y
    for (const { text, look } of lines) {
      const wide = pen.widthOf(text, look) + 2
      pen.write(text, { x: at.x + (at.width - wide) / 2, y, width: wide + 1 }, look)
      y += TYPE[look.type].line
    }
  }
  return taken
}

interface SetOut {
  readonly box: Box
  readonly lines: readonly { readonly text: string; readonly look: TextLook }[]
  readonly fits: boolean
  /** The piece's longer way. */
  readonly along: 'x' | 'y'
}

/** The words of one label in the middle of its piece. */
function setOut(shape: Label, place: OnPaper, pen: PaperPen): readonly SetOut[] {
  const width = place.length(shape.box.width) - 3
  const height = place.length(shape.box.height) - 2
  const looks = (i: number): TextLook => (i === 0 ? { type: 'text', bold: true } : { type: 'small' })
  const texts = shape.lines.filter((text, i) => i === 0 || pen.widthOf(text, looks(i)) <= width)
  const fitting = linesThatFit(texts, height)
  const mark = fitting[0]
  if (mark === undefined) return []
  const small = pen.widthOf(mark, looks(0)) > width || height < TYPE.text.line
  const lines = fitting.map((text, i) => ({
    text,
    look: i === 0 && small ? ({ type: 'small', bold: true } as const) : looks(i),
  }))
  const wide = Math.max(...lines.map(({ text, look }) => pen.widthOf(text, look))) + 2
  const high = lines.reduce((total, { look }) => total + TYPE[look.type].line, 0)
  const box = {
    x: place.x(shape.box.x) + place.length(shape.box.width) / 2 - wide / 2,
    y: place.y((shape.box.z + shape.box.height) as Length) + (place.length(shape.box.height) - high) / 2,
    width: wide,
    height: high,
  }
  return [{ box, lines, fits: wide <= width + 3, along: width > height ? 'x' : 'y' }]
}

/** The mark always, then as many lines as the height holds. */
function linesThatFit(lines: readonly string[], height: number): readonly string[] {
  const room = Math.floor((height - TYPE.text.line) / TYPE.small.line)
  return lines.slice(0, 1 + Math.max(0, room))
}
