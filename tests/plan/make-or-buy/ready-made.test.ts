import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxesSold } from '../../../src/figures/stock-lengths.ts'
import { readyMadeBoxes } from '../../../src/plan/make-or-buy/ready-made.ts'
import { inches, type Length, millimetres } from '../../../src/units/length.ts'

const inch = (slot: number, widerAt: 'left' | 'right' = 'left') =>
  readyMadeBoxes({
    slot: inches(slot),
    sold: boxesSold('inch').widths,
    fillerLeast: inches(0, 3, 4),
    fillerMost: inches(3),
    widerAt,
  })
const widthsIn = (widths: readonly Length[] = []) => widths.map((w) => w / inches(1))

describe('ready-made boxes (worked by hand: 41 in of slot less 2 × 3/4 leaves 39 1/2 for the boxes)', () => {
  it('39 is the largest sum of widths sold: two boxes, 21 and 18 are nearest alike, the wider one at the breast', () => {
    expect(widthsIn(inch(41)?.widths)).toEqual([21, 18])
    expect(widthsIn(inch(41, 'right')?.widths)).toEqual([18, 21])
    expect(inch(41)?.filler).toBe(inches(1))
  })

  it('fewest boxes first: 36 stands as one box, not as two of 18', () =>
    expect(widthsIn(inch(38)?.widths)).toEqual([36]))

  it('none where the fillers would be wider than they can be: 9 in a slot of 12 leaves 1 1/2; a slot of 10 takes none', () => {
    expect(widthsIn(inch(12)?.widths)).toEqual([9])
    expect(inch(10)).toBeUndefined()
  })

  it('metric: 1193 of slot less 40 takes 450 + 400 + 300 = 1150, nearer to it than 600 + 500, with fillers of 21.5', () => {
    const found = readyMadeBoxes({
      slot: millimetres(1193),
      sold: boxesSold('metric').widths,
      fillerLeast: millimetres(20),
      fillerMost: millimetres(75),
      widerAt: 'left',
    })
    expect(found?.widths).toEqual([450, 400, 300].map(millimetres))
    expect(found?.filler).toBe(millimetres(21.5))
  })

  it('against every set there is, drawn without the search: no larger sum, no fewer boxes, no narrower spread', () => {
    const widths = fc.uniqueArray(fc.integer({ min: 6, max: 20 }), { minLength: 1, maxLength: 4 })
    fc.assert(
      fc.property(widths, fc.integer({ min: 8, max: 70 }), (sold, slot) => {
        const found = readyMadeBoxes({
          slot: inches(slot),
          sold: sold.map((w) => inches(w)),
          fillerLeast: inches(1),
          fillerMost: inches(slot),
          widerAt: 'left',
        })
        const all = everySet(sold, slot - 2)
        const most = Math.max(0, ...all.map(sumOf))
        const fewest = Math.min(...all.filter((set) => sumOf(set) === most).map((set) => set.length))
        const best = all.filter((set) => sumOf(set) === most && set.length === fewest)
        expect(found === undefined).toBe(most === 0)
        if (most === 0) return
        const mine = widthsIn(found?.widths)
        expect(sumOf(mine)).toBe(most)
        expect(mine).toHaveLength(fewest)
        expect(spreadOf(mine)).toBe(Math.min(...best.map(spreadOf)))
      }),
    )
  })
})

const sumOf = (set: readonly number[]) => set.reduce((a, b) => a + b, 0)
const spreadOf = (set: readonly number[]) => Math.max(...set) - Math.min(...set)
function everySet([first, ...rest]: readonly number[], room: number): readonly (readonly number[])[] {
  if (first === undefined) return [[]]
  const counts = Array.from({ length: Math.floor(room / first) + 1 }, (_, n) => n)
  return counts.flatMap((n) =>
    everySet(rest, room - n * first).map((set) => [...Array.from({ length: n }, () => first), ...set]),
  )
}
