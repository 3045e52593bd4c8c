import { dimensionRows, type Shape } from '../../geometry/drawing.ts'
import { DIMENSION_COLUMN, DIMENSION_ROW } from '../../geometry/scale.ts'
import { inMillimetres, type Length } from '../../units/length.ts'
import type { Block } from '../block.ts'
import type { Bench } from './block-pieces.ts'
import { drawDimensions } from './draw-dimension.ts'
import { drawHatch } from './draw-hatch.ts'
import { drawLabels } from './draw-label.ts'
import { drawTags } from './draw-tag.ts'
import { MM, TYPE, WEIGHT } from './page-look.ts'
import type { PaperPen } from './paper-pen.ts'
import type { Piece } from './piece.ts'

type DrawingBlock = Extract<Block, { readonly kind: 'drawing' }>

/** True size to paper: points from the page's upper left corner. */
export interface OnPaper {
  readonly x: (x: Length) => number
  readonly y: (z: Length) => number
  readonly length: (l: Length) => number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** A drawing at its scale, exactly: a millimetre of paper is `ratio` millimetres of the thing. */
export function drawingPiece({ drawing, scale }: DrawingBlock, bench: Bench, group: object | undefined): Piece {
  const { pen, tags, area } = bench
  const onPaper = (l: Length) => (inMillimetres(l) / scale.ratio) * MM
  const rows = (side: 'above' | 'below') => dimensionRows(drawing, side) * DIMENSION_ROW * MM
  const left = area.left + dimensionRows(drawing, 'left') * DIMENSION_COLUMN * MM
  const under = drawing.shapes.some((s) => s.kind === 'tag' && s.stands === 'under') ? TYPE.small.line : 0
  const height = onPaper(drawing.frame.height) + rows('above') + rows('below') + under + 4
  const draw = (y: number) => {
    const top = y + rows('above')
    const bottom = top + onPaper(drawing.frame.height)
    const place: OnPaper = {
      x: (x) => left + onPaper((x - drawing.frame.x) as Length),
      y: (z) => bottom - onPaper((z - drawing.frame.z) as Length),
      length: onPaper,
      left,
      right: left + onPaper(drawing.frame.width),
      top,
      bottom,
    }
    tags.figure(drawing.says, () => {
      for (const shape of drawing.shapes) drawShape(shape, place, pen)
      const marks = drawLabels(
        drawing.shapes.filter((shape) => shape.kind === 'label'),
        place,
        pen,
      )
      drawTags(
        drawing.shapes.filter((shape) => shape.kind === 'tag'),
        { place, pen, taken: marks },
      )
      drawDimensions(
        drawing.shapes.filter((shape) => shape.kind === 'dimension'),
        place,
        pen,
      )
    })
  }
  return { height, before: 6, group, draw }
}

const PENS = {
  outline: WEIGHT.outline,
  edge: WEIGHT.edge,
  thin: WEIGHT.dimension,
  hidden: WEIGHT.dimension,
} as const

function drawShape(shape: Shape, place: OnPaper, pen: PaperPen): void {
  const { doc } = pen
  switch (shape.kind) {
    case 'line':
      doc.lineWidth(PENS[shape.pen])
      if (shape.pen === 'hidden') doc.dash(3, { space: 2 })
      doc.moveTo(place.x(shape.from.x), place.y(shape.from.z)).lineTo(place.x(shape.to.x), place.y(shape.to.z))
      doc.stroke('black').undash()
      return
    case 'rectangle': {
      const { x, z, width, height } = shape.box
      doc.lineWidth(PENS[shape.pen])
      if (shape.pen === 'hidden') doc.dash(3, { space: 2 })
      doc.rect(place.x(x), place.y((z + height) as Length), place.length(width), place.length(height))
      doc.stroke('black').undash()
      return
    }
    case 'hatch':
      drawHatch(shape, place, doc)
      return
    case 'dimension':
    case 'label':
    case 'tag':
      // Drawn together, when all lines are there: their words make way for each other.
      return
    case 'text':
      pen.write(
        shape.says,
        { x: place.x(shape.at.x), y: place.y(shape.at.z) - TYPE.small.line, width: 300 },
        { type: 'small' },
      )
  }
}
