import { addDays, type Day, day, weekday } from './day.ts'
import { plainMarks } from './plain-marks.ts'
import { type NotRead, notRead, type Reading, read } from './reading.ts'

const MONTHS = [
  ['january', 31],
  ['february', 28],
  ['march', 31],
  ['april', 30],
  ['may', 31],
  ['june', 30],
  ['july', 31],
  ['august', 31],
  ['september', 30],
  ['october', 31],
  ['november', 30],
  ['december', 31],
] as const
const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const
const LEAST_YEAR = 1900
const MOST_YEAR = 2199
const MOST_DAYS_AHEAD = 3650

/**
 * A day as people write it, counted from `today`: `10 dec`, `dec 10 2027`, `thu` (the next one, today included), `next thu`
 * (of next week), `+3 days`, `2026-12-10`. Without a year the next such day. Figures alone that can be read two ways are refused.
 */
export function parseDay(typed: string, today: Day): Reading<Day> {
  const text = plainMarks(typed).replace(/[,.]/g, ' ').replace(/ +/g, ' ').trim()
  return (
    iso(text) ??
    ahead(text, today) ??
    onWeekday(text, today) ??
    named(text, today) ??
    figures(text, today) ??
    notADay(typed)
  )
}

function iso(text: string): Reading<Day> | undefined {
  const [, y, m, d] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? []
  return d === undefined ? undefined : dayOf(Number(y), Number(m), Number(d))
}

function ahead(text: string, today: Day): Reading<Day> | undefined {
  if (text === 'today') return read(today)
  if (text === 'tomorrow') return read(addDays(today, 1))
  const [, count, unit] = /^(?:\+|in ) ?(\d{1,4}) ?(d|days?|w|weeks?)?$/.exec(text) ?? []
  if (count === undefined) return undefined
  const days = Number(count) * (unit?.startsWith('w') ? 7 : 1)
  return days <= MOST_DAYS_AHEAD ? read(addDays(today, days)) : notRead('That is more than ten years ahead.')
}

function onWeekday(text: string, today: Day): Reading<Day> | undefined {
  const next = text.startsWith('next ')
  const wanted = startOf(WEEKDAYS, next ? text.slice('next '.length) : text)
  if (wanted === undefined) return undefined
  const now = weekday(today) - 1
  return read(addDays(today, next ? 7 - now + wanted : (wanted - now + 7) % 7))
}

function named(text: string, today: Day): Reading<Day> | undefined {
  const words = text
    .split(' ')
    .filter((w) => startOf(WEEKDAYS, w) === undefined || startOf(MONTH_NAMES, w) !== undefined)
  const month = words.map((w) => startOf(MONTH_NAMES, w)).find((m) => m !== undefined)
  const numbers = words.map((w) => /^(\d{1,4})(?:st|nd|rd|th)?$/.exec(w)?.[1]).filter((n) => n !== undefined)
  const [d, y] = numbers
  if (month === undefined || d === undefined || words.length !== numbers.length + 1 || numbers.length > 2)
    return undefined
  return y === undefined ? nextSuch(month + 1, Number(d), today) : dayOf(Number(y), month + 1, Number(d))
}

const MONTH_NAMES = MONTHS.map(([name]) => name)

/** `25/12`: one of the two cannot be a month. `10/12` is never guessed. */
function figures(text: string, today: Day): Reading<Day> | undefined {
  const [, a, b, y] = /^(\d{1,2})[/ -](\d{1,2})(?:[/ -](\d{4}))?$/.exec(text) ?? []
  if (a === undefined || b === undefined) return undefined
  const [first, second] = [Number(a), Number(b)]
  if (first <= 12 && second <= 12 && first !== second)
    return notRead(`${text} can be read two ways. Type ${first} ${short(second)} or ${second} ${short(first)}.`)
  const [d, m] = first > 12 ? [first, second] : [second, first]
  return y === undefined ? nextSuch(m, d, today) : dayOf(Number(y), m, d)
}

const short = (month: number): string => MONTHS[month - 1]?.[0].slice(0, 3) ?? String(month)

function nextSuch(month: number, d: number, today: Day): Reading<Day> {
  const year = Number(today.slice(0, 4))
  const thisYear = dayOf(year, month, d)
  return thisYear.kind === 'read' && thisYear.value < today ? dayOf(year + 1, month, d) : thisYear
}

function dayOf(year: number, month: number, d: number): Reading<Day> {
  const found = MONTHS[month - 1]
  if (found === undefined) return notRead(`A year has 12 months; ${month} stands there.`)
  if (year < LEAST_YEAR || year > MOST_YEAR) return notRead(`The year ${year} is far away. Type it like 10 dec 2026.`)
  const days = month === 2 && isLeap(year) ? found[1] + 1 : found[1]
  const name = `${found[0][0]?.toUpperCase()}${found[0].slice(1)}`
  if (d < 1 || d > days) return notRead(`${name} ${year} has ${days} days.`)
  return read(day(`${year}-${String(month).padStart(2, '0')}-${String(d).padStart(2, '0')}`))
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0

/** Index of the one name that begins with the word (three letters at least). */
function startOf(names: readonly string[], word: string): number | undefined {
  const at = word.length < 3 ? -1 : names.findIndex((n) => n.startsWith(word))
  return at < 0 ? undefined : at
}

const notADay = (typed: string): NotRead =>
  notRead(`"${typed.trim().slice(0, 40)}" is not a day. Type it like 10 dec, thu, +3 days or 2026-12-10.`)
