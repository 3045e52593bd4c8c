import type { QuestionKey } from '../../things/field.ts'
import type { Ref } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { Mass } from '../../units/mass.ts'
import type { Box } from '../boxes/boxes.ts'

/** What a leaf and a drawer front have in common. x, z = the lower left corner in the bay's own axes. */
export interface Front {
  readonly box: Box
  readonly mark: string
  /** Its pieces carry this id before their own. */
  readonly id: string
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
  readonly thickness: Length
  readonly mass: Mass
  readonly waitsFor: readonly QuestionKey[]
  /** What its width and height were worked out by. */
  readonly from: { readonly width: Ref; readonly height: Ref }
}

/** A handle hole of a leaf, from the edge away from its hinges and from its top. */
export interface LeafHole {
  readonly fromHandleEdge: Length
  readonly fromTop: Length
}

/** A handle hole of a drawer front, from its left edge and its top. */
export interface DrawerHole {
  readonly fromLeft: Length
  readonly fromTop: Length
}

/** Whether a part is this front or one of its pieces. */
export const isOfFront = (part: Pick<Part, 'id'>, front: Pick<Front, 'id'>): boolean =>
  part.id === front.id || part.id.startsWith(`${front.id}/`)
