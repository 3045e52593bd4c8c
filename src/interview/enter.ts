import { NOT_MEASURED } from '../things/field.ts'
import type { Asking } from './asking.ts'
import { cleanText } from './clean-text.ts'
import { enterBays } from './enter-bays.ts'
import { enterChoice, enterYesNo } from './enter-choice.ts'
import { enterCount, enterDay, enterHours, enterMoney, enterNumber, enterPercent } from './enter-figure.ts'
import { enterLength, enterLengths } from './enter-length.ts'
import { enterTable } from './enter-table.ts'
import { enterText } from './enter-text.ts'
import { answer, type Entered, refused } from './entered.ts'

/** Longest typed answer, by how it is typed: beyond it nothing is read, and nothing is cut silently. */
const LONGEST = 200
const LONGEST_TABLE = 4000

/**
 * Reads a typed answer to a question. Gives the value with an echo of what was understood, or words that say what is wrong
 * with this value and the nearest thing that works. `suggested` takes an answer out; `not measured` (or `nm`) is an answer
 * wherever a measurement is asked.
 */
export function enter(typed: string, asking: Asking): Entered {
  const { field } = asking.question
  if (field.entry.kind === 'text') return enterText(typed, field.entry)
  const most = field.entry.kind === 'table' || field.entry.kind === 'lengths' ? LONGEST_TABLE : LONGEST
  if (typed.length > most) return refused(`Too long for this question (limit ${most} characters).`)
  const rows = field.entry.kind === 'table' ? typed.split(/\r\n|\r|\n/) : [typed]
  const cleaned = rows.map(cleanText)
  const text = cleaned.map((c) => c.text).join('\n')
  const entered = special(text, asking) ?? enterEntry(text, asking)
  const note = cleaned.find((c) => c.note !== undefined)?.note
  const checked = checkSchema(entered, asking)
  return checked.kind === 'answer' && note !== undefined ? { ...checked, note } : checked
}

function special(text: string, asking: Asking): Entered | undefined {
  const words = text.toLowerCase().replace(/\s+/g, ' ').trim()
  const { missing } = asking.question.field
  if (words === 'suggested' || words === 'as suggested')
    return asking.used?.suggested === undefined
      ? refused('Nothing is suggested here: it has to be typed.')
      : answer(undefined, 'as suggested')
  if (!['nm', 'not measured', 'not measured yet', 'not yet'].includes(words)) return undefined
  if (missing === 'suggest')
    return refused('This is a decision, not a measurement: type it, or Enter takes what is suggested.')
  return answer(NOT_MEASURED, 'not measured yet')
}

function enterEntry(text: string, asking: Asking): Entered {
  const { entry } = asking.question.field
  switch (entry.kind) {
    case 'length':
      return enterLength(text, entry, asking)
    case 'lengths':
      return enterLengths(text, entry, asking)
    case 'table':
      return enterTable(text, entry, asking)
    case 'bays':
      return enterBays(text, asking)
    case 'count':
      return enterCount(text, entry)
    case 'choice':
      return enterChoice(text, entry.options)
    case 'yes-no':
      return enterYesNo(text)
    case 'text':
      return enterText(text, entry)
    case 'money':
      return enterMoney(text, asking)
    case 'hours':
      return enterHours(text, entry)
    case 'percent':
      return enterPercent(text, entry)
    case 'number':
      return enterNumber(text, entry)
    case 'day':
      return enterDay(text, asking)
  }
}

/** The job file's own schema has the last word: nothing is kept that could not be opened again. */
function checkSchema(entered: Entered, asking: Asking): Entered {
  if (entered.kind === 'refused' || entered.value === undefined || entered.value === NOT_MEASURED) return entered
  const { field } = asking.question
  return field.schema.safeParse(entered.value).success
    ? entered
    : refused(`${entered.echo} is outside what ${field.short} can be. Look at ? for an example.`)
}
