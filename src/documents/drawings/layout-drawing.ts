import {
  type Drawing,
  type DrawingBox,
  dimensionChain,
  hatch,
  label,
  rectangle,
  type Shape,
} from '../../geometry/drawing.ts'
import { type Length, over, sum, ZERO } from '../../units/length.ts'
import type { HelperLaid, HelperLayout } from '../audience-fields.ts'
import { HOLD, isHeld } from '../held.ts'
import type { PlainShow } from '../job-words.ts'

interface Lying {
  readonly x: Length
  readonly y: Length
  readonly length: Length
  readonly width: Length
}

/** A sheet as it is sawn: parts with mark and saw size, waste hatched, kept offcuts sized. */
export function layoutDrawing(layout: HelperLayout, show: PlainShow): Drawing {
  const { sheetLength, sheetWidth, name } = layout.material
  const sheet: DrawingBox = { x: ZERO, z: ZERO, width: sheetLength, height: sheetWidth }
  return {
    says: `Sheet ${layout.number}, ${name}: ${layout.laid.map((laid) => laid.part.mark).join(', ')}.`,
    frame: sheet,
    shapes: [
      ...layout.waste.map((w) => hatch(lying(w), 'waste')),
      ...layout.keep.flatMap((k) => [
        rectangle(lying(k), 'hidden'),
        label(lying(k), 'keep', ...(layout.state === 'hold' ? [] : [sizeWords(k, show)])),
      ]),
      ...layout.laid.flatMap((laid) => partShapes(laid, show)),
      rectangle(sheet, 'outline'),
      ...tagShapes(layout),
      ...edgeChains(layout, show),
    ],
  }
}

const lying = ({ x, y, length, width }: Lying): DrawingBox => ({ x, z: y, width: length, height: width })

const sizeWords = ({ length, width }: Pick<Lying, 'length' | 'width'>, show: PlainShow): string =>
  `${show.length(length)} × ${show.length(width)}`

function partShapes(laid: HelperLaid, show: PlainShow): readonly Shape[] {
  const box = lying(laid)
  const { mark, piece } = laid.part
  const size = isHeld(laid.part) ? HOLD : sizeWords(laid, show)
  return [rectangle(box, 'edge'), label(box, mark, size, ...(piece === undefined ? [] : [piece]))]
}

/** The letter of a strip stands outside at its end, those of neighbours in two columns; a piece within a strip has it inside. */
function tagShapes(layout: HelperLayout): readonly Shape[] {
  const strips = layout.named.filter((piece) => piece.name.length === 1)
  const sideBySide = new Set(strips.map((strip) => strip.x)).size > 1
  return layout.named.flatMap((piece, at): readonly Shape[] => {
    const { name, x, y, length, width } = piece
    const tag = { kind: 'tag', says: name, room: ZERO } as const
    if (!strips.includes(piece))
      return roomy(piece, layout) ? [{ ...tag, at: { x, z: sum(y, width) }, room: length, stands: 'inside' }] : []
    if (sideBySide) return [{ ...tag, at: { x: sum(x, over(length, 2)), z: ZERO }, stands: 'under' }]
    return [{ ...tag, at: { x: ZERO, z: sum(y, over(width, 2)) }, stands: at % 2 === 0 ? 'near' : 'far' }]
  })
}

/** A smaller piece than this share of the sheet has no room for its letters beside the mark: it is told by its size. */
const ROOMY = 10
const roomy = ({ length, width }: Lying, { material }: HelperLayout): boolean =>
  length * ROOMY >= material.sheetLength && width * ROOMY >= material.sheetWidth

/** The sheet's own size, to see which way it lies. */
const edgeChains = ({ material }: HelperLayout, show: PlainShow): readonly Shape[] => [
  ...dimensionChain({ side: 'above', row: 1, stations: [ZERO, material.sheetLength] }, show.length),
  ...dimensionChain({ side: 'right', row: 1, stations: [ZERO, sum(ZERO, material.sheetWidth)] }, show.length),
]
