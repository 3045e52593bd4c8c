import { answerOf, type Job, withAnswer } from '../job/job.ts'
import { type Entry, type Field, NOT_MEASURED } from '../things/field.ts'
import type { Question } from './asked.ts'
import { askingOf } from './asking.ts'
import { type Draft, draftAtRow, draftOfRows, EMPTY_DRAFT, rowsWithLine } from './draft.ts'
import { enter } from './enter.ts'
import { BAYS_EXAMPLE } from './enter-bays.ts'
import type { Entered } from './entered.ts'
import { questionOn, type Said, type Session, type Undoable } from './session.ts'
import { planned } from './settle-answer.ts'
import type { Stepped } from './stepped.ts'
import { draftHere, readTyped, rowTexts, WHOLE_TABLE_WORDS } from './type-into.ts'

/** Undo steps kept, also on disk. */
const MOST_UNDO = 500

/** Enter at a question: takes what is typed, or with nothing typed keeps what stands (the answer, or else the suggestion). */
export function acceptQuestion(session: Session): Stepped {
  const question = questionOn(session)
  if (question === undefined) return stay(session, { kind: 'nothing' })
  const draft = draftHere(session) ?? EMPTY_DRAFT
  const typed = draft.line.text.trim()
  if (typed === '') return acceptEmpty(session, question, draft)
  const { entry } = question.field
  const entered = readTyped(session, question, draft.line.text)
  if (entered.kind === 'refused') return stay(session, { kind: 'error', says: entered.says })
  if (entry.kind === 'table' && !WHOLE_TABLE_WORDS.test(typed)) return acceptRows(session, question, entry, draft)
  return (
    heldBack(session, draft, entered) ??
    answered(session, question, entered.value, { kind: 'echo', says: entered.echo })
  )
}

/** A probable slip is asked about once; Enter on the very same text takes it. */
function heldBack(session: Session, draft: Draft, entered: Entered): Stepped | undefined {
  const { said } = session
  if (entered.kind !== 'held' || (said.kind === 'held' && said.text === draft.line.text)) return undefined
  return stay(session, { kind: 'held', says: entered.says, value: entered.value, text: draft.line.text })
}

/** The typed row, or the pasted ones, from the current row on: each is an answer on disk, and the table stays for the next. */
function acceptRows(session: Session, question: Question, entry: TableEntry, draft: Draft): Stepped {
  const lines = draft.line.text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '')
  const rows = [...draft.rows.slice(0, draft.row), ...lines, ...draft.rows.slice(draft.row + lines.length)]
  const whole = enter(rows.join('\n'), askingOf(question, session.job, session.plan, session.today))
  if (whole.kind === 'refused') return stay(session, { kind: 'error', says: whole.says })
  const slip = heldBack(session, draft, whole)
  if (slip !== undefined) return slip
  const kept = rowTexts(whole.value, entry, session.plan.show)
  const next: Draft = draftAtRow(draftOfRows(kept), draft.row + lines.length)
  const stepped = answered(session, question, whole.value, { kind: 'echo', says: whole.echo }, question)
  return { ...stepped, session: { ...stepped.session, drafts: { ...session.drafts, [question.key]: next } } }
}

type TableEntry = Extract<Entry, { kind: 'table' }>

/** Nothing typed. The plan goes on with what it uses; a measurement nobody took is kept as exactly that. */
function acceptEmpty(session: Session, question: Question, draft: Draft): Stepped {
  const { field, place, key } = question
  const emptied = field.entry.kind === 'table' && draft.row < draft.rows.length
  if (emptied) return withoutRow(session, question, draft)
  const answer = answerOf(session.job, field, place)
  if (answer !== undefined) return goOn(session, question)
  if (field.missing !== 'suggest')
    return answered(session, question, NOT_MEASURED, { kind: 'echo', says: 'not measured yet' })
  const optional = field.entry.kind === 'text' && !field.entry.needed
  if (optional || session.plan.used.has(key)) return goOn(session, question)
  return stay(session, { kind: 'error', says: needed(field) })
}

/** A row whose text was wiped falls out of the table; the last one takes the answer with it. */
function withoutRow(session: Session, question: Question, draft: Draft): Stepped {
  const rows = rowsWithLine(draft)
  const drafts = { ...session.drafts, [question.key]: draftOfRows(rows) }
  if (rows.length === 0) return answered({ ...session, drafts }, question, undefined, { kind: 'nothing' }, question)
  const entered = enter(rows.join('\n'), askingOf(question, session.job, session.plan, session.today))
  if (entered.kind === 'refused') return stay(session, { kind: 'error', says: entered.says })
  return answered({ ...session, drafts }, question, entered.value, { kind: 'nothing' }, question)
}

/** On to the next question with the job as it is: only the place is saved. */
function goOn(session: Session, question: Question): Stepped {
  return underway(session, session.job, session.undo, question, session.said, undefined)
}

function answered(session: Session, question: Question, value: unknown, said: Said, stayAt?: Question): Stepped {
  const before = answerOf(session.job, question.field, question.place)
  if (JSON.stringify(before) === JSON.stringify(value))
    return underway(session, session.job, session.undo, question, said, stayAt)
  const step: Undoable = { key: question.key, before, after: value }
  const job = withAnswer(session.job, question.field, question.place, value)
  return underway(session, job, [...session.undo, step].slice(-MOST_UNDO), question, said, stayAt)
}

function underway(
  session: Session,
  job: Job,
  undo: readonly Undoable[],
  from: Question,
  said: Said,
  stayAt: Question | undefined,
): Stepped {
  const to = stayAt === undefined ? session.backTo : session.page
  const next = { ...session, said, underway: { job, undo, from: from.key, to, plan: undefined } }
  // The same job has the same plan: only the place moves on.
  return job === session.job ? planned(next, session.plan) : { session: next, effects: [{ kind: 'plan', job }] }
}

const stay = (session: Session, said: Said): Stepped => ({ session: { ...session, said }, effects: [] })

const needed = (field: Field): string =>
  field.entry.kind === 'bays'
    ? `The wall is needed to go on. Type the words in order, like: ${BAYS_EXAMPLE}.`
    : `Nothing is suggested for ${field.short}: it has to be typed.`
