import { comparePlans } from '../plan/compare/compare.ts'
import type { Plan } from '../plan/plan.ts'
import type { Message } from '../things/message.ts'
import { askedQuestions } from './asked.ts'
import { withoutDraft } from './draft.ts'
import { messagePageOf, type Page, pageOf, type Session, standOf, type Underway } from './session.ts'
import type { Stepped } from './stepped.ts'
import { nextStand } from './walk.ts'

/** The plan of the accepted answer is there: now the next page is known, and the answer goes to disk with it. */
export function planned(session: Session, plan: Plan): Stepped {
  const { underway } = session
  if (underway === undefined) return { session: { ...session, plan }, effects: [] }
  const to = nextPage(session, underway, plan)
  const next = { ...underway, plan, to }
  return {
    session: { ...session, underway: next },
    effects: [{ kind: 'save', kept: { job: next.job, at: standOf(to), undo: next.undo } }],
  }
}

/** The answer is on disk, or the disk refused: only now the next page is shown. */
export function saved(session: Session, problem: string | undefined): Stepped {
  const { underway } = session
  if (underway?.plan === undefined || underway.to === undefined) {
    return { session: { ...session, saved: problem === undefined ? 'saved' : 'not saved yet' }, effects: [] }
  }
  const stays = samePage(underway.to, session.page)
  const changed = underway.job !== session.job
  return {
    session: {
      ...session,
      job: underway.job,
      plan: underway.plan,
      asked: askedQuestions(underway.job, underway.plan.used),
      undo: underway.undo,
      page: underway.to,
      backTo: underway.to.kind === 'question' && stays ? session.backTo : undefined,
      drafts: stays || underway.from === undefined ? session.drafts : withoutDraft(session.drafts, underway.from),
      said: { kind: 'nothing' },
      effect: changed ? comparePlans(session.plan, underway.plan) : [],
      underway: undefined,
      saved: problem === undefined ? 'saved' : 'not saved yet',
      problem: problem ?? '',
    },
    effects: [],
  }
}

/** The page asked for, or the next question; a stop that this answer raised about its own question is shown first. */
function nextPage(session: Session, { job, from, to }: Underway, plan: Plan): Page {
  const asked = askedQuestions(job, plan.used)
  const after = to ?? pageOf(nextStand(job, asked, from))
  const stop = job === session.job ? undefined : newStop(session.plan, plan, from)
  return stop === undefined ? after : messagePageOf(stop, after)
}

const newStop = (before: Plan, after: Plan, about: string | undefined): Message | undefined =>
  after.messages.find(
    (m) =>
      m.weight === 'stop' &&
      m.about === about &&
      !isHeld(m, after) &&
      !before.messages.some((b) => b.code === m.code && b.about === m.about && b.short === m.short),
  )

/** Raised by a part that waits for a measurement: its size is only assumed, and asking on comes first. */
const isHeld = ({ part }: Message, { parts }: Plan): boolean => {
  const about = parts.filter((p) => p.id === part)
  return about.length > 0 && about.every((p) => p.waitsFor.length > 0)
}

const samePage = (a: Page, b: Page): boolean => a.kind === 'question' && b.kind === 'question' && a.key === b.key
