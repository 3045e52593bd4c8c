import type { Entry } from '../things/field.ts'
import { showDayAndYear } from '../units/day.ts'
import { showMoney } from '../units/money.ts'
import { parseDay } from '../units/parse-day.ts'
import { parseHours } from '../units/parse-hours.ts'
import { parseMoney } from '../units/parse-money.ts'
import type { Asking } from './asking.ts'
import { answer, type Entered, refused } from './entered.ts'
import { fromWords } from './number-words.ts'

interface Bounds {
  readonly least: number
  readonly most: number
}

/** A count, in figures or words, with or without what is counted: `2`, `two`, `none`, `30 days`. */
export function enterCount(text: string, bounds: Bounds): Entered {
  const typed = withoutCounted(text.trim().toLowerCase())
  const figure = /^\+?\d{1,9}$/.test(typed) ? Number(typed) : fromWords(typed)
  if (figure !== undefined) return within(figure, bounds, String(figure))
  if (/^[+-]?[\d.,/ ]+$/.test(typed)) return refused(`${text.trim()} is not a whole number. ${between(bounds)}`)
  return refused(`"${text.trim().slice(0, 40)}" is not a number. ${between(bounds)}`)
}

/** `30 days`: the word behind a number says what is counted; `3 dozen` or `2 and a half` is another number and is kept. */
function withoutCounted(text: string): string {
  const [, number = '', counted = ''] = /^(\S*[^\s\p{L}]|\p{L}{3,}) +(\p{L}[\p{L} -]*)$/u.exec(text) ?? []
  const another = counted.split(/[ -]/).some((word) => OTHER_NUMBER.has(word))
  return number === '' || another || number === 'none' ? text : number
}

const OTHER_NUMBER = new Set([
  'dozen',
  'hundred',
  'thousand',
  'half',
  'halves',
  'and',
  'or',
  'to',
  'pair',
  'pairs',
  'times',
])

/** `15`, `15 %`, `15,5`. */
export const enterPercent = (text: string, bounds: Bounds): Entered =>
  enterPlain(text.replace(/\s*(%|percent|per cent)\s*$/i, ''), bounds, '%')

export const enterNumber = (text: string, entry: Extract<Entry, { kind: 'number' }>): Entered =>
  enterPlain(text, entry, entry.unit)

function enterPlain(text: string, bounds: Bounds, unit: string): Entered {
  const figure = /^\+?(?:\d{1,9}(?:[.,]\d{1,6})?|[.,]\d{1,6})$/.test(text.trim())
    ? Number(text.trim().replace(',', '.'))
    : undefined
  return figure === undefined
    ? refused(`"${text.trim().slice(0, 40)}" is not a number. ${between(bounds)}`)
    : within(figure, bounds, `${figure} ${unit}`)
}

export function enterHours(text: string, bounds: Bounds): Entered {
  const found = parseHours(text)
  if (found.kind === 'not-read') return refused(found.says)
  return within(found.value, bounds, `${Math.round(found.value * 100) / 100} hours`)
}

export function enterMoney(text: string, asking: Asking): Entered {
  const found = parseMoney(text, asking.show.currency)
  return found.kind === 'not-read'
    ? refused(found.says)
    : answer(found.value, `${showMoney(found.value)} ${asking.show.currency}`)
}

/** The echo always has weekday, month in letters and year, so that a wrong reading is seen. */
export function enterDay(text: string, asking: Asking): Entered {
  const found = parseDay(text, asking.today)
  return found.kind === 'not-read' ? refused(found.says) : answer(found.value, showDayAndYear(found.value))
}

function within(value: number, bounds: Bounds, echo: string): Entered {
  if (value >= bounds.least && value <= bounds.most) return answer(value, echo)
  return refused(`${echo} is ${value < bounds.least ? 'less' : 'more'} than it can be. ${between(bounds)}`)
}

const between = ({ least, most }: Bounds): string => `It is between ${least} and ${most}.`
