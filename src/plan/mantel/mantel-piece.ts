import { mantelThickness } from '../../job/chapters/mantel.ts'
import type { QuestionKey } from '../../things/field.ts'
import type { Part, SizesFrom } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import { type MadePart, madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf, softwood } from '../materials.ts'
import type { BreastWall } from '../survey/survey.ts'

/** What one piece of a mantel says of itself; the rest is the same for all of them. */
export type Piece = Omit<
  MadePart,
  'mark' | 'bay' | 'goesTo' | 'material' | 'shows' | 'waitsFor' | 'from' | 'piece' | 'id'
> & {
  readonly piece: string
  readonly shows?: string
  readonly from: Pick<SizesFrom, 'length' | 'width'> & Partial<SizesFrom>
}

/** The glued thing a piece belongs to: the beam is `E1`, its legs `E2` and `E3`. */
export interface Assembly {
  readonly wall: BreastWall
  readonly number: number
  /** Start of the ids: `b/mantel`. */
  readonly id: string
  readonly waitsFor: readonly QuestionKey[]
}

/** A piece cut from the mantel's panel. */
export const panelPiece = (of: Assembly, piece: Piece): Part =>
  pieceOf(of, mdf(piece.thickness), { ...piece, from: { thickness: mantelThickness, ...piece.from } })

/** A piece of softwood that holds it, not seen. */
export const stickPiece = (
  of: Assembly,
  piece: Piece & { readonly section: { readonly width: Length; readonly thickness: Length } },
): Part => {
  const { section, ...rest } = piece
  return { ...pieceOf(of, softwood(section.width, section.thickness), rest), grain: 'length' }
}

const pieceOf = ({ wall, number, id, waitsFor }: Assembly, material: string, piece: Piece): Part =>
  madePart({
    shows: '',
    ...piece,
    id: `${id}/${piece.piece}`,
    mark: runPartMark(wall.bay, 'E', number),
    bay: wall.bay.id,
    goesTo: `${wall.bay.name}, mantel`,
    material,
    waitsFor,
    from: { thickness: { id: 'mantel.ledger-thick' }, ...piece.from },
  })
