import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { effectLine } from '../../../src/plan/compare/effect-line.ts'

const within = (letters: number) => (text: string) => text.length <= letters
const run = { weight: 90, says: 'left alcove: run 38 → 39 1/4, 2 boxes of 19 5/8' }
const sheets = { weight: 75, says: 'sheets 5 → 4' }
const ask = { weight: 58, says: '1 more to confirm', announce: true } as const

describe('the effect of an answer in the room there is', () => {
  it('says all when all fits, most important first', () => {
    expect(effectLine([run, sheets], within(90))).toBe(`${run.says}; ${sheets.says}`)
  })

  it('leaves out a whole change rather than half of one, and goes on with the next that fits', () => {
    const long = { weight: 80, says: 'both alcoves: 3 shelves at 49, 61, 73 → 4 shelves at 49, 57, 65, 73' }
    expect(effectLine([run, long, sheets], within(70))).toBe(`${run.says}; ${sheets.says}`)
  })

  it('keeps room for what must be announced', () => {
    expect(effectLine([run, sheets, ask], within(70))).toBe(`${run.says}; ${ask.says}`)
  })

  it('is empty when nothing changed; one change alone is said however long', () => {
    expect(effectLine([], within(90))).toBe('')
    expect(effectLine([run], within(5))).toBe(run.says)
  })

  it('holds whole changes only, in their order, and never more than the room unless one is alone', () => {
    const change = fc.record({ weight: fc.nat(99), says: fc.stringMatching(/^[a-z0-9 ]{3,40}$/) })
    fc.assert(
      fc.property(fc.uniqueArray(change, { maxLength: 9, selector: (c) => c.says }), fc.nat(120), (changes, room) => {
        const parts = effectLine(changes, within(room))
          .split('; ')
          .filter((p) => p !== '')
        const at = parts.map((p) => changes.findIndex((c) => c.says === p))
        expect(at).not.toContain(-1)
        expect(at).toEqual([...at].sort((a, b) => a - b))
        if (parts.length > 1) expect(parts.join('; ').length).toBeLessThanOrEqual(room)
      }),
    )
  })
})
