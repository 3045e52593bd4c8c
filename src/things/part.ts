import type { Length } from '../units/length.ts'
import type { QuestionKey } from './field.ts'
import type { Ref } from './formula.ts'
import type { MaterialId } from './material.ts'
import type { BayId } from './place.ts'

/** Place and role, stable over revisions: `a/box-1/side-left`. */
export type PartId = string

/** Role letters of part marks (`L2-S1` = left alcove, box 2, side 1), said on the phone as the word. */
export const ROLES = {
  S: 'side',
  T: 'top',
  B: 'bottom',
  K: 'back',
  A: 'loose shelf',
  J: 'partition',
  X: 'fixed shelf',
  D: 'door',
  Y: 'drawer',
  U: 'under-frame',
  P: 'kick plate',
  F: 'wall filler',
  G: 'gable',
  H: 'hollow shelf',
  C: 'shelf cleat',
  E: 'mantel',
  N: 'nailer',
  Z: 'extra piece',
} as const
export type Role = keyof typeof ROLES

/** A box in the wall's own axes: x right from the wall's left end, y out of the back wall, z up from the level line's zero. */
export interface Placement {
  readonly x: Length
  readonly y: Length
  readonly z: Length
  readonly dx: Length
  readonly dy: Length
  readonly dz: Length
}

/** A hole or cut-out, from the part's left edge and lower edge as seen from the front. */
export interface CutOut {
  readonly what: string
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
}

/** Who makes it. Bought parts leave the cut list and stand in that supplier's request. */
export type Supply = 'made' | 'boxes' | 'fronts'

/** Coated faces of one part: `faces` 2, 1 or 0; which surface group (its coating system) it belongs to. */
export interface Coat {
  readonly surface: SurfaceId
  readonly faces: 0 | 1 | 2
}
export type SurfaceId = 'built-in' | 'masonry' | 'wall'

/** Which formula, question or figure each size of a part came from, looked up at the part's own place. */
export interface SizesFrom {
  readonly length: Ref | readonly Ref[]
  readonly width: Ref | readonly Ref[]
  readonly thickness: Ref | readonly Ref[]
  readonly roughLength?: Ref | readonly Ref[]
  readonly roughWidth?: Ref | readonly Ref[]
}

export interface Part {
  readonly id: PartId
  /** `L2-S1`. Pieces glued into one thing share its mark and differ by `piece` (`L-H2 edge`). */
  readonly mark: string
  readonly piece?: string
  readonly name: string
  readonly bay: BayId
  /** In words: `left alcove, box 2, right`. */
  readonly goesTo: string
  readonly quantity: number
  /** Finished size. A tapering part gives its larger end here and the other end in `taper`. */
  readonly length: Length
  readonly width: Length
  readonly thickness: Length
  /** The differing end in words, printed beside the finished size: `front 40 7/8`, `top 1 1/16`. */
  readonly taper?: string
  /** Rough size: equals the finished size where nothing is left long. */
  readonly roughLength: Length
  readonly roughWidth: Length
  /** What stays long for trimming on site, in words; empty when rough = finished. */
  readonly leaveLong: string
  readonly material: MaterialId
  readonly grain: 'none' | 'length'
  /** Faces and edges that are seen, in words: `front edge`. */
  readonly shows: string
  /** Joinery, offsets and set-out beyond the size, one sentence each. */
  readonly details: readonly string[]
  readonly cutOuts: readonly CutOut[]
  readonly coat?: Coat
  readonly supply: Supply
  readonly placement: Placement
  /** Measurements still to be taken on which a size of this part rests: not empty = HOLD. */
  readonly waitsFor: readonly QuestionKey[]
  readonly from?: SizesFrom
}

export const onHold = (part: Pick<Part, 'waitsFor'>): boolean => part.waitsFor.length > 0
