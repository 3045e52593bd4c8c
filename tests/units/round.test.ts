import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inches, millimetres as mm, nanometres } from '../../src/units/length.ts'
import { cutStep } from '../../src/units/round.ts'
import { showLength } from '../../src/units/show-length.ts'

const HAIR = 1000
const steps = fc.constantFrom(inches(0, 1, 16), inches(0, 1, 32), inches(0, 1, 64), mm(1), mm(0.5)).map(cutStep)
const length = fc.integer({ min: -100_000_000, max: 10_000_000_000 }).map(nanometres)

describe('the cut step', () => {
  it('rounds down within a step, a hair below a mark counting as the mark', () => {
    fc.assert(
      fc.property(steps, length, (cut, v) => {
        const down = cut.down(v)
        expect(down % cut.step === 0).toBe(true)
        expect(down).toBeLessThanOrEqual(v + HAIR)
        expect(down).toBeGreaterThan(v + HAIR - cut.step)
      }),
    )
  })

  it('rounds up within a step, and up never lies under down', () => {
    fc.assert(
      fc.property(steps, length, (cut, v) => {
        expect(cut.up(v)).toBeGreaterThanOrEqual(v - HAIR)
        expect(cut.up(v)).toBeLessThan(v - HAIR + cut.step)
        expect(cut.upHalf(v)).toBeLessThanOrEqual(cut.up(v))
        expect(cut.downHalf(v)).toBeGreaterThanOrEqual(cut.down(v))
      }),
    )
  })

  it('rounds near by half a step at most', () => {
    fc.assert(
      fc.property(steps, length, (cut, v) => {
        expect(Math.abs(cut.near(v) - v)).toBeLessThanOrEqual(cut.step / 2)
      }),
    )
  })

  it('keeps the halves it can cut', () => {
    expect(cutStep(mm(1)).downHalf(mm(755.5))).toBe(mm(755.5))
    // Half of 1/64 in is 198 437.5 nm: 2560 halves are 20 in, not 2560 rounded ones.
    expect(cutStep(inches(0, 1, 64)).downHalf(inches(20))).toBe(inches(20))
    expect(() => cutStep(nanometres(0))).toThrow(RangeError)
  })
})

describe('lengths as printed (computed from 1 in = 25.4 mm, 16 CFR 500.19)', () => {
  it.each([
    [mm(18), 16, '11/16'],
    [mm(18), 64, '45/64'],
    [inches(0, 24, 64), 64, '3/8'],
    [inches(11, 63, 64), 16, '12'],
    [mm(600), 16, '23 5/8'],
  ])('%d nm to 1/%d in: %s', (value, denominator, text) => {
    expect(showLength(value, 'inch', denominator)).toBe(text)
  })
})
