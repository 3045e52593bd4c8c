import type { Question } from '../interview/asked.ts'
import { type Draft, EMPTY_DRAFT } from '../interview/draft.ts'
import { BAYS_EXAMPLE } from '../interview/enter-bays.ts'
import { matchOption } from '../interview/enter-choice.ts'
import type { Said, Session } from '../interview/session.ts'
import { showAnswer } from '../interview/show-answer.ts'
import { draftHere } from '../interview/type-into.ts'
import { answerOf } from '../job/job.ts'
import type { Option } from '../things/field.ts'
import { fitEnd } from './cells.ts'
import {
  airy,
  BLANK,
  bodyRoom,
  effectWords,
  type Frame,
  fact,
  framed,
  heading,
  type Layout,
  marked,
  sentence,
} from './frame.ts'
import { optionList, tableRows } from './lists.ts'
import { placeOf, savedWords } from './place-words.ts'

/** A question: where we are, what is asked and why, what is suggested, the input, what it reads as, the last effect, the keys. */
export function questionPage(layout: Layout, session: Session, question: Question): Frame {
  const { field, bay } = question
  const draft = draftHere(session) ?? EMPTY_DRAFT
  const head = heading(layout, placeOf(session, question), savedWords(session))
  const top = [
    ...sentence(layout, field.asks(bay), 'bold'),
    BLANK,
    ...fact(layout, 'why', field.why),
    ...standing(layout, session, question),
    ...airy(layout),
  ]
  const below = saidRows(layout, session, question)
  const keys = keysOf(question)
  const room = bodyRoom(layout, keys) - top.length - below.length
  const body = [...top, ...input(layout, session, question, draft, Math.max(2, room)), ...below]
  return framed(layout, { head, body, effect: effectWords(layout, session.effect), keys })
}

/** What stands already: the answer, what is suggested with its reason, or what is assumed until it is measured. */
function standing(layout: Layout, session: Session, question: Question): Frame {
  const { field, place, key } = question
  const answer = answerOf(session.job, field, place)
  const used = session.plan.used.get(key)
  const now =
    answer === undefined || field.entry.kind === 'table'
      ? []
      : fact(layout, 'now', showAnswer(field, answer, session.plan.show))
  if (used?.suggested === undefined) return answer === undefined ? [...now, ...left(layout, question)] : now
  const value = showAnswer(field, used.suggested, session.plan.show)
  const word = used.suggestedOrigin === 'assumed' ? 'left out' : 'suggested'
  return [...now, ...fact(layout, word, `${value}   ${used.suggestedOrigin ?? used.origin}: ${used.because}`)]
}

const left = (layout: Layout, { field }: Question): Frame =>
  field.missing === 'suggest' ? [] : fact(layout, 'left out', 'not measured yet; what rests on it waits')

function input(layout: Layout, session: Session, question: Question, draft: Draft, room: number): Frame {
  const { entry, short } = question.field
  const typed = `${withCursor(draft, layout)}`
  switch (entry.kind) {
    case 'choice': {
      const chosen = chosenOption(session, question, draft, entry.options)
      const line = marked(layout, fact(layout, short, typed))
      const list = { options: entry.options, chosen, now: nowOption(session, question), room: room - line.length }
      return [...optionList(layout, list), ...line]
    }
    case 'table':
      return tableRows(layout, { columns: entry.columns, draft, typed, units: session.plan.show.units, room })
    case 'bays':
      return [...fact(layout, 'like', BAYS_EXAMPLE), ...airy(layout), ...marked(layout, fact(layout, short, typed))]
    default:
      return marked(layout, fact(layout, short, typed))
  }
}

const nowOption = (session: Session, { field, place, key }: Question): unknown =>
  answerOf(session.job, field, place) ?? session.plan.used.get(key)?.value

function chosenOption(
  session: Session,
  question: Question,
  draft: Draft,
  options: readonly Option[],
): string | undefined {
  const found = matchOption(draft.line.text, options)
  if (found.kind === 'one') return found.option.id
  const now = nowOption(session, question)
  return draft.line.text === '' ? options.find((o) => o.id === now)?.id : undefined
}

/** The line with a mark where the next letter goes; of a long one its end. */
function withCursor({ line }: Draft, layout: Layout): string {
  const letters = [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(line.text)].map((s) => s.segment)
  const text = `${letters.slice(0, line.cursor).join('')}_${letters.slice(line.cursor).join('')}`.replace(
    /[\r\n\t]+/g,
    ' ; ',
  )
  return fitEnd(text, layout.width - layout.facts)
}

/** Rows kept for what is understood or wrong, blank when nothing is said. */
function saidRows(layout: Layout, session: Session, question: Question): Frame {
  const rows = sayRows(layout, session.said)
  const problem = session.problem === '' ? [] : fact(layout, 'look', `Not saved yet: ${session.problem}`)
  const empty = rows.length === 0 && question.field.entry.kind !== 'text' ? [BLANK] : rows
  return [...empty, ...problem]
}

/** What is said about the typed line, with its word. */
export function sayRows(layout: Layout, said: Said): Frame {
  switch (said.kind) {
    case 'nothing':
      return []
    case 'echo':
      return [
        ...fact(layout, 'reads as', said.says),
        ...(said.note === undefined ? [] : fact(layout, 'look', said.note)),
      ]
    case 'held':
      return fact(layout, 'look', said.says, 'bold')
    case 'error':
      return fact(layout, 'Error:', said.says, 'bold')
  }
}

function keysOf({ field }: Question): string {
  const unmeasured = field.missing === 'suggest' ? '' : ' · nm not measured'
  switch (field.entry.kind) {
    case 'table':
      return `Enter keep row, on an empty row finish · ↑ ↓ rows${unmeasured} · Esc back · ? help`
    case 'choice':
      return `Enter accept · ↑ ↓ or a number choose${unmeasured} · Esc back · ? help`
    default:
      return `Enter accept${unmeasured} · Esc back · ? help`
  }
}
