import { type Drawing, type DrawingBox, dimensionChain, label, rectangle, type Shape } from '../../geometry/drawing.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import type { HelperPart } from '../audience-fields.ts'
import { HOLD, isHeld } from '../held.ts'
import type { PlainShow } from '../job-words.ts'

/** A panel with its holes, each set out from the left and the lower edge. */
export function cutOutDrawing(part: HelperPart, show: PlainShow): Drawing {
  const panel = panelBox(part)
  return {
    says: `${part.mark} seen from ${lies(part) ? 'above' : 'the front'} with ${part.cutOuts.map((cut) => cut.what).join(', ')}.`,
    frame: panel,
    shapes: [
      rectangle(panel, 'outline'),
      ...part.cutOuts.flatMap((cut, i) => holeShapes(cut, i, panel)),
      ...chains(part, panel, show),
    ],
  }
}

/** A panel that lies (a mantel top) is seen from above; one that stands, from the front or from its side. */
export const lies = ({ placement: { dx, dy, dz } }: HelperPart): boolean => dz < dx && dz < dy

function panelBox(part: HelperPart): DrawingBox {
  const { dx, dy, dz } = part.placement
  return lies(part)
    ? { x: ZERO, z: ZERO, width: dx, height: dy }
    : { x: ZERO, z: ZERO, width: longest(dx, dy), height: dz }
}

/** A hole is named by a letter: its words would not fit beside it. */
export const cutOutLetter = (index: number): string => String.fromCharCode('A'.charCodeAt(0) + index)

function holeShapes(cut: HelperPart['cutOuts'][number], index: number, panel: DrawingBox): readonly Shape[] {
  const hole: DrawingBox = { x: cut.x, z: cut.z, width: cut.width, height: cut.height }
  return [rectangle(hole, 'edge'), label({ ...hole, z: letterAt(hole, panel) }, cutOutLetter(index))]
}

/** Above its hole, or under one at the panel’s top. */
const letterAt = ({ z, height }: DrawingBox, panel: DrawingBox): Length =>
  sum(z, height, height) > panel.height ? less(z, height) : sum(z, height)

function chains(part: HelperPart, panel: DrawingBox, show: PlainShow): readonly Shape[] {
  const says = isHeld(part) ? () => HOLD : show.length
  const rows = part.cutOuts.flatMap((cut, i) => [
    ...dimensionChain({ side: 'below', row: i + 1, stations: [ZERO, cut.x, sum(cut.x, cut.width)] }, says),
    ...dimensionChain({ side: 'left', row: i + 1, stations: [ZERO, cut.z, sum(cut.z, cut.height)] }, says),
  ])
  const last = part.cutOuts.length + 1
  return [
    ...rows,
    ...dimensionChain({ side: 'below', row: last, stations: [ZERO, panel.width] }, says),
    ...dimensionChain({ side: 'left', row: last, stations: [ZERO, panel.height] }, says),
  ]
}
