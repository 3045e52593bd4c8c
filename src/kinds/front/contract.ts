import type { Figures } from '../../figures/figures.ts'
import type { Ref } from '../../things/formula.ts'
import type { SizesFrom } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'

/** Finished outside of one leaf, and the frame drawn or cut on it. */
export interface LeafSize {
  readonly width: Length
  readonly height: Length
  readonly thickness: Length
  /** Width of stiles and rails. */
  readonly frame: Length
  /** What its height and width are worked out by. */
  readonly from: { readonly width: Ref; readonly height: Ref }
  readonly figures: Figures
}

/** One piece a leaf is made of. x, z = its lower left corner inside the leaf, y = behind the leaf's back face. */
export interface LeafPiece {
  readonly id: string
  /** Which of several glued pieces it is; absent when the leaf is one blank. */
  readonly piece?: 'stile' | 'rail' | 'panel'
  /** The edge the piece stands at; `whole` = it carries both hinges and handle. */
  readonly carries: 'left edge' | 'right edge' | 'whole' | 'nothing'
  readonly length: Length
  readonly width: Length
  readonly thickness: Length
  readonly roughLength: Length
  readonly leftLong: Length
  readonly details: readonly { readonly says: string; readonly length: Length | undefined }[]
  readonly at: { readonly x: Length; readonly y: Length; readonly z: Length }
  /** Which way its length lies. */
  readonly lies: 'upright' | 'across'
  readonly from: SizesFrom
}

/** What the rest of the plan asks of a kind of door or drawer front. */
export interface FrontKind {
  readonly id: string
  readonly says: string
  /** A door of this kind in the client's words. */
  readonly door: string
  /** Row of the rates: hours to make one. */
  readonly rate: 'leaf-framed' | 'leaf-routed' | 'leaf-slab'
  /** Whether it has stiles and rails whose width is asked. */
  readonly asksFrame: boolean
  readonly pieces: (leaf: LeafSize) => readonly LeafPiece[]
  /** Smaller way of the panel or field inside the frame; undefined where there is none. */
  readonly field: (leaf: LeafSize) => Length | undefined
  /** How far in from the leaf's edge a handle stands. */
  readonly handleIn: (leaf: Pick<LeafSize, 'frame' | 'figures'>) => Length
}
