import { figuresIn } from '../../src/figures/figures.ts'
import { units } from '../../src/job/chapters/job.ts'
import { bays } from '../../src/job/chapters/wall.ts'
import { baysOf, emptyJob, type Job, withAnswer } from '../../src/job/job.ts'
import { boxes } from '../../src/plan/boxes/boxes.ts'
import type { PlanContext } from '../../src/plan/context.ts'
import { fronts } from '../../src/plan/fronts/fronts.ts'
import { plinths } from '../../src/plan/run/levels.ts'
import { slots } from '../../src/plan/run/slot.ts'
import { settings } from '../../src/plan/settings.ts'
import { settleFrom } from '../../src/plan/settle.ts'
import { survey } from '../../src/plan/survey/survey.ts'
import { merged } from '../../src/things/contribution.ts'
import type { Field } from '../../src/things/field.ts'
import type { BayKind, Place } from '../../src/things/place.ts'
import { inches, type Length, NM_PER_INCH } from '../../src/units/length.ts'
import type { UnitSystem } from '../../src/units/show-length.ts'

export interface Put {
  readonly put: <T>(field: Field<T>, place: Place, value: T) => Put
  readonly job: Job
}

const putting = (job: Job): Put => ({
  job,
  put: (field, place, value) => putting(withAnswer(job, field, place, value)),
})

/** A job with these bays (`a`, `b` … from the left) and these units, to put answers into. */
export const wallOf = (system: UnitSystem, kinds: readonly BayKind[]): Put =>
  putting(emptyJob('test-wall', '2026-01-05'))
    .put(units, 'job', system)
    .put(
      bays,
      'job',
      kinds.map((kind, i) => ({ id: 'abcdefgh'.charAt(i), kind })),
    )

export const contextOfJob = (job: Job): PlanContext => {
  const settle = settleFrom(job)
  const set = settings(settle)
  return { job, bays: baysOf(job), figures: figuresIn(set.units), cut: set.cut, show: set.show, settle }
}

/** The plan from the survey to the leaves. */
export function runsOf(job: Job) {
  const context = contextOfJob(job)
  const surveyed = survey(context)
  const slotted = slots(context, surveyed)
  const boxed = boxes(context, slotted)
  const plinth = plinths(context, slotted, boxed)
  const front = fronts(context, boxed)
  const all = merged(
    { parts: [], joints: [], messages: surveyed.messages },
    slotted.contribution,
    boxed.contribution,
    plinth,
    front.contribution,
  )
  const part = (id: string) => {
    const found = all.parts.find((p) => p.id === id)
    if (found === undefined) throw new Error(`no part ${id}; there are ${all.parts.map((p) => p.id).join(', ')}`)
    return found
  }
  return { context, survey: surveyed, slots: slotted, boxes: boxed, fronts: front, ...all, part }
}

/** `in_(19, 1, 2)` = 19 1/2 in. */
export const in_ = inches
export const inInches = (l: Length): number => l / NM_PER_INCH
export const inMm = (l: Length): number => l / 1e6
