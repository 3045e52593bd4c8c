import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { FUELS } from '../../src/kinds/fuel/list.ts'
import { MASONRY_CODES, type MasonryCodeId } from '../../src/kinds/fuel/masonry-codes.ts'
import type { WoodPiece } from '../../src/kinds/fuel/wood-rule.ts'
import { inches, type Length, millimetres, nanometres, ZERO } from '../../src/units/length.ts'
import type { UnitSystem } from '../../src/units/show-length.ts'

const rule = (code: MasonryCodeId, units: UnitSystem = 'inch') => MASONRY_CODES[code](figuresIn(units))[0]!
const at = (above: Length, standsOut: Length, beside: Length = ZERO): WoodPiece => ({ beside, above, standsOut })

/** IRC R1001.11 exception 4 (2006 to 2021): 6 in none, to 12 in 1/8 in out for each inch; 3/4 at 6 in is the printed example (hunker.com). */
const IRC_ROWS: readonly (readonly [distance: Length, largest: Length | 'none'])[] = [
  [inches(5, 15, 16), 'none'],
  [inches(6), inches(0, 3, 4)],
  [inches(7, 1, 2), inches(0, 15, 16)],
  [inches(8), inches(1)],
  [inches(10, 1, 2), inches(1, 5, 16)],
  [inches(11, 15, 16), nanometres(37_901_562)],
  [inches(12), inches(1, 1, 2)],
]

describe('IRC R1001.11 exception 4: how far wood may stand out', () => {
  it.each(IRC_ROWS)('at %d nm: %s', (distance, largest) => {
    const here = rule('irc').mostOut(at(distance, ZERO))
    expect(here).toBe(largest)
    if (largest === 'none') expect(rule('irc').allows(at(distance, ZERO))).toBe(false)
    else {
      expect(rule('irc').allows(at(distance, largest))).toBe(true)
      expect(rule('irc').allows(at(distance, nanometres(largest + 1)))).toBe(false)
    }
  })

  it('sets no limit beyond 12 in, and still the limit at 12 in', () => {
    expect(rule('irc').mostOut(at(nanometres(inches(12) + 1), ZERO))).toBe('any')
    expect(rule('irc').allows(at(inches(12), inches(1, 9, 16)))).toBe(false)
  })

  it('the printed metric pair, 3 mm for each 25: 24 mm at 200 mm, not 25', () => {
    expect(rule('irc-metric', 'metric').mostOut(at(millimetres(200), ZERO))).toBe(millimetres(24))
    expect(rule('irc', 'metric').mostOut(at(millimetres(200), ZERO))).toBe(millimetres(24))
  })

  it('the least height for a projection: max(6, 8p) to 1 1/2 in, beyond it just over 12', () => {
    const least = (p: Length) => rule('irc').leastAbove(at(ZERO, p))
    expect(least(inches(0, 1, 2))).toBe(inches(6))
    expect(least(inches(1))).toBe(inches(8))
    expect(least(inches(1, 1, 2))).toBe(inches(12))
    expect(least(inches(1, 9, 16))).toBe(inches(12) + 1)
  })
})

/** A mantel of three layers, worked by hand from the same texts (invented). */
describe('three layers over one opening', () => {
  const frieze = at(inches(6, 1, 2), inches(0, 3, 4))
  const mould = at(inches(10, 1, 2), inches(1, 3, 8))
  const shelf = at(inches(12, 1, 4), inches(7))

  it('IRC: frieze and shelf pass, the mould stops; it may be 1 5/16, or stand at 11', () => {
    expect([frieze, mould, shelf].map((p) => rule('irc').allows(p))).toEqual([true, false, true])
    expect(rule('irc').mostOut(mould)).toBe(inches(1, 5, 16))
    expect(rule('irc').leastAbove(mould)).toBe(inches(11))
  })

  it('Ontario Building Code (150 mm; over 38 mm out only from 300 mm): all three pass', () => {
    expect([frieze, mould, shelf].map((p) => rule('canada').allows(p))).toEqual([true, true, true])
    expect(rule('canada').allows(at(millimetres(299), millimetres(39)))).toBe(false)
    expect(rule('canada').allows(at(millimetres(149), millimetres(10)))).toBe(false)
  })

  it('a code not known yet takes the strictest of all', () => {
    const rules = FUELS['open-fire'].woodRules({ figures: figuresIn('inch'), code: 'unknown', manual: undefined })
    expect(rules.every((r) => r.allows(mould))).toBe(false)
    expect(rules.map((r) => r.id)).toEqual(['irc-metric', 'canada'])
  })
})

/** Worked example, invented, computed by hand: opening x 20 to 52, z 0 to 27. */
describe('pieces beside and above an opening', () => {
  it('a flat board 7 1/2 to the side may stand out 15/16', () => {
    const board = at(ZERO, inches(0, 7, 8), inches(7, 1, 2))
    expect(rule('irc').allows(board)).toBe(true)
    expect(rule('irc').mostOut(board)).toBe(inches(0, 15, 16))
  })
  it('a bracket 6 to the side and 8 above is 10 away: 1 1/4 passes exactly, 1 5/16 does not', () => {
    expect(rule('irc').allows(at(inches(8), inches(1, 1, 4), inches(6)))).toBe(true)
    expect(rule('irc').allows(at(inches(8), inches(1, 5, 16), inches(6)))).toBe(false)
    expect(rule('irc').mostOut(at(inches(8), inches(1, 5, 16), inches(6)))).toBe(inches(1, 1, 4))
  })
  it('a 7 in frieze: free at 12 1/2, at most 1 1/2 at 12, none at 5 1/2', () => {
    expect(rule('irc').allows(at(inches(12, 1, 2), inches(7)))).toBe(true)
    expect(rule('irc').mostOut(at(inches(12), inches(7)))).toBe(inches(1, 1, 2))
    expect(rule('irc').mostOut(at(inches(5, 1, 2), inches(7)))).toBe('none')
  })
  it('the bracket in a metric job (150, 200: 250 away): 30 mm, not 31.25', () => {
    const metric = rule('irc', 'metric')
    expect(metric.mostOut(at(millimetres(200), ZERO, millimetres(150)))).toBe(millimetres(30))
  })
})
