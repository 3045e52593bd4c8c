import type { Figures } from '../../figures/figures.ts'
import type { SizesFrom } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'

/** Where a shelf stands, seen in plan: lengths of its body and what each end meets. */
export interface ShelfPlace {
  readonly depth: Length
  readonly back: Length
  readonly front: Length
  /** Length of board it is cut from, without spare. */
  readonly extent: Length
  /** How far an end runs off square over the depth, the larger of the two. */
  readonly slant: Length
  readonly left: ShelfEnd
  readonly right: ShelfEnd
}
/** A wall with a side cleat, or a free end that is seen. */
export type ShelfEnd = 'wall' | 'free'

/** How a shelf is made: measured thicknesses, and what its parts are cut with. */
export interface ShelfMake {
  readonly thickness: Length
  readonly skin: Length
  readonly edge: Length
  /** Depth left on for the hollow of the back wall. */
  readonly spareDepth: Length
  readonly figures: Figures
  readonly cut: CutStep
}

/** One piece of a shelf, glued up with the others. */
export interface ShelfPiece {
  readonly piece: string
  readonly name: string
  readonly quantity: number
  /** Back and front length; equal when the ends are square. */
  readonly backLength: Length
  readonly frontLength: Length
  readonly width: Length
  readonly thickness: Length
  readonly roughLength: Length
  readonly roughWidth: Length
  /** Which measured panel it is cut from. */
  readonly panel: 'skin' | 'edge'
  readonly coatedFaces: 0 | 1 | 2
  readonly shows: string
  readonly details: readonly string[]
  readonly from: SizesFrom
}

/** A stick on the wall that the shelf slides over. */
export interface ShelfCleat {
  readonly at: 'back' | 'left' | 'right'
  /** How far its left end stands right of the back left corner of the shelf. */
  readonly inset: Length
  readonly length: Length
  readonly height: Length
  readonly depth: Length
  readonly from: SizesFrom
}

/** A load spread evenly over a shelf, Pa. */
export type Pressure = number

/** What the rest of the plan asks of a kind of floating shelf. */
export interface ShelfKind {
  readonly id: string
  readonly says: string
  /** Thinnest it can be made of these panels. */
  readonly leastThickness: (make: ShelfMake) => Length
  readonly pieces: (place: ShelfPlace, make: ShelfMake) => readonly ShelfPiece[]
  readonly cleats: (place: ShelfPlace, make: ShelfMake) => readonly ShelfCleat[]
  /** Upper edge of the cleats for a shelf whose top is at z. */
  readonly cleatTop: (z: Length, make: ShelfMake) => Length
  /** What it bends for good between two side cleats. */
  readonly sag: (span: { readonly front: Length; readonly depth: Length }, make: ShelfMake, load: Pressure) => Length
  /** Pull on the screws of the back cleat when an end is free, N, all screws together. */
  readonly pull: (body: { readonly back: Length; readonly depth: Length }, make: ShelfMake, load: Pressure) => number
}

/** A make of shelf together with the kind that answers for it. */
export interface KindOfShelf extends ShelfMake {
  readonly kind: ShelfKind
}
