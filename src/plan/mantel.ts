import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { QuestionKey } from '../things/field.ts'
import type { NamedBay } from '../things/place.ts'
import type { Area } from '../units/area.ts'
import type { Length } from '../units/length.ts'
import type { PlanContext } from './context.ts'
import type { Survey } from './survey.ts'

interface Rectangle {
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
}

/** What stands on one breast, in the bay's own x. */
export interface Breast {
  readonly bay: NamedBay
  readonly opening: Rectangle | undefined
  readonly mantel:
    | {
        readonly x: Length
        readonly length: Length
        readonly depth: Length
        readonly underside: Length
        readonly top: Length
        readonly frieze: Length
        readonly layers: number
      }
    | undefined
  readonly screen: Rectangle | undefined
  /** Masonry to be painted, roughness counted; 0 when it is not painted. */
  readonly paintedFace: Area
  /** Plain outline area of the face without opening and mantel. */
  readonly fuel: string
  readonly waitsFor: readonly QuestionKey[]
}

export interface MantelPlan {
  readonly breasts: readonly Breast[]
  /** Highest mantel top of the wall; undefined without a mantel. */
  readonly mantelTop: Length | undefined
  readonly contribution: Contribution
}

export function mantels(_context: PlanContext, _survey: Survey): MantelPlan {
  return { breasts: [], mantelTop: undefined, contribution: NOTHING }
}
