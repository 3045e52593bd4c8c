import type { Shape } from '../../geometry/drawing.ts'
import type { Length } from '../../units/length.ts'
import type { OnPaper } from './drawing-piece.ts'
import { TYPE } from './page-look.ts'
import type { PaperPen, TextLook } from './paper-pen.ts'

type Label = Extract<Shape, { readonly kind: 'label' }>

/** The mark, then sizes, in the middle of a piece; what does not fit is left out, and a mark alone is shown smaller. */
export function drawLabel(shape: Label, place: OnPaper, pen: PaperPen): void {
  const width = place.length(shape.box.width) - 3
  const height = place.length(shape.box.height) - 2
  const looks = (i: number): TextLook => (i === 0 ? { type: 'text', bold: true } : { type: 'small' })
  const lines = shape.lines.filter((text, i) => i === 0 || pen.widthOf(text, looks(i)) <= width)
  const fitting = linesThatFit(lines, height)
  const mark = fitting[0]
  if (mark === undefined) return
  const small = pen.widthOf(mark, looks(0)) > width || height < TYPE.text.line
  const lookOf = (i: number): TextLook => (i === 0 && small ? { type: 'small', bold: true } : looks(i))
  const total = fitting.reduce((sum, _, i) => sum + TYPE[lookOf(i).type].line, 0)
  const centre = place.x(shape.box.x) + place.length(shape.box.width) / 2
  let y = place.y((shape.box.z + shape.box.height) as Length) + (place.length(shape.box.height) - total) / 2
  for (const [i, text] of fitting.entries()) {
    const wide = pen.widthOf(text, lookOf(i)) + 2
    pen.write(text, { x: centre - wide / 2, y, width: wide + 1 }, lookOf(i))
    y += TYPE[lookOf(i).type].line
  }
}

/** The mark always, then as many lines as the height holds. */
function linesThatFit(lines: readonly string[], height: number): readonly string[] {
  const room = Math.floor((height - TYPE.text.line) / TYPE.small.line)
  return lines.slice(0, 1 + Math.max(0, room))
}
