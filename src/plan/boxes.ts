import { type Contribution, NOTHING } from '../things/contribution.ts'
import type { Length } from '../units/length.ts'
import type { PlanContext } from './context.ts'
import type { Run, Slots } from './slot.ts'

/** One box of a run. x is its left outer edge in the bay's own x. */
export interface Box {
  readonly run: Run
  /** 1, 2 … from the left. */
  readonly number: number
  /** `L2` */
  readonly mark: string
  /** `a/box-2` */
  readonly id: string
  readonly x: Length
  readonly width: Length
  readonly height: Length
  readonly depth: Length
  /** Inside width: outer width less both sides, rounded down with the bottom. */
  readonly insideWidth: Length
  readonly insideDepth: Length
  readonly looseShelves: number
}

export interface BoxPlan {
  readonly boxes: readonly Box[]
  readonly carcassThickness: Length
  readonly backThickness: Length
  readonly frontThickness: Length
  readonly hasDoors: boolean
  /** Space between the wall and the box back. */
  readonly backGap: ReadonlyMap<string, Length>
  readonly contribution: Contribution
}

export function boxes(_context: PlanContext, _slots: Slots): BoxPlan {
  const zero = 0 as Length
  return {
    boxes: [],
    carcassThickness: zero,
    backThickness: zero,
    frontThickness: zero,
    hasDoors: true,
    backGap: new Map(),
    contribution: NOTHING,
  }
}
