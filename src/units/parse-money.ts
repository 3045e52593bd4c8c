import { MINOR_UNITS, type Money, minorUnits } from './money.ts'
import { plainMarks } from './plain-marks.ts'
import { notRead, type Reading, read } from './reading.ts'

const SIGNS: Readonly<Record<string, readonly string[]>> = {
  $: ['USD', 'CAD', 'AUD', 'NZD'],
  '€': ['EUR'],
  '£': ['GBP'],
  'fr.': ['CHF'],
  fr: ['CHF'],
}
const MOST_DIGITS = 12

/**
 * An amount in the job's currency: `$1,234.50`, `1234.5`, `1234,50`, `1.234,50`, `12`. A sign or code of the job's own
 * currency is passed over; another one is refused, never converted.
 */
export function parseMoney(typed: string, currency: string): Reading<Money> {
  const text = plainMarks(typed)
  const [, before = '', figure = '', after = ''] = /^([^\d.,-]*)([\d.,' ]*)([^\d]*)$/.exec(text) ?? []
  const mark = [before, after].map((m) => m.trim()).filter((m) => m !== '')
  const other = mark.find((m) => !isOwn(m, currency))
  if (text.startsWith('-')) return notRead('An amount cannot be less than 0.')
  if (figure.trim() === '') return notRead('An amount is needed, like 1234.50.')
  if (other !== undefined) return notRead(`This job is in ${currency}; "${other}" stands there. Type the amount alone.`)
  return readAmount(figure.replace(/[' ]/g, ''))
}

const isOwn = (mark: string, currency: string): boolean =>
  mark === currency.toLowerCase() || (SIGNS[mark]?.includes(currency) ?? false)

/** The last mark with one or two digits behind it parts the cents; marks with three digits behind them are groups. */
function readAmount(figure: string): Reading<Money> {
  const [, whole = '', cents = ''] = /^(.*?)(?:[.,](\d{0,2}))?$/.exec(figure) ?? []
  const groups = whole.split(/[.,]/)
  const grouped = groups.length > 1
  const digits = groups.join('')
  if (digits === '' && cents === '') return notRead('An amount is needed, like 1234.50.')
  if (digits.length > MOST_DIGITS) return notRead('That amount has too many digits.')
  if (grouped && !isGrouped(groups)) return notRead('Money has two decimals. Type it like 1234.50.')
  if (grouped && groups.length === 2 && cents === '' && whole.includes('.'))
    return notRead(`Money has two decimals. Type ${digits} or ${groups[0]}.${groups[1]?.slice(0, 2)}.`)
  return read(minorUnits(Number(digits || '0') * MINOR_UNITS + Number(cents.padEnd(2, '0'))))
}

const isGrouped = (groups: readonly string[]): boolean =>
  groups.every((g, i) => (i === 0 ? g.length >= 1 && g.length <= 3 : g.length === 3))
