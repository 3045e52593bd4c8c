import type { Length } from '../units/length.ts'

/** A point of a drawing in true size: x to the right, z up. */
export interface DrawingPoint {
  readonly x: Length
  readonly z: Length
}

/** A rectangle of a drawing in true size, from its lower left corner. */
export interface DrawingBox extends DrawingPoint {
  readonly width: Length
  readonly height: Length
}

/** Line weights of ISO 128-2 (from memory): outline and visible edges wide, dimensions and hatches narrow, hidden dashed. */
export type Pen = 'outline' | 'edge' | 'thin' | 'hidden'

/** Waste leans one way; masonry is crossed. */
export type HatchKind = 'waste' | 'masonry'

/** `near` and `far`: outside at the left, in the column next to the edge or the one beyond it; `under`: below the edge. */
export type TagPlace = 'inside' | 'near' | 'far' | 'under'

/** Which side of the drawing a dimension stands on, and in which row: 1 is nearest. */
export type DimensionSide = 'below' | 'above' | 'left' | 'right'

/** The shapes a drawing is made of: plain data, so that any reader can measure it. */
export type Shape =
  | { readonly kind: 'line'; readonly from: DrawingPoint; readonly to: DrawingPoint; readonly pen: Pen }
  | { readonly kind: 'rectangle'; readonly box: DrawingBox; readonly pen: Pen }
  | { readonly kind: 'hatch'; readonly box: DrawingBox; readonly hatch: HatchKind }
  | {
      readonly kind: 'dimension'
      readonly side: DimensionSide
      readonly row: number
      readonly from: Length
      readonly to: Length
      readonly says: string
    }
  /** Words centred in a box: the first line is the mark; lines that do not fit are left out, the mark last. */
  | { readonly kind: 'label'; readonly box: DrawingBox; readonly lines: readonly string[] }
  /** A letter at the end of a piece: outside, or inside its upper left corner, where it may move `room` to the right to be clear of marks. */
  | {
      readonly kind: 'tag'
      readonly at: DrawingPoint
      readonly room: Length
      readonly says: string
      readonly stands: TagPlace
    }
  | { readonly kind: 'text'; readonly at: DrawingPoint; readonly says: string }

/** A drawing in true size; `frame` is what the scale must fit, dimensions stand outside it. */
export interface Drawing {
  /** What it shows, in one sentence, for those who cannot see it. */
  readonly says: string
  readonly frame: DrawingBox
  readonly shapes: readonly Shape[]
}

export const line = (from: DrawingPoint, to: DrawingPoint, pen: Pen): Shape => ({ kind: 'line', from, to, pen })
export const rectangle = (box: DrawingBox, pen: Pen): Shape => ({ kind: 'rectangle', box, pen })
export const hatch = (box: DrawingBox, kind: HatchKind): Shape => ({ kind: 'hatch', box, hatch: kind })
export const label = (box: DrawingBox, ...lines: readonly string[]): Shape => ({ kind: 'label', box, lines })

/** How many rows of dimensions stand on a side. */
export const dimensionRows = (drawing: Drawing, side: DimensionSide): number =>
  drawing.shapes.reduce((most, s) => (s.kind === 'dimension' && s.side === side ? Math.max(most, s.row) : most), 0)

/** Dimensions end to end along one side. */
export function dimensionChain(
  chain: { readonly side: DimensionSide; readonly row: number; readonly stations: readonly Length[] },
  says: (length: Length) => string,
): readonly Shape[] {
  const stations = [...new Set(chain.stations)].sort((a, b) => a - b)
  return stations.flatMap((to, i) => {
    const from = stations[i - 1]
    if (from === undefined) return []
    return [{ kind: 'dimension', side: chain.side, row: chain.row, from, to, says: says((to - from) as Length) }]
  })
}
