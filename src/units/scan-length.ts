import { type Length, NM_PER_INCH, NM_PER_MM, nanometres } from './length.ts'
import { type NotRead, notRead } from './reading.ts'
import { showLength, type UnitSystem } from './show-length.ts'

export type WrittenUnit = 'in' | 'ft' | 'mm' | 'cm' | 'm'

/** One length found in a line of text. */
export interface ScannedLength {
  readonly kind: 'length'
  readonly value: Length
  /** The unit the person wrote; undefined when the job's unit was taken. */
  readonly written: WrittenUnit | undefined
  /** The person's own characters. */
  readonly text: string
  readonly end: number
}

/**
 * Reads one length of a line (its marks already plain, see `plainMarks`) from position `from`: `41 1/4`, `41-1/4`, `41.25`,
 * `3' 5 1/4"`, `3ft 5-1/4in`, `1048mm`, `104,8 cm`, `-1/8`. Without a unit the job's own is taken. Undefined when no length
 * starts there. Never guesses: a figure with two readings is refused in words. Linear in the length of the line.
 */
export function scanLength(line: string, from: number, units: UnitSystem): ScannedLength | NotRead | undefined {
  const sign = /[+-](?=[\d.])/y
  const negative = matchAt(sign, line, from)?.[0] === '-'
  const start = negative || line[from] === '+' ? from + 1 : from
  const first = scanAmount(line, start)
  if (first === undefined || first.kind === 'not-read') return first
  const rest = first.unit === 'ft' ? scanInchesAfterFeet(line, first.end) : undefined
  if (rest?.kind === 'not-read') return rest
  const last = rest ?? first
  const problem = problemOf(first, units) ?? (rest && problemOf(rest, 'inch'))
  if (problem !== undefined) return notRead(problem)
  const nm = nanometresOf(first, units) + (rest ? nanometresOf(rest, 'inch') : 0n)
  if (nm > LONGEST) return notRead(`${line.slice(from, last.end)} is longer than any wall.`)
  return {
    kind: 'length',
    value: nanometres(Number(negative ? -nm : nm)),
    written: first.unit,
    text: line.slice(from, last.end),
    end: last.end,
  }
}

/** 100 km: any figure beyond it is a slip, and far below what whole nanometres can hold. */
const LONGEST = 100_000_000_000_000n

const NM_PER_UNIT: Readonly<Record<WrittenUnit, bigint>> = {
  in: BigInt(NM_PER_INCH),
  ft: BigInt(NM_PER_INCH * 12),
  mm: BigInt(NM_PER_MM),
  cm: BigInt(NM_PER_MM * 10),
  m: BigInt(NM_PER_MM * 1000),
}

/** A figure as an exact fraction, its unit when one was written, and where it ends. */
interface Amount {
  readonly kind: 'amount'
  readonly whole: bigint
  readonly top: bigint
  readonly bottom: bigint
  readonly fraction: boolean
  readonly unit: WrittenUnit | undefined
  readonly text: string
  readonly end: number
}

const MOST_DIGITS = 12

function scanAmount(line: string, from: number): Amount | NotRead | undefined {
  const number = matchAt(/(\d*)(?:([.,])(\d+))?/y, line, from)
  const [text, whole = '', mark, decimals = ''] = number ?? ['']
  if (text === '') return undefined
  const end = from + text.length
  if (whole.length > MOST_DIGITS || decimals.length > MOST_DIGITS) return notRead('That figure has too many digits.')
  if (/[.,]\d/y.test(line.slice(end, end + 2))) return notRead(`${line.slice(from)} has two decimal marks. Type one.`)
  if (mark === ',' && decimals.length === 3 && whole !== '0' && whole !== '')
    return notRead(`${text} can be read two ways. Type ${whole}${decimals} or ${whole}.${decimals}.`)
  if (mark !== undefined) return amount(line, from, end, 0n, BigInt(whole + decimals), 10n ** BigInt(decimals.length))
  return withFraction(line, from, end, whole)
}

/** `41 1/4`, `41-1/4`, `41 - 1/4`, or `1/4` alone: the whole number is already read. */
function withFraction(line: string, from: number, end: number, whole: string): Amount | NotRead {
  const alone = matchAt(/\/(\d+)/y, line, end)
  if (alone !== undefined) return fraction(line, from, end + alone[0].length, ['0', whole, alone[1] ?? ''])
  const joined = matchAt(/(?: +| *- +|-)(\d+)\/(\d+)/y, line, end)
  if (joined !== undefined)
    return fraction(line, from, end + joined[0].length, [whole, joined[1] ?? '', joined[2] ?? ''])
  return amount(line, from, end, BigInt(whole), 0n, 1n)
}

function fraction(line: string, from: number, end: number, [whole, top, bottom]: readonly [string, string, string]) {
  if (top.length > MOST_DIGITS || bottom.length > MOST_DIGITS) return notRead('That figure has too many digits.')
  return amount(line, from, end, BigInt(whole), BigInt(top), BigInt(bottom))
}

const UNIT_WORDS: Readonly<Record<string, WrittenUnit>> = {
  '"': 'in',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
}

function amount(line: string, from: number, end: number, whole: bigint, top: bigint, bottom: bigint): Amount {
  const found = matchAt(/ *(?:(["'])|([a-z]+)\.?)/y, line, end)
  const unit = UNIT_WORDS[found?.[1] ?? found?.[2] ?? '']
  const after = unit === undefined ? end : end + (found?.[0].length ?? 0)
  const written = line.slice(from, end).trim()
  const isFraction = line.slice(from, end).includes('/')
  return { kind: 'amount', whole, top, bottom, fraction: isFraction, unit, text: written, end: after }
}

/** The inches behind `3'` or `3ft`, if they are there: a figure of its own unit (`3' 4'`) begins a new length. */
function scanInchesAfterFeet(line: string, from: number): Amount | NotRead | undefined {
  const start = from + (matchAt(/ *-? *(?=\d)/y, line, from)?.[0].length ?? 0)
  if (/^ +-\d/.test(line.slice(from, start + 1))) return undefined
  const inches = scanAmount(line, start)
  if (inches === undefined || inches.kind === 'not-read') return inches
  if (inches.unit !== undefined && inches.unit !== 'in') return undefined
  return inches.whole < 12n
    ? inches
    : notRead(`Inches behind feet are fewer than 12; ${inches.text} stands there. Type it in inches alone.`)
}

const TAPE = [2n, 4n, 8n, 16n, 32n, 64n]

/** What is wrong with a fraction: a tape shows halves to 64ths, a rule shows millimetres and tenths. */
function problemOf(a: Amount, units: UnitSystem): string | undefined {
  if (!a.fraction) return undefined
  if (a.unit === undefined && units === 'metric')
    return `${a.text} looks like inches. Type "${a.text} in", or millimetres with a point.`
  if (a.bottom === 0n) return `${a.text} divides by 0. A tape has halves to 64ths.`
  if (TAPE.includes(a.bottom) && a.top < a.bottom) return undefined
  const sixtyFourths = (2n * 64n * (a.whole * a.bottom + a.top) + a.bottom) / (2n * a.bottom)
  if (sixtyFourths * (NM_PER_UNIT.in / 64n) > LONGEST) return 'That figure has too many digits.'
  const nearest = showLength(nanometres(Number(sixtyFourths) * (NM_PER_INCH / 64)), 'inch')
  return `A tape has halves to 64ths. Nearest to ${a.text}: ${nearest}.`
}

function nanometresOf(a: Amount, units: UnitSystem): bigint {
  const unit = NM_PER_UNIT[a.unit ?? (units === 'inch' ? 'in' : 'mm')]
  const top = (a.whole * a.bottom + a.top) * unit
  return (2n * top + a.bottom) / (2n * a.bottom)
}

function matchAt(pattern: RegExp, line: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at
  return pattern.exec(line) ?? undefined
}
