import { describe, expect, it } from 'vitest'
import { codeProfiles } from '../../src/figures/code-profiles.ts'
import { figuresIn } from '../../src/figures/figures.ts'
import { CODE_NOT_KNOWN, codeRules, profilesOf } from '../../src/kinds/fuel/code-rules.ts'
import { verdictOf, type WoodBeside } from '../../src/kinds/fuel/face-rule.ts'
import { hearthZoneOf } from '../../src/kinds/fuel/hearth-rules.ts'
import { FUELS } from '../../src/kinds/fuel/list.ts'
import type { WoodPiece, WoodRule } from '../../src/kinds/fuel/wood-rule.ts'
import { inches, type Length, millimetres, nanometres, ZERO } from '../../src/units/length.ts'
import type { UnitSystem } from '../../src/units/show-length.ts'

const rulesOf = (code: string, units: UnitSystem = 'inch'): readonly WoodRule[] =>
  codeRules(figuresIn(units), profilesOf(code, { units }))
/** The row of a code itself, not what a metric job meets besides. */
const rule = (code: string): WoodRule => rulesOf(code)[0]!
/** The furthest that all rules of a code allow. */
const mostOut = (code: string, units: UnitSystem, piece: WoodPiece): number =>
  Math.min(
    ...rulesOf(code, units).map((r) => {
      const most = r.mostOut(piece)
      return most === 'any' ? Number.POSITIVE_INFINITY : most === 'none' ? -1 : most
    }),
  )
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
    expect(mostOut('irc-metric', 'metric', at(millimetres(200), ZERO))).toBe(millimetres(24))
    expect(mostOut('irc', 'metric', at(millimetres(200), ZERO))).toBe(millimetres(24))
    expect(mostOut('irc', 'inch', at(millimetres(200), ZERO))).toBe(millimetres(25))
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
    const figures = figuresIn('inch')
    const profiles = profilesOf(CODE_NOT_KNOWN, figures)
    const rules = FUELS['open-fire'].woodRules({ figures, profiles, manual: undefined })
    expect(rules.map((r) => r.id)).toEqual(codeProfiles().map(({ id }) => id))
    // 800 mm of the strictest of them: not the mean of any two.
    expect(rules.every((r) => r.allows(at(millimetres(799), millimetres(5))))).toBe(false)
    expect(rules.every((r) => r.allows(at(millimetres(800), millimetres(5))))).toBe(true)
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
    expect(mostOut('irc', 'metric', at(millimetres(200), ZERO, millimetres(150)))).toBe(millimetres(30))
  })
})

/** The whole table of the IRC in millimetres, exact 1:8: 5 15/16 in is 150.8, 11 15/16 in is 303.2125. */
describe('the same distances in millimetres, by the inch text', () => {
  it.each([
    [152.4, 19.05],
    [190.5, 23.8125],
    [203.2, 25.4],
    [266.7, 33.3375],
    [303.2125, 37.9015625],
    [304.8, 38.1],
  ])('%d mm: %d mm out', (distance, out) => {
    expect(rule('irc').mostOut(at(millimetres(distance), ZERO))).toBe(nanometres(Math.floor(out * 1e6)))
  })
  it('150.8 mm: none', () => {
    expect(rule('irc').mostOut(at(millimetres(150.8), ZERO))).toBe('none')
  })
})

/** ANSI/NFPA 211 § 7-3.3.3 (older numbering), as a 2008 fireplace manual quotes it (azmanual.top). */
describe('NFPA 211: under 6 in none; over 1 1/2 in out from 12 in on', () => {
  it.each([
    [inches(5, 15, 16), 'none'],
    [inches(6), inches(1, 1, 2)],
    [inches(11, 15, 16), inches(1, 1, 2)],
    [inches(12), 'any'],
  ] as const)('at %d nm: %s', (distance, most) => {
    expect(rule('nfpa-211').mostOut(at(distance, ZERO))).toBe(most)
  })
})

/** Architects' data handbook, open fireplaces page (scribd 286994587): 800 mm in front of, above and beside. */
describe('Central Europe: 800 mm from an open fire', () => {
  it('refuses at 799 however thin, allows at 800, measured straight across a corner', () => {
    expect(rule('central-europe').allows(at(millimetres(799), millimetres(1)))).toBe(false)
    expect(rule('central-europe').allows(at(millimetres(800), millimetres(300)))).toBe(true)
    expect(rule('central-europe').allows(at(millimetres(480), millimetres(20), millimetres(640)))).toBe(true)
    expect(rule('central-europe').allows(at(millimetres(480), millimetres(20), millimetres(639)))).toBe(false)
  })
})

/** Approved Document J (2010), 2.18 and diagrams 21 and 27, from memory; 150 mm at the sides read in an appliance's instructions. */
describe('England', () => {
  it('names no distance over the opening: only what covers it is refused', () => {
    expect(rule('england').allows(at(ZERO, millimetres(20)))).toBe(false)
    expect(rule('england').mostOut(at(millimetres(50), ZERO))).toBe('any')
  })
  it('hearth: 500 in front of an open fire, 300 of a closed appliance, 150 at each side', () => {
    const zone = (flame: 'open' | 'closed') =>
      hearthZoneOf(
        { width: millimetres(600), height: millimetres(600), flame, figures: figuresIn('metric') },
        profilesOf('england', { units: 'metric' }),
      )
    expect(zone('open')).toEqual({ front: millimetres(500), side: millimetres(150) })
    expect(zone('closed')).toEqual({ front: millimetres(300), side: millimetres(150) })
  })
})

/** IRC R1001.10; Masonry Magazine Oct. 1982 p. 21: "6 sq ft or larger". 6 sq ft = 864 sq in. */
describe('hearth extension', () => {
  it.each([
    ['30 × 28: 840 sq in', 30, 28, 16, 8, 46],
    ['36 × 30: 1080 sq in', 36, 30, 20, 12, 60],
    ['36 × 24: exactly 864 sq in counts as large', 36, 24, 20, 12, 60],
    ['863 sq in, the next smaller', 863, 1, 16, 8, 879],
  ])('%s', (_says, width, height, front, side, wide) => {
    const facts = { width: inches(width), height: inches(height), flame: 'open' as const, figures: figuresIn('inch') }
    const zone = hearthZoneOf(facts, profilesOf('irc', { units: 'inch' }))
    expect(zone).toEqual({ front: inches(front), side: inches(side) })
    expect(inches(width) + 2 * zone.side).toBe(inches(wide))
  })
  it('while no code is known the widest of all on each side: 20 in (508 mm) in front, 12 in (304.8) at the sides', () => {
    const facts = { width: inches(36), height: inches(30), flame: 'open' as const, figures: figuresIn('inch') }
    expect(hearthZoneOf(facts, profilesOf(CODE_NOT_KNOWN, { units: 'inch' }))).toEqual({
      front: inches(20),
      side: inches(12),
    })
  })
})

/** IRC R1001.11 exceptions 2, 3 (thebuildingcodeforum.com) and R1001.15 exceptions 2, 3 (rumford.com/code/clearances). */
describe('wood against the side of a masonry breast', () => {
  const beside = (gap: Length, firebox: number | undefined, flue?: number): WoodBeside => ({
    gap,
    toOpening: inches(20),
    linings: [
      { of: 'firebox', masonry: firebox === undefined ? undefined : inches(firebox), known: 'measured' },
      ...(flue === undefined ? [] : [{ of: 'flue' as const, masonry: inches(flue), known: 'measured' as const }]),
    ],
  })
  const irc = codeProfiles().find(({ id }) => id === 'irc')!
  it.each([
    ['2 in off passes whatever the masonry', beside(inches(2), 4, 4), 'passes'],
    ['touching, 12 in of masonry passes', beside(ZERO, 12, 12), 'passes'],
    ['touching, 11 in of masonry does not', beside(ZERO, 11), 'stop'],
    ['1 in off and 11 in of masonry is 12 in from the lining', beside(inches(1), 11), 'passes'],
    ['the flue lining higher up counts by itself', beside(ZERO, 16, 8), 'stop'],
    ['nobody has measured it', beside(inches(1, 15, 16), undefined), 'ask'],
  ] as const)('%s', (_says, wood, verdict) => {
    expect(verdictOf(figuresIn('inch'), irc, wood)).toBe(verdict)
  })
  it('what is only read off the opening asks, it does not stop', () => {
    const seen = { of: 'firebox', masonry: inches(8), known: 'from the opening' } as const
    expect(verdictOf(figuresIn('inch'), irc, { gap: ZERO, toOpening: inches(8), linings: [seen] })).toBe('ask')
  })
  it('England (Approved Document J 2.18, from memory): 40 mm off, or 200 mm from the flue', () => {
    const england = codeProfiles().find(({ id }) => id === 'england')!
    const flue = (masonry: number, gap: number) =>
      verdictOf(figuresIn('metric'), england, {
        gap: millimetres(gap),
        toOpening: millimetres(900),
        linings: [{ of: 'flue', masonry: millimetres(masonry), known: 'measured' }],
      })
    expect([flue(150, 40), flue(150, 39), flue(200, 0), flue(160, 39)]).toEqual(['passes', 'stop', 'passes', 'stop'])
  })
  it('Central Europe: built-in furniture nearer than 800 mm beside the opening is asked about', () => {
    const europe = codeProfiles().find(({ id }) => id === 'central-europe')!
    const wood = (toOpening: number): WoodBeside => ({
      gap: millimetres(60),
      toOpening: millimetres(toOpening),
      linings: [],
    })
    expect(verdictOf(figuresIn('metric'), europe, wood(799))).toBe('ask')
    expect(verdictOf(figuresIn('metric'), europe, wood(800))).toBe('passes')
  })
})
