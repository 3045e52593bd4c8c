import { figuresIn } from '../../src/figures/figures.ts'
import type { Job } from '../../src/job/job.ts'
import { baysOf, emptyJob } from '../../src/job/job.ts'
import type { PlanContext } from '../../src/plan/context.ts'
import { settings } from '../../src/plan/settings.ts'
import { settleFrom } from '../../src/plan/settle.ts'
import type { UnitSystem } from '../../src/units/show-length.ts'

/** The context of a step for a job with these answers of the whole job, facts and choices by their section. */
export function contextFor(
  units: UnitSystem,
  choices: Readonly<Record<string, unknown>> = {},
  facts: Readonly<Record<string, unknown>> = {},
): PlanContext {
  const bays = [
    { id: 'a', kind: 'alcove' },
    { id: 'b', kind: 'breast' },
  ]
  const job: Job = {
    ...emptyJob('test-job', '2026-01-05'),
    facts: { job: { bays, units, ...facts } },
    choices: { job: choices },
  }
  const settle = settleFrom(job)
  const { cut, show } = settings(settle)
  return { job, bays: baysOf(job), figures: figuresIn(units), cut, show, settle }
}
