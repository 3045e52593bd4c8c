import { fieldById } from '../job/fields.ts'
import { answerOf, type Job, withAnswer, withOwnFigures } from '../job/job.ts'
import type { Fix, Message } from '../things/message.ts'
import { waitingConfirms, withConfirmation } from './confirmed.ts'
import { EMPTY_DRAFT, withoutDraft } from './draft.ts'
import { reviewOf } from './review.ts'
import { messageOn, messagePageOf, type Page, pageOf, type Session, standOf, type Undoable } from './session.ts'
import type { Effect, Stepped } from './stepped.ts'
import { draftHere, messageDraft } from './type-into.ts'
import { previousStand } from './walk.ts'

/** Esc: one step back, nothing lost. From the first question to the list of jobs. */
export function goBack(session: Session): Stepped {
  const { page } = session
  if (page.kind === 'help' || page.kind === 'where-from') return moveTo(session, page.onward)
  if (page.kind === 'message')
    return moveTo(session, page.onward.kind === 'review' ? page.onward : { kind: 'question', key: page.about })
  if (page.kind === 'question' && session.backTo !== undefined)
    return moveTo({ ...session, backTo: undefined }, session.backTo)
  const before = previousStand(session.job, session.asked, standOf(page))
  return before === undefined ? { session, effects: [{ kind: 'home' }] } : moveTo(session, pageOf(before))
}

const moveTo = (session: Session, page: Page): Stepped => ({
  session: { ...session, page, said: { kind: 'nothing' }, effect: [] },
  effects: [],
})

/** Enter on a line of the review: to its question and back here, to a message, or the packet is written. */
export function chooseReviewLine(session: Session): Stepped {
  const { page } = session
  if (page.kind !== 'review') return { session, effects: [] }
  const lines = reviewOf(session.job, session.plan, session.ownFigures)
  const line = lines[page.line]
  if (line === undefined) return { session, effects: [] }
  if (line.kind === 'answer') return moveTo({ ...session, backTo: page }, { kind: 'question', key: line.key })
  if (line.kind === 'message') return moveTo(session, messagePageOf(line.message, page))
  if (line.kind === 'figures') return take(session, withOwnFigures(session.job, line.own), session.undo, page)
  return writeOrSayWhy(session)
}

function writeOrSayWhy(session: Session): Stepped {
  const stops = session.plan.messages.filter((m) => m.weight === 'stop')
  const open = waitingConfirms(session.job, session.plan.messages)
  const [first] = [...stops, ...open]
  if (first === undefined) return { session, effects: [{ kind: 'write-packet' }] }
  const says = `The packet waits for ${first.weight === 'stop' ? 'a stop' : 'a yes'}: ${first.short}`
  return { session: { ...session, page: { kind: 'review', line: 0 }, said: { kind: 'error', says } }, effects: [] }
}

/** Enter at a message: the numbered way out that was typed, the yes that was typed, or on to where it leads. */
export function answerMessage(session: Session): Stepped {
  const { page } = session
  const message = messageOn(page, session.plan)
  if (page.kind !== 'message') return { session, effects: [] }
  if (message === undefined) return moveTo(session, page.onward)
  const typed = (draftHere(session) ?? EMPTY_DRAFT).line.text.trim().toLowerCase()
  const cleared = { ...session, drafts: withoutDraft(session.drafts, messageDraft(page.code)) }
  if (typed === 'yes' && message.weight === 'confirm')
    return take(cleared, withConfirmation(session.job, message, session.today), session.undo, page.onward)
  const fix = /^\d$/.test(typed) ? message.fixes[Number(typed) - 1] : undefined
  if (fix !== undefined) return applyFix(cleared, fix, page.onward)
  if (typed !== '') return { session: { ...session, said: { kind: 'error', says: waysOf(message) } }, effects: [] }
  return leaveMessage(cleared, message, page.onward)
}

/** Enter alone: a confirm means "no, go back"; from the review to the question that can change it; else on. */
function leaveMessage(session: Session, message: Message, onward: Page): Stepped {
  if (onward.kind !== 'review' || message.weight === 'confirm') return moveTo(session, onward)
  return session.asked.some((q) => q.key === message.about)
    ? moveTo({ ...session, backTo: onward }, { kind: 'question', key: message.about })
    : moveTo(session, onward)
}

const waysOf = (message: Message): string =>
  message.weight === 'confirm'
    ? 'Type yes to keep it; Enter alone means no.'
    : message.fixes.length === 0
      ? 'Enter goes on; Esc goes back to the question.'
      : `Type a number from 1 to ${message.fixes.length}, or Enter to go on.`

function applyFix(session: Session, fix: Fix, onward: Page): Stepped {
  const changes = fix.answers.flatMap(({ key, value }) => changeOf(session.job, key, value))
  const job = changes.reduce((now, c) => c.apply(now), session.job)
  const undo = changes.map((c) => c.step)
  return take(session, job, [...session.undo, ...undo], onward)
}

interface Change {
  readonly step: Undoable
  readonly apply: (job: Job) => Job
}

function changeOf(job: Job, key: Undoable['key'], value: unknown): readonly Change[] {
  const dot = key.indexOf('.')
  const place = key.slice(0, dot)
  const field = fieldById(key.slice(dot + 1))
  if (field === undefined) return []
  const step = { key, before: answerOf(job, field, place), after: value }
  return [{ step, apply: (now) => withAnswer(now, field, place, value) }]
}

/** The changed job is planned and saved before the page moves, as any answer. */
function take(session: Session, job: Job, undo: readonly Undoable[], to: Page): Stepped {
  const effects: readonly Effect[] = [{ kind: 'plan', job }]
  return { session: { ...session, underway: { job, undo, from: undefined, to, plan: undefined } }, effects }
}

/** Up or down: to another line of the review, or to another number of a list. */
export function moveLine(session: Session, by: number): Session {
  const { page } = session
  if (page.kind !== 'review') return session
  const last = reviewOf(session.job, session.plan, session.ownFigures).length - 1
  return {
    ...session,
    page: { kind: 'review', line: Math.max(0, Math.min(last, Math.min(last, page.line) + by)) },
    said: { kind: 'nothing' },
  }
}
