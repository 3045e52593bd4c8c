import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseHours } from '../../src/units/parse-hours.ts'

const readOf = (typed: string) => {
  const found = parseHours(typed)
  return found.kind === 'read' ? found.value : found.says
}

describe('seven and a half hours, as people write them', () => {
  const spellings =
    '7 1/2|7-1/2|7½|7 ½|7.5|7,5|7:30|7h30|7 h 30|7h 30min|7 h 30 min|7h30m|7.5 h|7.5h|7,5 hours|7 1/2 h|7 1/2 hours|450 min|450min|450 minutes|450m|7.50|7 hrs 30 mins|7.5 hr'
  it.each(spellings.split('|'))('%s', (typed) => {
    expect(readOf(typed)).toBe(7.5)
  })
  it.each([
    ['7:75', 'An hour has 60 minutes; 75 stands there.'],
    ['7 1/0', '7 1/0 divides by 0. Type it like 7 1/2 or 7:30.'],
    ['soon', '"soon" is not a number of hours. Type it like 7 1/2, 7.5, 7:30 or 450 min.'],
  ])('%s', (typed, says) => {
    expect(readOf(typed)).toBe(says)
  })
})
it('answers any text', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (typed) => readOf(typed) !== ''))
})
