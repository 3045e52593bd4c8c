import type { FrontKind, LeafPiece, LeafSize } from '../../kinds/front/contract.ts'
import type { Part } from '../../things/part.ts'
import { type Length, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { mdf } from '../materials.ts'
import type { Front } from './front.ts'

/** What is said of a front besides its sizes. */
export interface FrontWords {
  readonly name: string
  readonly goesTo: string
  /** Drilling of one of its pieces, one sentence each. */
  readonly drilling: (piece: LeafPiece) => readonly string[]
}

/** How the front is made: its kind, and the width of its frame. */
export interface FrontMake {
  readonly kind: FrontKind
  readonly frame: Length
}

/** The pieces of one front as parts; they share its mark. Both faces and all edges are coated alike, or it warps. */
export function frontParts(context: PlanContext, make: FrontMake, front: Front, words: FrontWords): readonly Part[] {
  const { width, height, thickness, from } = front
  const size = { width, height, thickness, from, frame: make.frame, figures: context.figures }
  return piecesThatAre(make.kind, size).map((piece) => piecePart(context, front, piece, words))
}

/** The pieces of a front; a frame wider than its front leaves none for a panel, which a stop says. */
export const piecesThatAre = (kind: FrontKind, size: LeafSize): readonly LeafPiece[] =>
  kind.pieces(size).filter(({ length, width }) => length > 0 && width > 0)

function piecePart(context: PlanContext, front: Front, piece: LeafPiece, words: FrontWords): Part {
  const { show } = context
  const { run } = front.box
  const upright = piece.lies === 'upright'
  return madePart({
    id: piece.id === 'blank' ? front.id : `${front.id}/${piece.id}`,
    mark: front.mark,
    ...(piece.piece === undefined ? {} : { piece: piece.piece }),
    name: piece.piece === undefined ? words.name : `${words.name} ${piece.piece}`,
    bay: run.bay.id,
    goesTo: words.goesTo,
    length: piece.length,
    width: piece.width,
    thickness: piece.thickness,
    roughLength: piece.roughLength,
    leaveLong: piece.leftLong > 0 ? `${show.withUnit(piece.leftLong)} in length, trimmed after glue-up` : '',
    material: mdf(piece.thickness),
    shows: 'both faces, all edges',
    details: [
      ...piece.details.map((d) => (d.length === undefined ? d.says : `${d.says} ${show.withUnit(d.length)}`)),
      ...words.drilling(piece),
    ],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(run.wall.originX, front.x, piece.at.x),
      y: sum(behindFronts(context, front), piece.at.y),
      z: sum(front.z, piece.at.z),
      dx: upright ? piece.width : piece.length,
      dy: piece.thickness,
      dz: upright ? piece.length : piece.width,
    },
    waitsFor: front.waitsFor,
    from: piece.from,
  })
}

/** The plane of the fronts' inner faces, from the back wall: the box's front edges and the bumpers. */
export const behindFronts = ({ figures }: PlanContext, { box }: Pick<Front, 'box'>): Length =>
  sum(box.backGap, box.depth, figures.length('door.bumper'))
