import type { Shape } from '../../geometry/drawing.ts'
import { DIMENSION_COLUMN, DIMENSION_ROW } from '../../geometry/scale.ts'
import type { OnPaper } from './drawing-piece.ts'
import { MM, TYPE, WEIGHT } from './page-look.ts'
import type { PaperPen, PdfDocument } from './paper-pen.ts'

type Dimension = Extract<Shape, { readonly kind: 'dimension' }>

const TICK = 1.4 * MM
const OVERSHOOT = 1.2 * MM

/** A dimension line with 45° ticks; its figure is never turned, and steps out of a space too small for it. */
export function drawDimension(shape: Dimension, place: OnPaper, pen: PaperPen): void {
  if (shape.side === 'below' || shape.side === 'above') alongThePage(shape, place, pen)
  else upThePage(shape, place, pen)
}

function alongThePage(shape: Dimension, place: OnPaper, pen: PaperPen): void {
  const down = shape.side === 'below' ? 1 : -1
  const edge = shape.side === 'below' ? place.bottom : place.top
  const y = edge + down * (shape.row * DIMENSION_ROW - 1.5) * MM
  const [x1, x2] = [place.x(shape.from), place.x(shape.to)]
  pen.doc.lineWidth(WEIGHT.dimension)
  for (const x of [x1, x2]) {
    pen.doc.moveTo(x, edge + down * MM).lineTo(x, y + down * OVERSHOOT)
    tick(pen.doc, x, y)
  }
  pen.doc.moveTo(x1, y).lineTo(x2, y).stroke('black')
  const wide = pen.widthOf(shape.says, { type: 'small' })
  // A figure wider than its space steps to the other side of the line, clear of its neighbours.
  const fits = wide <= Math.abs(x2 - x1) - 2
  const at = (shape.side === 'below') === fits ? y - TYPE.small.line + 0.5 : y + 1.5
  pen.write(shape.says, { x: (x1 + x2) / 2 - wide / 2 - 1, y: at, width: wide + 2 }, { type: 'small', align: 'center' })
}

function upThePage(shape: Dimension, place: OnPaper, pen: PaperPen): void {
  const out = shape.side === 'right' ? 1 : -1
  const edge = shape.side === 'right' ? place.right : place.left
  const x = edge + out * ((shape.row - 1) * DIMENSION_COLUMN + 2) * MM
  const [y1, y2] = [place.y(shape.from), place.y(shape.to)]
  pen.doc.lineWidth(WEIGHT.dimension)
  for (const y of [y1, y2]) {
    pen.doc.moveTo(edge + out * MM, y).lineTo(x + out * OVERSHOOT, y)
    tick(pen.doc, x, y)
  }
  pen.doc.moveTo(x, y1).lineTo(x, y2).stroke('black')
  const wide = pen.widthOf(shape.says, { type: 'small' }) + 2
  const at = shape.side === 'right' ? x + 2 : x - wide - 2
  pen.write(shape.says, { x: at, y: (y1 + y2) / 2 - TYPE.small.line / 2, width: wide }, { type: 'small' })
}

const tick = (doc: PdfDocument, x: number, y: number): void => {
  doc.moveTo(x - TICK / 2, y + TICK / 2).lineTo(x + TICK / 2, y - TICK / 2)
}
