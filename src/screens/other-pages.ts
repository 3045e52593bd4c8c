import { isConfirmed } from '../interview/confirmed.ts'
import { EMPTY_DRAFT } from '../interview/draft.ts'
import { BAYS_EXAMPLE } from '../interview/enter-bays.ts'
import { columnWords, exampleRow } from '../interview/example-row.ts'
import type { Session } from '../interview/session.ts'
import { draftHere } from '../interview/type-into.ts'
import { fieldById } from '../job/fields.ts'
import type { Entry } from '../things/field.ts'
import type { Message } from '../things/message.ts'
import { showDayAndYear } from '../units/day.ts'
import type { UnitSystem } from '../units/show-length.ts'
import { airy, BLANK, effectWords, type Frame, fact, framed, heading, type Layout, marked, sentence } from './frame.ts'
import { jobName, savedWords } from './place-words.ts'
import { sayRows } from './question-page.ts'

const WEIGHT_WORDS = { stop: 'Stop:', confirm: 'Confirm:', note: 'note' } as const

/** A message on its own: what, why, what to do, its source, and the numbered ways out or the explicit yes. */
export function messagePage(layout: Layout, session: Session, message: Message): Frame {
  const typed = (draftHere(session) ?? EMPTY_DRAFT).line.text
  const question = fieldById(message.about.slice(message.about.indexOf('.') + 1))
  const body: Frame = [
    ...sentence(layout, message.place === '' ? (question?.short ?? '') : message.place, 'bold'),
    BLANK,
    ...fact(layout, WEIGHT_WORDS[message.weight], message.short, 'bold'),
    ...fact(layout, 'why', message.why),
    ...fact(layout, 'nearest', message.todo),
    ...fact(layout, 'source', message.source),
    ...airy(layout),
    ...waysOut(layout, message, session),
    ...(message.weight === 'note' ? [] : marked(layout, fact(layout, 'answer', `${typed}_`))),
    ...sayRows(layout, session.said),
  ]
  return framed(layout, {
    head: heading(layout, `${jobName(session.job)} · ${message.weight}`, savedWords(session)),
    body,
    effect: effectWords(layout, session.effect),
    keys: messageKeys(message),
  })
}

function waysOut(layout: Layout, message: Message, session: Session): Frame {
  if (message.weight === 'confirm') {
    const kept = isConfirmed(session.job, message)
      ? 'A yes is kept already, for these numbers.'
      : 'Type yes to keep it; Enter alone means no.'
    return fact(
      layout,
      'if yes',
      `${kept} It is kept in the job with the date, ${showDayAndYear(session.today)}, and printed.`,
    )
  }
  return message.fixes.flatMap((fix, i) => fact(layout, i === 0 ? 'works' : '', `${i + 1}  ${fix.says}`))
}

function messageKeys(message: Message): string {
  if (message.weight === 'confirm') return 'Enter no, go back · yes then Enter keep · Esc back'
  const numbers = message.fixes.map((_, i) => i + 1).join(' ')
  return numbers === '' ? 'Enter go on · Esc change it' : `${numbers} then Enter · Enter go on · Esc change it`
}

/** Help for a question: how to measure it, an example, what happens when it is left out. */
export function helpPage(layout: Layout, session: Session, key: string): Frame {
  const question = session.asked.find((q) => q.key === key)
  const field = question?.field
  const body: Frame =
    field === undefined
      ? []
      : [
          ...sentence(layout, field.asks(question?.bay), 'bold'),
          BLANK,
          ...fact(layout, 'why', field.why),
          ...(field.help === '' ? [] : fact(layout, 'measure', field.help)),
          ...typedRows(layout, field.entry, session.plan.show.units),
          ...(field.missing === 'suggest'
            ? []
            : fact(layout, 'left out', 'Type nm or press Enter: it is to be measured later.')),
          ...fact(layout, 'suggested', 'Type suggested to take an answer back and follow the suggestion.'),
        ]
  return framed(layout, {
    head: heading(layout, `${jobName(session.job)} · help`, savedWords(session)),
    body,
    effect: '',
    keys: 'Esc back to the question · F4 check answers',
  })
}

/** How an answer is typed; for a table with an example row and the words of its columns. */
function typedRows(layout: Layout, entry: Entry, units: UnitSystem): Frame {
  if (entry.kind !== 'table') return fact(layout, 'typed', TYPED[entry.kind])
  return [
    ...fact(layout, 'typed', TYPED.table),
    ...fact(layout, 'columns', entry.columns.map((c) => c.says).join(' · ')),
    ...fact(layout, 'like', exampleRow(entry.columns, units)),
    ...columnWords(entry.columns).flatMap(({ column, words }) => fact(layout, column, words)),
  ]
}

const TYPED = {
  length: '41 1/4, 41-1/4, 41.25, 3\' 5 1/4", 1048 mm, 104.8 cm: the job’s own unit may be left out.',
  lengths: 'All on one line: 41 1/4 41 40 7/8. The job’s own unit may be left out.',
  table: 'One row at a time, a comma and a space or two spaces between the cells; a dash for a cell not measured.',
  bays: `The words in order, left to right: ${BAYS_EXAMPLE}.`,
  count: 'A number, in figures or as a word: 2 or two.',
  choice: 'The number, or the beginning of a word.',
  'yes-no': 'yes or no; y or n is enough.',
  text: 'Any words.',
  money: '1234.50 or 1,234.50; the currency is the job’s.',
  hours: '7 1/2, 7.5, 7:30 or 450 min.',
  percent: '15 or 15 %.',
  number: 'A number.',
  day: '10 dec, thu, next thu, +3 days or 2026-12-10.',
} as const
