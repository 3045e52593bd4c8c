import type { Shape } from '../../geometry/drawing.ts'
import type { Length } from '../../units/length.ts'
import type { OnPaper } from './drawing-piece.ts'
import { MM, WEIGHT } from './page-look.ts'
import type { PdfDocument } from './paper-pen.ts'

/** Lines at 45°, 2.5 mm apart; fewer on a very large face, so that a page stays small. */
const SPACING = 2.5 * MM
const MOST_LINES = 200

export function drawHatch(shape: Extract<Shape, { readonly kind: 'hatch' }>, place: OnPaper, doc: PdfDocument): void {
  const { x, z, width, height } = shape.box
  const box = {
    x: place.x(x),
    y: place.y((z + height) as Length),
    width: place.length(width),
    height: place.length(height),
  }
  if (box.width <= 0 || box.height <= 0) return
  doc.save().rect(box.x, box.y, box.width, box.height).clip()
  doc.lineWidth(WEIGHT.table)
  const reach = box.width + box.height
  const step = Math.max(SPACING, reach / MOST_LINES)
  for (let s = step; s < reach; s += step) {
    doc.moveTo(box.x + s, box.y).lineTo(box.x + s - box.height, box.y + box.height)
    if (shape.hatch === 'masonry') {
      doc.moveTo(box.x + box.width - s, box.y).lineTo(box.x + box.width - s + box.height, box.y + box.height)
    }
  }
  doc.stroke('black').restore()
}
