import type { Shape } from '../../geometry/drawing.ts'
import { DIMENSION_COLUMN, DIMENSION_ROW } from '../../geometry/scale.ts'
import type { OnPaper } from './drawing-piece.ts'
import { MM, TYPE, WEIGHT } from './page-look.ts'
import type { PaperPen, PdfDocument } from './paper-pen.ts'
import { type Box, shiftedClear } from './spread-text.ts'

export type Dimension = Extract<Shape, { readonly kind: 'dimension' }>

const TICK = 1.4 * MM
const OVERSHOOT = 1.2 * MM

/**
 * Dimension lines with 45° ticks, then their figures on white over all lines. A figure is never turned; one wider than
 * its space steps to the free side of its line and aside from its neighbours.
 */
export function drawDimensions(dimensions: readonly Dimension[], place: OnPaper, pen: PaperPen): void {
  for (const dimension of dimensions) {
    if (isLevel(dimension)) lineAlong(dimension, place, pen.doc)
    else lineUp(dimension, place, pen.doc)
  }
  const taken: Box[] = []
  // Figures that fit their space first: the others make way.
  for (const dimension of dimensions.toSorted((a, b) => Number(steps(a, place, pen)) - Number(steps(b, place, pen)))) {
    const box = figureBox(dimension, place, pen, taken)
    taken.push(box)
    pen.doc.rect(box.x, box.y + 1, box.width, box.height - 2).fill('white')
    pen.doc.fillColor('black')
    pen.write(dimension.says, { x: box.x + 1, y: box.y, width: box.width }, { type: 'small' })
  }
}

const isLevel = ({ side }: Dimension): boolean => side === 'below' || side === 'above'

/** Where the line of a row along the page stands. */
function levelOf({ side, row }: Dimension, place: OnPaper): number {
  const [edge, down] = side === 'below' ? [place.bottom, 1] : [place.top, -1]
  return edge + down * (row * DIMENSION_ROW - 1.5) * MM
}

/** Where the line of a column up the page stands. */
function columnOf({ side, row }: Dimension, place: OnPaper): number {
  const [edge, out] = side === 'right' ? [place.right, 1] : [place.left, -1]
  return edge + out * ((row - 1) * DIMENSION_COLUMN + 2) * MM
}

function lineAlong(dimension: Dimension, place: OnPaper, doc: PdfDocument): void {
  const down = dimension.side === 'below' ? 1 : -1
  const edge = dimension.side === 'below' ? place.bottom : place.top
  const y = levelOf(dimension, place)
  const [x1, x2] = [place.x(dimension.from), place.x(dimension.to)]
  doc.lineWidth(WEIGHT.dimension)
  for (const x of [x1, x2]) {
    doc.moveTo(x, edge + down * MM).lineTo(x, y + down * OVERSHOOT)
    tick(doc, x, y)
  }
  doc.moveTo(x1, y).lineTo(x2, y).stroke('black')
}

function lineUp(dimension: Dimension, place: OnPaper, doc: PdfDocument): void {
  const out = dimension.side === 'right' ? 1 : -1
  const edge = dimension.side === 'right' ? place.right : place.left
  const x = columnOf(dimension, place)
  const [y1, y2] = [place.y(dimension.from), place.y(dimension.to)]
  doc.lineWidth(WEIGHT.dimension)
  for (const y of [y1, y2]) {
    doc.moveTo(edge + out * MM, y).lineTo(x + out * OVERSHOOT, y)
    tick(doc, x, y)
  }
  doc.moveTo(x, y1).lineTo(x, y2).stroke('black')
}

const tick = (doc: PdfDocument, x: number, y: number): void => {
  doc.moveTo(x - TICK / 2, y + TICK / 2).lineTo(x + TICK / 2, y - TICK / 2)
}

const widthOf = ({ says }: Dimension, pen: PaperPen): number => pen.widthOf(says, { type: 'small' }) + 2

/** Whether a figure is too large for the space between its ticks. */
function steps(dimension: Dimension, place: OnPaper, pen: PaperPen): boolean {
  const room = place.length(dimension.to) - place.length(dimension.from)
  return isLevel(dimension) ? widthOf(dimension, pen) > room : TYPE.small.line > room
}

function figureBox(dimension: Dimension, place: OnPaper, pen: PaperPen, taken: readonly Box[]): Box {
  const width = widthOf(dimension, pen)
  const height = TYPE.small.line
  if (!isLevel(dimension)) {
    const x = columnOf(dimension, place)
    const middle = (place.y(dimension.from) + place.y(dimension.to)) / 2
    const box = { x: dimension.side === 'right' ? x + 3 : x - width - 3, y: middle - height / 2, width, height }
    return shiftedClear(box, taken, 'y')
  }
  const y = levelOf(dimension, place)
  const middle = (place.x(dimension.from) + place.x(dimension.to)) / 2
  // Over the line where it fits; a row below the drawing has its free side under the line, a row above it over the line.
  const over = (dimension.side === 'below') !== steps(dimension, place, pen)
  const box = { x: middle - width / 2, y: over ? y - height + 0.5 : y + 1.5, width, height }
  return shiftedClear(box, taken, 'x')
}
