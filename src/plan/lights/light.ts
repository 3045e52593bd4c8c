import type { QuestionKey } from '../../things/field.ts'
import type { CutOut, PartId } from '../../things/part.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Length } from '../../units/length.ts'

/** How all lights of the job are made. */
export interface LightMake {
  readonly width: Length
  readonly depth: Length
  /** Undefined: as the panel allows. */
  readonly mount: 'groove' | 'surface'
  readonly place: 'front' | 'back'
  readonly watts: number
  readonly driver: 'box' | 'elsewhere'
}

/** One strip light in or under one panel. */
export interface Light {
  /** `a/shelf-2/light` */
  readonly id: string
  readonly bay: NamedBay
  /** Mark of the shelf or box. */
  readonly mark: string
  /** In words: `under shelf 2`. */
  readonly where: string
  readonly strip: Length
  readonly fromFront: Length
  /** Metres of cable to the driver, spare included. */
  readonly cable: number
  readonly waitsFor: readonly QuestionKey[]
}

/** What a light does to a part: holes and grooves, and sentences for the cut list. */
export interface LightWork {
  readonly part: PartId
  readonly cutOuts: readonly CutOut[]
  readonly details: readonly string[]
  /** Measurements the holes rest on, besides the part's own. */
  readonly waitsFor: readonly QuestionKey[]
}
