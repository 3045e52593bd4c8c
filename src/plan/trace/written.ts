import type { Figures } from '../../figures/figures.ts'
import { fieldById } from '../../job/fields.ts'
import type { Entry, Field } from '../../things/field.ts'
import type { Quantity, Working } from '../../things/formula.ts'
import { type Show, showExact, significant } from '../../things/show.ts'
import { day, showDayAndYear } from '../../units/day.ts'
import { hours, showHours } from '../../units/hours.ts'
import { type Length, NM_PER_INCH, NM_PER_MM, nanometres } from '../../units/length.ts'
import { minorUnits, showMoney } from '../../units/money.ts'

export interface Writer {
  readonly show: Show
  readonly figures: Figures
}

/** A value in the job's units; `as` says what it counts. A list says how many it holds. */
export function written(writer: Writer, value: unknown, as: Quantity | string): string {
  if (typeof value === 'number') return writtenNumber(writer, value, as)
  if (typeof value === 'string') return writtenWord(value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (Array.isArray(value)) return `${value.length} ${value.length === 1 ? 'value' : 'values'}`
  return ''
}

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/
const writtenWord = (word: string): string => (ISO_DAY.test(word) ? showDayAndYear(day(word)) : word)

function writtenNumber({ show }: Writer, value: number, as: Quantity | string): string {
  switch (as) {
    case 'length':
      return Number.isSafeInteger(value) ? writtenLength(show, nanometres(value)) : significant(value)
    case 'money':
      return Number.isSafeInteger(value) ? `${showMoney(minorUnits(value))} ${show.currency}` : significant(value)
    case 'hours':
      return `${showHours(hours(value))} h`
    case 'mass':
      return show.mass(value)
    case 'area':
      return show.area(value)
    case 'litres':
    case 'volume':
      return `${significant(value)} l`
    case 'percent':
      return `${significant(value)} %`
    case 'force':
      return `${significant(value)} N`
    case 'pressure':
      return `${significant(value)} Pa`
    case 'days':
      return `${significant(value)} ${value === 1 ? 'day' : 'days'}`
    case 'count':
      return String(value)
    case 'number':
      return significant(value)
    default:
      return as === '1' ? significant(value) : `${significant(value)} ${as}`
  }
}

const FINEST_INCH = NM_PER_INCH / 64
const FINEST_METRIC = NM_PER_MM / 10

/** As the tape shows it; what no mark of the tape shows, to three decimals. */
function writtenLength(show: Show, length: Length): string {
  const [finest, unit] = show.units === 'inch' ? [FINEST_INCH, 'in'] : [FINEST_METRIC, 'mm']
  return length % finest === 0 ? show.withUnit(length) : `${showExact(length, show.units)} ${unit}`
}

/** What the result of a working counts; what stands inside a table of measurements is a length. */
export function quantityOf({ figures }: Writer, working: Working): Quantity | string {
  if (working.kind === 'formula') return working.gives ?? 'length'
  if (working.kind === 'figure') {
    const row = figures.row(working.id)
    return 'unit' in row ? row.unit : 'length'
  }
  const field = fieldById(working.id)
  return field === undefined ? 'length' : entryQuantity(field.entry)
}

function entryQuantity(entry: Entry): Quantity | string {
  switch (entry.kind) {
    case 'length':
    case 'lengths':
    case 'table':
      return 'length'
    case 'money':
    case 'hours':
    case 'percent':
    case 'count':
      return entry.kind
    case 'number':
      return entry.unit
    default:
      return 'count'
  }
}

/** A value kept for a question, in a few words. */
export function writtenAnswer(writer: Writer, field: Pick<Field, 'entry'>, value: unknown): string {
  const { entry } = field
  if (entry.kind === 'choice') return entry.options.find((o) => o.id === value)?.says ?? String(value)
  if (Array.isArray(value) && value.every((v): v is Length => typeof v === 'number'))
    return value.map((v, i) => [...labelOf(entry, i), writer.show.length(v)].join(' ')).join(', ')
  if (Array.isArray(value)) return `${value.length} ${value.length === 1 ? 'row' : 'rows'}`
  return written(writer, value, entryQuantity(entry))
}

const labelOf = (entry: Entry, at: number): readonly string[] => {
  const label = entry.kind === 'lengths' ? entry.labels?.[at] : undefined
  return label === undefined ? [] : [label]
}
