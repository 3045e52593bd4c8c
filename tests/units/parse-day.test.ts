import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, day, showDayAndYear } from '../../src/units/day.ts'
import { parseDay } from '../../src/units/parse-day.ts'

/** A Thursday. */
const TODAY = day('2026-11-12')
const readOf = (typed: string) => {
  const found = parseDay(typed, TODAY)
  return found.kind === 'read' ? found.value : found.says
}

describe('10 December 2026, as people write it', () => {
  const spellings =
    '10 dec|dec 10|10 Dec|10 DEC|10 december|december 10|10 dec 2026|dec 10 2026|dec 10, 2026|10. dec|10th dec|dec 10th|10 decem|thu 10 dec|Thursday 10 December 2026|Thu 10 Dec 2026|2026-12-10|2026-12-10 | +28 days|+28|+4 weeks|+4w|in 28 days|+28d|10\u00A0dec'
  it.each(spellings.split('|'))('%s', (typed) => {
    expect(readOf(typed)).toBe('2026-12-10')
  })
})
describe('days near today, Thu 12 Nov 2026', () => {
  it.each([
    ['today', '2026-11-12'],
    ['tomorrow', '2026-11-13'],
    ['thu', '2026-11-12'],
    ['fri', '2026-11-13'],
    ['wed', '2026-11-18'],
    ['next thu', '2026-11-19'],
    ['next mon', '2026-11-16'],
    ['+3 days', '2026-11-15'],
    ['5 mar', '2027-03-05'],
    ['25/12', '2026-12-25'],
    ['12/25/2026', '2026-12-25'],
    ['29 feb 2028', '2028-02-29'],
  ])('%s', (typed, expected) => {
    expect(readOf(typed)).toBe(expected)
  })
  it.each([
    ['31 feb', 'February 2026 has 28 days.'],
    ['31 nov 2026', 'November 2026 has 30 days.'],
    ['10/12', '10/12 can be read two ways. Type 10 dec or 12 oct.'],
    ['2026-13-01', 'A year has 12 months; 13 stands there.'],
    ['soon', '"soon" is not a day. Type it like 10 dec, thu, +3 days or 2026-12-10.'],
  ])('%s', (typed, says) => {
    expect(readOf(typed)).toBe(says)
  })
})
it('shown and read again gives the same day', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 20_000 }),
      (n) => readOf(showDayAndYear(addDays(TODAY, n))) === addDays(TODAY, n),
    ),
  )
})
it('answers any text', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (typed) => readOf(typed) !== ''))
})
