import { type Kept, type Session, startSession } from '../../src/interview/session.ts'
import { step } from '../../src/interview/step.ts'
import type { Effect, SessionEvent } from '../../src/interview/stepped.ts'
import { emptyJob, type Job } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { day } from '../../src/units/day.ts'

export const TODAY = day('2026-11-12')

export const sessionOf = (job: Job, at: Kept['at'] = undefined): Session =>
  startSession({ job, at, undo: [] }, makePlan(job, 'quick'), TODAY)

export const newSession = (): Session => sessionOf(emptyJob('test-job', TODAY))

/** One event with all that follows: the plan made, the save kept in `disk`. */
export function happen(session: Session, event: SessionEvent, disk: Kept[] = []): Session {
  const { session: next, effects } = step(session, event)
  return effects.reduce((now, effect) => perform(now, effect, disk), next)
}

function perform(session: Session, effect: Effect, disk: Kept[]): Session {
  if (effect.kind === 'plan') return happen(session, { kind: 'planned', plan: makePlan(effect.job, 'quick') }, disk)
  if (effect.kind === 'save') {
    disk.push(effect.kept)
    return happen(session, { kind: 'saved' }, disk)
  }
  return session
}

/** Types a text, then Enter. */
export function typed(session: Session, text: string, disk: Kept[] = []): Session {
  const withText = happen(session, { kind: 'edit', edit: { kind: 'insert', text } }, disk)
  return happen(withText, { kind: 'enter' }, disk)
}
