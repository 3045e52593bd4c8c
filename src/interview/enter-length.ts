import type { Entry, LengthRange } from '../things/field.ts'
import type { Show } from '../things/show.ts'
import { type Length, millimetres } from '../units/length.ts'
import { parseLengths } from '../units/parse-length.ts'
import type { ScannedLength } from '../units/scan-length.ts'
import { showLengthWithUnit } from '../units/show-length.ts'
import type { Asking } from './asking.ts'
import { answer, type Entered, held, type Refused, refused } from './entered.ts'
import { inWords } from './number-words.ts'
import { joinedComma, joinedFigures, parted } from './parted.ts'

/** One length, inside the question's range; `1048` in an inch job is held and asked back as millimetres. */
export function enterLength(text: string, entry: Extract<Entry, { kind: 'length' }>, asking: Asking): Entered {
  const found = parseLengths(text, asking.show.units)
  if (found.kind === 'not-read') return refused(found.says)
  const [only, second] = found.value
  if (only === undefined) return refused('A length is needed, like 41 1/4 or 1048 mm.')
  if (second !== undefined)
    return refused(
      `${capital(inWords(found.value.length))} lengths for one: ${found.value.map((f) => f.text).join(' and ')}. Which one is it?`,
    )
  const slip = outsideRange(only, entry.range, asking)
  if (slip?.kind === 'refused') return slip
  return slip === undefined
    ? answer(only.value, echoLength(only, asking.show))
    : held(slip.value, showIn(asking.show)(slip.value), slip.says)
}

/** A row of lengths on one line. */
export function enterLengths(text: string, entry: Extract<Entry, { kind: 'lengths' }>, asking: Asking): Entered {
  const found = parseLengths(parted(text).replace(/\n/g, ' '), asking.show.units)
  if (found.kind === 'not-read') return refused(`${found.says}${joinedComma(text)}`)
  const wrong = wrongCount(found.value, entry, text)
  if (wrong !== undefined) return refused(wrong)
  const slips = found.value.map((f) => outsideRange(f, entry.range, asking))
  const bad = slips.find((s) => s?.kind === 'refused')
  if (bad?.kind === 'refused') return bad
  const values = found.value.map((f, i) => slipValue(slips[i]) ?? f.value)
  const echo = values.map((v, i) => `${entry.labels?.[i] ?? `${i + 1}:`} ${asking.show.withUnit(v)}`).join(', ')
  const slip = slips.find((s) => s !== undefined)
  return slip === undefined ? answer(values, echo) : held(values, echo, slip.says)
}

function wrongCount(
  found: readonly ScannedLength[],
  entry: Extract<Entry, { kind: 'lengths' }>,
  text: string,
): string | undefined {
  const { least, most, labels } = entry
  const names = labels === undefined ? '' : `: ${labels.join(', ')}`
  const wanted =
    least === most ? inWords(least) : found.length < least ? `at least ${inWords(least)}` : `at most ${inWords(most)}`
  if (found.length >= least && found.length <= most) return undefined
  const lead = `${capital(inWords(found.length))} ${found.length === 1 ? 'value' : 'values'} for ${wanted}${names}.`
  return found.length > most
    ? `${lead} Which one is left out?`
    : `${lead} Type them all on one line.${joinedFigures(text)}`
}

export type Slip = { readonly kind: 'slip'; readonly value: Length; readonly says: string } | Refused

const slipValue = (slip: Slip | undefined): Length | undefined => (slip?.kind === 'slip' ? slip.value : undefined)

/** A length outside its range: asked back in millimetres when that is likely and no unit was written, else refused with the range. */
export function outsideRange(found: ScannedLength, range: LengthRange, asking: Asking): Slip | undefined {
  const { units } = asking.show
  const [least, most] = range[units]
  if (found.value >= least && found.value <= most) return undefined
  const other = found.written === undefined ? asMillimetres(found, asking.show) : undefined
  if (other !== undefined && other.value >= least && other.value <= most)
    return { kind: 'slip', value: other.value, says: other.says }
  const says = showIn(asking.show)
  const { short } = asking.question.field
  if (found.value < 0 && least >= 0)
    return refused(`${short}: ${found.text} is less than 0. It cannot lean or drop here.`)
  return refused(
    `${short}: ${says(found.value)} is ${found.value < least ? 'less' : 'more'} than it can be. It is between ${says(least)} and ${says(most)}.`,
  )
}

/** In an inch job a figure of hundreds is probably millimetres; a smaller one may be a slip of any kind and is not turned. */
function asMillimetres(
  found: ScannedLength,
  show: Show,
): { readonly value: Length; readonly says: string } | undefined {
  if (show.units !== 'inch' || !HUNDREDS.test(found.text)) return undefined
  const figure = Number(found.text.replace(',', '.'))
  const value = millimetres(figure)
  const size = `${found.text} in is ${Math.round(figure / 12)} ft.`
  return { value, says: `${size} Did you mean ${found.text} mm (${about(value, show)})? Enter = yes.` }
}

const HUNDREDS = /^\d{3,}(?:[.,]\d+)?$/

/** `41 1/4 in`; a figure written in another unit is shown in both: `1048 mm (about 41 1/4 in)`. */
export function echoLength(found: ScannedLength, show: Show): string {
  const own =
    found.written === undefined || (found.written === 'in' || found.written === 'ft') === (show.units === 'inch')
  if (own) return show.withUnit(found.value)
  const written = showLengthWithUnit(found.value, show.units === 'inch' ? 'metric' : 'inch')
  return `${written} (${about(found.value, show)})`
}

const SIXTEENTHS = 16
const about = (value: Length, show: Show): string => {
  const text = showLengthWithUnit(value, show.units, SIXTEENTHS)
  return show.withUnit(value) === text ? text : `about ${text}`
}

const showIn = (show: Show) => show.withUnit
const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`
