import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { codeProfiles } from '../../../src/figures/code-profiles.ts'
import { figuresIn } from '../../../src/figures/figures.ts'
import { codeRules, profilesOf } from '../../../src/kinds/fuel/code-rules.ts'
import { FUELS } from '../../../src/kinds/fuel/list.ts'
import { manualRule } from '../../../src/kinds/fuel/manual-rule.ts'
import { rootDown, type WoodPiece, type WoodRule } from '../../../src/kinds/fuel/wood-rule.ts'
import { inches, type Length, ZERO } from '../../../src/units/length.ts'

const RULES: readonly WoodRule[] = [
  // A rule that stops nothing but what touches the opening is met by no random piece: it has its own rows in tests/known.
  ...codeRules(
    figuresIn('inch'),
    codeProfiles().filter(({ opening }) => opening.rule !== 'never over it'),
  ),
  manualRule({ above: inches(12), sides: inches(6), standsOut: inches(8) }),
]
const length = fc.integer({ min: 0, max: 500_000_000 }) as fc.Arbitrary<Length>
const piece: fc.Arbitrary<WoodPiece> = fc.record({ beside: length, above: length, standsOut: length })

describe.each(RULES)('$id', (rule) => {
  it('never allows a piece moved closer or made deeper that it stopped before', () => {
    fc.assert(
      fc.property(piece, length, length, length, (stopped, closer, lower, deeper) => {
        fc.pre(!rule.allows(stopped))
        const worse = {
          beside: Math.max(0, stopped.beside - closer) as Length,
          above: Math.max(0, stopped.above - lower) as Length,
          standsOut: (stopped.standsOut + deeper) as Length,
        }
        expect(rule.allows(worse)).toBe(false)
      }),
    )
  })

  it('allows what it names as the most and as the least height', () => {
    fc.assert(
      fc.property(piece, (p) => {
        const most = rule.mostOut(p)
        if (most === 'none') expect(rule.allows({ ...p, standsOut: ZERO })).toBe(false)
        else if (most !== 'any') expect(rule.allows({ ...p, standsOut: most })).toBe(true)
        const above = rule.leastAbove(p)
        if (above !== undefined) expect(rule.allows({ ...p, above })).toBe(true)
      }),
    )
  })
})

describe('fuels', () => {
  it('an appliance without its manual still keeps the printed distances; a closed opening asks nothing', () => {
    const figures = figuresIn('inch')
    const facts = { figures, profiles: profilesOf('irc', figures), manual: undefined }
    expect(FUELS.gas.woodRules(facts).map((r) => r.id)).toEqual(['irc'])
    expect(FUELS.none.woodRules()).toEqual([])
  })
  it('takes whole roots downwards, exactly', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 20n }), (v) => {
        const root = rootDown(v)
        expect(root * root <= v && (root + 1n) * (root + 1n) > v).toBe(true)
      }),
    )
  })
})
