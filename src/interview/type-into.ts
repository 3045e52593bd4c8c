import { answerOf } from '../job/job.ts'
import { type Entry, NOT_MEASURED } from '../things/field.ts'
import type { Show } from '../things/show.ts'
import type { Question } from './asked.ts'
import { askingOf } from './asking.ts'
import { type Draft, draftOfRows, EMPTY_DRAFT } from './draft.ts'
import { enter } from './enter.ts'
import { enterRow, type Row } from './enter-table.ts'
import type { Entered } from './entered.ts'
import type { Line } from './line.ts'
import { questionOn, type Said, type Session } from './session.ts'
import { typedRow } from './show-answer.ts'

/** The draft of the page: of its question, or of the words typed at a message. */
export function draftHere(session: Session): Draft | undefined {
  const { page } = session
  if (page.kind === 'message') return session.drafts[messageDraft(page.code)]
  const question = questionOn(session)
  return question === undefined ? undefined : (session.drafts[question.key] ?? begunDraft(session, question))
}

export const messageDraft = (code: string): string => `message ${code}`

/** A table that has rows already starts with them; everything else starts empty, its answer shown beside. */
function begunDraft(session: Session, { field, place }: Question): Draft {
  const value = answerOf(session.job, field, place)
  if (field.entry.kind !== 'table' || value === undefined || value === NOT_MEASURED) return EMPTY_DRAFT
  return draftOfRows(rowTexts(value, field.entry, session.plan.show))
}

/** The rows of a kept table as one would type them again; read again they give the very same lengths. */
export const rowTexts = (value: unknown, entry: Extract<Entry, { kind: 'table' }>, show: Show): readonly string[] =>
  Array.isArray(value) ? value.map((row: Row) => typedRow(row, entry.columns, show)) : []

/** The session with the line being typed changed, and what it reads as so far. */
export function typeInto(session: Session, change: (line: Line) => Line): Session {
  const { page } = session
  const key = page.kind === 'message' ? messageDraft(page.code) : questionOn(session)?.key
  if (key === undefined) return session
  const draft = draftHere(session) ?? EMPTY_DRAFT
  const next = { ...draft, line: change(draft.line) }
  const changed = { ...session, drafts: { ...session.drafts, [key]: next } }
  return { ...changed, said: echoOf(changed, next.line.text) }
}

/** While typing only what is understood is said; an error waits for Enter. */
function echoOf(session: Session, text: string): Said {
  const question = questionOn(session)
  if (question === undefined || text.trim() === '') return { kind: 'nothing' }
  const entered = readTyped(session, question, text)
  if (entered.kind === 'refused') return { kind: 'nothing' }
  return {
    kind: 'echo',
    says: entered.echo,
    ...(entered.kind === 'answer' && entered.note !== undefined ? { note: entered.note } : {}),
  }
}

/** Reads what is typed at a question: the whole answer, or for a table the row being typed. */
export function readTyped(session: Session, question: Question, text: string): Entered {
  const asking = askingOf(question, session.job, session.plan, session.today)
  const { entry } = question.field
  const wholeTable = entry.kind !== 'table' || /[\r\n]/.test(text) || WHOLE_TABLE_WORDS.test(text.trim())
  return wholeTable ? enter(text, asking) : enterRow(text, entry, asking)
}

/** Words that answer a table as a whole. */
export const WHOLE_TABLE_WORDS = /^(?:none|nm|not measured(?: yet)?|not yet|(?:as )?suggested)$/i
