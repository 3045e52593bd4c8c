import type { Edge } from '../geometry/edge.ts'
import type { DeviceRow } from '../job/chapters/wall.ts'
import type { QuestionKey } from '../things/field.ts'
import type { Message } from '../things/message.ts'
import type { NamedBay } from '../things/place.ts'
import type { Length } from '../units/length.ts'
import type { PlanContext } from './context.ts'

/** What all kinds of bay have. */
interface BayWall {
  readonly bay: NamedBay
  /** x of the bay's own zero in the wall's axes. */
  readonly originX: Length
  /** Width taken up along the wall (at the lowest height measured). */
  readonly width: Length
  /** Ceiling over x. */
  readonly ceiling: Edge
  readonly lowestCeiling: Length
  readonly crown: { readonly drop: Length; readonly projection: Length }
  /** Measurements still to take, by what they feed. A part takes the union of those it rests on. */
  readonly waits: {
    readonly widths: readonly QuestionKey[]
    readonly depth: readonly QuestionKey[]
    readonly ceiling: readonly QuestionKey[]
    readonly floor: readonly QuestionKey[]
    readonly baseboard: readonly QuestionKey[]
    readonly fixing: readonly QuestionKey[]
    readonly devices: readonly QuestionKey[]
  }
}

/** What holds a screw: stud centres from the bay's left end, masonry everywhere, or nothing known. */
export type WallFixing =
  | { readonly kind: 'studs'; readonly centres: readonly Length[] }
  | { readonly kind: 'masonry' }
  | { readonly kind: 'hollow' }

interface RunWall extends BayWall {
  /** Floor drop below z = 0, over x. */
  readonly floor: Edge
  readonly baseboard: { readonly height: Length; readonly thickness: Length }
  readonly bow: { readonly hollow: Length; readonly proud: Length }
  readonly fixing: WallFixing
  readonly devices: readonly DeviceRow[]
}

/** Two returns and a back. Edges run over z: x of each side at the back wall and at depth `frontDepth`. */
export interface AlcoveWall extends RunWall {
  readonly kind: 'alcove'
  readonly left: { readonly back: Edge; readonly front: Edge }
  readonly right: { readonly back: Edge; readonly front: Edge }
  /** Depth at which the front widths were measured. */
  readonly frontDepth: Length
  /** Depth of each return; undefined = a room wall that goes on. */
  readonly returnLeft: Length | undefined
  readonly returnRight: Length | undefined
  /** The shortest return that exists; undefined when neither does. */
  readonly depth: Length | undefined
}

export interface FlatWall extends RunWall {
  readonly kind: 'flat'
  readonly wallAtLeft: boolean
  readonly wallAtRight: boolean
}

export interface BreastWall extends BayWall {
  readonly kind: 'breast'
  /** How far it stands out of the alcoves' back wall. */
  readonly projection: Length
}

export type Wall = AlcoveWall | FlatWall | BreastWall
/** A wall a run of boxes or shelves can stand at. */
export type RunnableWall = AlcoveWall | FlatWall

export interface Survey {
  readonly walls: readonly Wall[]
  readonly messages: readonly Message[]
}

export function survey(_context: PlanContext): Survey {
  return { walls: [], messages: [] }
}
