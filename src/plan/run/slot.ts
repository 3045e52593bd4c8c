import type { Contribution } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall, Survey } from '../survey/survey.ts'
import { alcoveRun } from './alcove-run.ts'
import { flatRun } from './flat-run.ts'
import { type Levels, levelsOf } from './run-levels.ts'
import { runMessages } from './run-messages.ts'

export type Fit = 'filler' | 'caulk' | 'gable' | 'open'

/** One side of a run: how it meets the wall, and the gap in front at the run's foot and top. */
export interface RunSide {
  readonly fit: Fit
  readonly gapFoot: Length
  readonly gapTop: Length
  readonly gapMost: Length
  readonly gapLeast: Length
}

/** A run of boxes in a bay: its width and where it starts, in the bay's own x. */
export interface Run {
  readonly bay: NamedBay
  readonly wall: RunnableWall
  readonly kind: 'base' | 'tall'
  /** Foot and top of the boxes above the level line's zero. */
  readonly z0: Length
  readonly z1: Length
  readonly boxHeight: Length
  readonly slot: Length
  readonly width: Length
  readonly startX: Length
  readonly boxCount: number
  readonly left: RunSide
  readonly right: RunSide
  readonly fillerNominal: Length
  /** Measurements still to take that the run's width and height rest on. */
  readonly waitsFor: readonly QuestionKey[]
}

export interface Slots {
  readonly runs: readonly Run[]
  /** Plinth height shared by aligned runs (the largest any needs). */
  readonly plinth: Length
  readonly levels: Levels
  readonly contribution: Contribution
}

/** Levels of the runs (plinth height, box foot and top), then the slot and how each run sits in it. */
export function slots(context: PlanContext, survey: Survey): Slots {
  const levels = levelsOf(context, survey)
  const placed = levels.runs.map((level) =>
    within(level.wall.bay.id, () =>
      level.wall.kind === 'alcove' ? alcoveRun(context, level, level.wall) : flatRun(context, level, level.wall),
    ),
  )
  const least = context.figures.length('box.least')
  return {
    // A run too narrow for one box is said in a message and not built.
    runs: placed.filter((run) => run.width >= least),
    plinth: levels.plinth,
    levels,
    contribution: { parts: [], joints: [], messages: placed.flatMap((run) => runMessages(context, run)) },
  }
}
