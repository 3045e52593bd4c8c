import type { Figures } from '../figures/figures.ts'
import type { Job } from '../job/job.ts'
import type { NamedBay } from '../things/place.ts'
import type { Show } from '../things/show.ts'
import type { CutStep } from '../units/round.ts'
import type { Settle } from './settle.ts'

/** What every step of the plan is given besides the results of earlier steps. */
export interface PlanContext {
  readonly job: Job
  readonly bays: readonly NamedBay[]
  readonly figures: Figures
  readonly cut: CutStep
  readonly show: Show
  readonly settle: Settle
}
