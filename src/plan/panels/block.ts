/** A rectangle to be laid, in whole nanometres with one kerf added to both sizes: then pieces may touch. */
export interface Block {
  readonly id: number
  /** Along the sheet's length as the part is named. */
  readonly length: number
  readonly width: number
  /** Whether the grain lets it lie across. */
  readonly mayTurn: boolean
}

/** The sheet less its trim, one kerf added to both sizes likewise. */
export interface Bed {
  readonly length: number
  readonly width: number
}

/** A block where it lies; length and width as they lie. */
export interface Spot {
  readonly block: number
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
  readonly turned: boolean
}

/** A free rectangle of a sheet. */
export interface Free {
  readonly sheet: number
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

const NM_PER_MM = 1e6
/** Area in mm² for comparing only: nm² pass 2^53. */
export const comparedArea = (r: { readonly length: number; readonly width: number }): number =>
  (r.length / NM_PER_MM) * (r.width / NM_PER_MM)

/** Whether a block can lie on a bed at all. */
export const fitsBed = (block: Block, bed: Bed): boolean =>
  (block.length <= bed.length && block.width <= bed.width) ||
  (block.mayTurn && block.width <= bed.length && block.length <= bed.width)
