import { daysOff } from '../../job/chapters/install.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { addDays, type Day, day, daysBetween } from '../../units/day.ts'

export const notADay = messageKind<{ readonly word: string }>({
  code: 'N32',
  weight: 'note',
  source: 'ISO 8601 dates',
  says: ({ word }) => ({
    short: `"${word}" is not a day, so work may be planned on it.`,
    why: 'A day off is written year-month-day: 2026-12-24.',
    todo: 'Write it like that; two days with ".." between them are all the days from one to the other.',
  }),
})

/** Longest span of days off that is taken at its word: a year. */
const LONGEST_SPAN = 366
const SPAN = /^(.+?)\.\.(.+)$/

/** Reads days off as people list them: ISO dates apart by spaces, commas or semicolons, spans as `2026-12-24..2027-01-02`. */
export function readDaysOff(text: string): { readonly days: readonly Day[]; readonly messages: readonly Message[] } {
  const words = text.split(/[\s,;]+/).filter((w) => w !== '')
  const read = words.map((word) => ({ word, days: daysOf(word) }))
  return {
    days: read.flatMap(({ days }) => days ?? []),
    messages: read
      .filter(({ days }) => days === undefined)
      .map(({ word }) => raise(notADay, { about: questionKey('job', daysOff), place: 'days off' }, { word })),
  }
}

function daysOf(word: string): readonly Day[] | undefined {
  const span = SPAN.exec(word)
  if (span === null) {
    const one = dayIn(word)
    return one === undefined ? undefined : [one]
  }
  const [from, to] = [dayIn(span[1] ?? ''), dayIn(span[2] ?? '')]
  if (from === undefined || to === undefined) return undefined
  const length = daysBetween(from, to)
  if (length < 0 || length > LONGEST_SPAN) return undefined
  return Array.from({ length: length + 1 }, (_, i) => addDays(from, i))
}

const ISO_DAY = /^(\d{4})-(\d{1,2})-(\d{1,2})$/

/** A day that exists, also written without leading zeros; undefined for any other word. */
function dayIn(word: string): Day | undefined {
  const match = ISO_DAY.exec(word)
  if (match === null) return undefined
  const iso = `${match[1]}-${(match[2] ?? '').padStart(2, '0')}-${(match[3] ?? '').padStart(2, '0')}`
  try {
    return day(iso)
  } catch (problem) {
    if (problem instanceof RangeError) return undefined
    throw problem
  }
}
