import type { Job } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'
import { acceptQuestion } from './accept-question.ts'
import { draftAtRow, EMPTY_DRAFT } from './draft.ts'
import { answerMessage, chooseReviewLine, goBack, moveLine } from './leave-page.ts'
import { editLine, type LineEdit } from './line.ts'
import { type Kept, questionOn, type Session } from './session.ts'
import { planned, saved } from './settle-answer.ts'
import { draftHere, typeInto } from './type-into.ts'

/** What happens to an interview: what the person does, and what came of the effects asked for. */
export type SessionEvent =
  | { readonly kind: 'edit'; readonly edit: LineEdit }
  | { readonly kind: 'enter' | 'back' | 'help' | 'review' }
  /** Up or down in a list, a table or the review, by so many lines. */
  | { readonly kind: 'move'; readonly by: number }
  | { readonly kind: 'planned'; readonly plan: Plan }
  | { readonly kind: 'saved' }
  | { readonly kind: 'not-saved'; readonly says: string }

/** What the world is asked to do; each is answered by an event before the next key is taken. */
export type Effect =
  | { readonly kind: 'plan'; readonly job: Job }
  | { readonly kind: 'save'; readonly kept: Kept }
  | { readonly kind: 'write-packet' }
  | { readonly kind: 'home' }

export interface Stepped {
  readonly session: Session
  readonly effects: readonly Effect[]
}

/** One step of the interview, pure: the session after an event, and what the world is asked to do. */
export function step(session: Session, event: SessionEvent): Stepped {
  switch (event.kind) {
    case 'planned':
      return planned(session, event.plan)
    case 'saved':
      return saved(session, undefined)
    case 'not-saved':
      return saved(session, event.says)
    default:
      return session.underway === undefined ? act(session, event) : { session, effects: [] }
  }
}

type Action = Exclude<SessionEvent, { kind: 'planned' | 'saved' | 'not-saved' }>

function act(session: Session, event: Action): Stepped {
  switch (event.kind) {
    case 'edit':
      return stay(typeInto(session, (line) => editLine(line, event.edit)))
    case 'enter':
      return enterPressed(session)
    case 'back':
      return goBack(session)
    case 'help':
      return stay(helpShown(session))
    case 'review':
      return stay({ ...session, page: { kind: 'review', line: 0 }, said: { kind: 'nothing' } })
    case 'move':
      return stay(moved(session, event.by))
  }
}

const stay = (session: Session): Stepped => ({ session, effects: [] })

function enterPressed(session: Session): Stepped {
  switch (session.page.kind) {
    case 'question':
      return acceptQuestion(session)
    case 'review':
      return chooseReviewLine(session)
    case 'message':
      return answerMessage(session)
    case 'help':
      return goBack(session)
  }
}

function helpShown(session: Session): Session {
  const { page } = session
  return page.kind === 'question' ? { ...session, page: { kind: 'help', key: page.key, then: page } } : session
}

/** In a table to another row; in a list of options the option's number is typed; in the review to another line. */
function moved(session: Session, by: number): Session {
  const question = questionOn(session)
  if (question === undefined) return moveLine(session, by)
  const draft = draftHere(session) ?? EMPTY_DRAFT
  if (question.field.entry.kind === 'table')
    return {
      ...session,
      drafts: { ...session.drafts, [question.key]: draftAtRow(draft, draft.row + by) },
      said: { kind: 'nothing' },
    }
  return moveLine(session, by)
}
