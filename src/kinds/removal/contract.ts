import type { Length } from '../../units/length.ts'

/** The outside of one old thing: length and height as seen on the wall (or on the floor: length and width), and how far it stands out. */
export interface OldSize {
  readonly length: Length
  readonly height: Length
  readonly depth: Length
}

/** What the work of taking one off is counted by. */
export type RemovalUnit = 'piece' | 'metre' | 'square metre'

/** One kind of old thing that comes off before anything new goes up. */
export interface RemovalKind {
  readonly id: string
  readonly says: string
  readonly unit: RemovalUnit
  /** Its hour rate, `remove-shelf` for the row `rate.remove-shelf`. */
  readonly rate: string
  /** Rows of `shared/figures`: density of its material, solid share of its outside. */
  readonly density: string
  readonly solid: string
  /** Sides that carry paint or paper, counted over its outside: 2 where the inside is painted too. */
  readonly coatedSides: 1 | 2
  /** What it leaves bare: plaster to be filled, or a floor. */
  readonly leaves: 'wall' | 'floor'
  /** Kinds of material that may hold asbestos when they are old, in words; empty when none. */
  readonly asbestos: string
}

/** How an old thing is held: what that does to the hours, and to the wall behind it. */
export interface OldFixing {
  readonly id: string
  readonly says: string
  /** Rows of `shared/figures`: hours against nailed, and the share of the wall behind it that is filled afterwards. */
  readonly harder: string
  readonly patched: string
  /** It does not come away whole: painted surface is broken up, which lead rules count as demolition. */
  readonly brokenOut: boolean
}
