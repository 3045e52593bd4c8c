import { answerOf } from '../job/job.ts'
import type { Option } from '../things/field.ts'
import { acceptQuestion } from './accept-question.ts'
import type { Question } from './asked.ts'
import { draftAtRow, EMPTY_DRAFT } from './draft.ts'
import { matchOption } from './enter-choice.ts'
import { answerMessage, chooseReviewLine, goBack, moveLine } from './leave-page.ts'
import { editLine, lineOf } from './line.ts'
import { questionOn, type Session } from './session.ts'
import { planned, saved } from './settle-answer.ts'
import type { SessionEvent, Stepped } from './stepped.ts'
import { draftHere, typeInto } from './type-into.ts'
import { foldHere, moveAmongRows, whereFromShown } from './where-from.ts'

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
    case 'where-from':
      return stay(whereFromShown(session))
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
    case 'where-from':
      return stay(foldHere(session))
  }
}

function helpShown(session: Session): Session {
  const { page } = session
  return page.kind === 'question' ? { ...session, page: { kind: 'help', key: page.key, onward: page } } : session
}

/** In a table to another row; in a list of options the option's number is typed; in the review to another line. */
function moved(session: Session, by: number): Session {
  if (session.page.kind === 'where-from') return moveAmongRows(session, by)
  const question = questionOn(session)
  if (question === undefined) return moveLine(session, by)
  const draft = draftHere(session) ?? EMPTY_DRAFT
  if (question.field.entry.kind === 'table')
    return {
      ...session,
      drafts: { ...session.drafts, [question.key]: draftAtRow(draft, draft.row + by) },
      said: { kind: 'nothing' },
    }
  return question.field.entry.kind === 'choice'
    ? nextOption(session, question, question.field.entry.options, by)
    : session
}

/** Arrows in a list type the number of the option above or below the one that stands. */
function nextOption(session: Session, question: Question, options: readonly Option[], by: number): Session {
  const typed = matchOption(draftHere(session)?.line.text ?? '', options)
  const stands = answerOf(session.job, question.field, question.place) ?? session.plan.used.get(question.key)?.value
  const now = typed.kind === 'one' ? options.indexOf(typed.option) : options.findIndex((o) => o.id === stands)
  const to = Math.max(0, Math.min(options.length - 1, now < 0 ? 0 : now + by))
  return typeInto(session, () => lineOf(String(to + 1)))
}
