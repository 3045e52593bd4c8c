import type { FigureRow, ValueField } from './figure.ts'
import { lengthWritten } from './figure-length.ts'

type Value = string | number

/** What is wrong with one value of a person's own beside the published one: not a length, a slip, or on the unsafe side. */
export function ownValueFault(
  row: FigureRow,
  field: ValueField,
  { published, own }: { readonly published: Value; readonly own: Value },
): readonly string[] {
  const [before, now] = [measureOf(published), measureOf(own)]
  if (before === undefined) return []
  if (now === undefined) return [`"${field}": "${own}" is not a length: write 1 1/4 in, 3/8 in or 32 mm.`]
  const unit = 'unit' in row && row.unit !== '1' ? ` ${row.unit}` : ''
  const words = (value: Value) => `${value}${unit}`
  const [least, most] = boundsOf(row, before)
  if (now < least || now > most)
    return [
      `"${field}": ${words(own)} cannot be meant: published is ${words(published)}, and it may be from ${bound(least, published, unit)} to ${bound(most, published, unit)}.`,
    ]
  if (typeof now === 'number' && typeof own === 'number' && isWhole(row) && !Number.isInteger(now))
    return [`"${field}": ${words(own)} is not whole: write ${Math.floor(now)} or ${Math.ceil(now)}.`]
  const unsafe = row.safe === 'more' ? now < before : row.safe === 'less' && now > before
  if (!unsafe) return []
  return [
    `"${field}": ${words(own)} is ${row.safe === 'more' ? 'less' : 'more'} than the published ${words(published)} (${row.source}). This figure changes only to the safe side: write ${words(published)} or ${row.safe}, or take it out. Local code, the appliance manual and licensed practice govern.`,
  ]
}

/** What is counted comes whole. */
const WHOLE = ['cents', 'day', 'days', 'working days', 'year', 'piece', 'pieces', 'coat']

const isWhole = (row: FigureRow): boolean => 'unit' in row && WHOLE.includes(row.unit)

/** A length in nanometres, a number as it is. */
const measureOf = (value: Value): number | undefined => (typeof value === 'number' ? value : lengthWritten(value))

/** Further off than this many times, a number or a length is a slip of the pen. */
const SLIP = { number: 10, length: 4 } as const

/** From a tenth to ten times of what is published, a length from a quarter to four times, where the row does not name its own bounds. */
function boundsOf(row: FigureRow, published: number): readonly [least: number, most: number] {
  const slip = 'unit' in row ? SLIP.number : SLIP.length
  const { least, most } = 'unit' in row ? row : { least: undefined, most: undefined }
  const widest = published === 0 && 'unit' in row && row.unit === '%' ? 100 : published * slip
  return [least ?? published / slip, most ?? widest]
}

const NM_PER_MM = 1e6
const bound = (value: number, published: Value, unit: string): string =>
  typeof published === 'number' ? `${value}${unit}` : `${Math.round(value / NM_PER_MM)} mm`
