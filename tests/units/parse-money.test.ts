import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { minorUnits, showMoney } from '../../src/units/money.ts'
import { parseMoney } from '../../src/units/parse-money.ts'

const readOf = (typed: string, currency = 'USD') => {
  const found = parseMoney(typed, currency)
  return found.kind === 'read' ? found.value : found.says
}

describe('1234.50 as people write it', () => {
  const spellings =
    '$1,234.50|1234.5|1234,50|1234.50|1,234.50|1.234,50|1 234,50|1\u00A0234.50|1\u202F234,5|USD 1234.50|usd1234.50|1234.50 USD|1234.50 usd|$ 1234.50|1234.50$|1234.50 $| 1234.5 |1,234.5|1’234.50|$1234.5|1\u2009234.50'
  it.each(spellings.split('|'))('%s', (typed) => {
    expect(readOf(typed)).toBe(123_450)
  })
  it.each([
    ['12', 1200],
    ['0', 0],
    ['.5', 50],
    ['1,234', 123_400],
    ['1,234,567', 123_456_700],
    ['€12,50', 'This job is in USD; "€" stands there. Type the amount alone.'],
    ['12 gbp', 'This job is in USD; "gbp" stands there. Type the amount alone.'],
    ['12.345', 'Money has two decimals. Type 12345 or 12.34.'],
    ['1.2345', 'Money has two decimals. Type it like 1234.50.'],
    ['-5', 'An amount cannot be less than 0.'],
    ['lots', 'An amount is needed, like 1234.50.'],
    ['', 'An amount is needed, like 1234.50.'],
  ])('%s', (typed, expected) => {
    expect(readOf(typed)).toBe(expected)
  })
  it('takes the job’s own sign only', () => {
    expect(readOf('€12,50', 'EUR')).toBe(1250)
    expect(readOf('£12.50', 'GBP')).toBe(1250)
  })
})

it('shown and read again gives the same cents', () => {
  fc.assert(fc.property(fc.integer({ min: 0, max: 1e11 }), (n) => readOf(showMoney(minorUnits(n))) === n))
})
it('answers any text', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (typed) => readOf(typed) !== ''))
})
