import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { QuestionKey } from '../things/field.ts'
import type { NamedBay } from '../things/place.ts'
import type { Length } from '../units/length.ts'
import type { PlanContext } from './context.ts'
import type { MantelPlan } from './mantel.ts'
import type { Survey } from './survey.ts'
import type { TopPlan } from './tops-and-ends.ts'

/** One floating shelf. z = its upper face; x offsets in the bay's own axes. */
export interface Shelf {
  readonly bay: NamedBay
  readonly number: number
  /** `R-H2` */
  readonly mark: string
  readonly id: string
  readonly z: Length
  readonly thickness: Length
  readonly depth: Length
  readonly backLength: Length
  readonly frontLength: Length
  /** x of the back left corner of the body. */
  readonly x: Length
  /** Offsets of the ends over the depth, + to the right. */
  readonly offsetLeft: Length
  readonly offsetRight: Length
  readonly cleatTop: Length
  readonly sag: Length
  readonly waitsFor: readonly QuestionKey[]
}

export interface ShelfPlan {
  readonly shelves: readonly Shelf[]
  readonly contribution: Contribution
}

export function shelves(_context: PlanContext, _survey: Survey, _tops: TopPlan, _mantel: MantelPlan): ShelfPlan {
  return { shelves: [], contribution: NOTHING }
}
