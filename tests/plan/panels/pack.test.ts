import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Block } from '../../../src/plan/panels/block.ts'
import { pack } from '../../../src/plan/panels/pack.ts'
import { fewestSheets } from '../../../src/plan/panels/sheet-bound.ts'
import { faultsOf } from './saw-check.ts'

const MM = 1_000_000
const KERF = 3.2 * MM
const bed = { length: 2430 * MM + KERF, width: 1210 * MM + KERF }
const blockSizes = fc.array(
  fc.record({
    length: fc.integer({ min: 30, max: 2430 }),
    width: fc.integer({ min: 30, max: 1210 }),
    mayTurn: fc.boolean(),
  }),
  { minLength: 1, maxLength: 40 },
)
const blocksOf = (sizes: readonly { length: number; width: number; mayTurn: boolean }[]): readonly Block[] =>
  sizes.map(({ length, width, mayTurn }, id) => ({ id, mayTurn, length: length * MM + KERF, width: width * MM + KERF }))

describe('laying blocks on sheets', () => {
  it('every block lies once, inside its sheet, a kerf from the next, free by through-cuts, turned only if it may', () => {
    fc.assert(
      fc.property(blockSizes, (sizes) => {
        const blocks = blocksOf(sizes)
        const least = fewestSheets({ blocks, bed })
        const sheets = pack(blocks, bed, { effort: 'quick', least })
        expect(sheets.length).toBeGreaterThanOrEqual(least)
        expect(sheets.flatMap((s) => s.map((spot) => spot.block)).toSorted((a, b) => a - b)).toEqual(
          blocks.map((b) => b.id),
        )
        for (const sheet of sheets) {
          const lying = sheet.map((s) => ({ ...s, length: s.length - KERF, width: s.width - KERF }))
          const usable = { x: 0, y: 0, length: bed.length - KERF, width: bed.width - KERF }
          expect(faultsOf(lying, usable, KERF)).toEqual([])
          for (const spot of sheet) {
            const block = blocks[spot.block]
            expect(spot.turned && block?.mayTurn === false).toBe(false)
            const lies = spot.turned ? [spot.width, spot.length] : [spot.length, spot.width]
            expect(lies).toEqual([block?.length, block?.width])
          }
        }
      }),
      { numRuns: 60 },
    )
  })

  it('the same blocks give the same sheets, and a thorough search never more', () => {
    fc.assert(
      fc.property(blockSizes, (sizes) => {
        const blocks = blocksOf(sizes.slice(0, 15))
        const least = fewestSheets({ blocks, bed })
        const quick = pack(blocks, bed, { effort: 'quick', least })
        const thorough = pack(blocks, bed, { effort: 'thorough', least })
        expect(pack(blocks, bed, { effort: 'thorough', least })).toEqual(thorough)
        expect(thorough.length).toBeLessThanOrEqual(quick.length)
      }),
      { numRuns: 10 },
    )
  })

  it('n pieces in a row need n − 1 kerfs: four of 605 mm less three kerfs fill 2430 exactly, one more µm does not', () => {
    const across = (2430 * MM - 3 * KERF) / 4
    const row = (length: number) =>
      [0, 1, 2, 3].map((id) => ({ id, mayTurn: false, length: length + KERF, width: 1210 * MM + KERF }))
    expect(pack(row(across), bed, { effort: 'quick', least: 1 })).toHaveLength(1)
    expect(pack(row(across + 1000), bed, { effort: 'quick', least: 1 })).toHaveLength(2)
  })

  it('the bound is exact past 2^53: two blocks of half a sheet need one, a nanometre more needs two', () => {
    const half = { id: 0, mayTurn: false, length: bed.length / 2, width: bed.width }
    expect(fewestSheets({ blocks: [half, half], bed })).toBe(1)
    expect(fewestSheets({ blocks: [half, { ...half, length: half.length + 1 }], bed })).toBe(2)
  })
})

describe('the checker itself', () => {
  const sheet = { x: 0, y: 0, length: 30, width: 30 }
  it('refuses the pinwheel, which no through-cut opens', () => {
    const pinwheel = [
      { x: 0, y: 0, length: 20, width: 10 },
      { x: 20, y: 0, length: 10, width: 20 },
      { x: 10, y: 20, length: 20, width: 10 },
      { x: 0, y: 10, length: 10, width: 20 },
    ]
    expect(faultsOf(pinwheel, sheet, 0)).toEqual(['no through-cut frees the parts'])
  })
  it('refuses a part outside, and two nearer than the kerf', () => {
    const a = { x: 0, y: 0, length: 10, width: 10 }
    expect(faultsOf([{ ...a, x: 21 }], sheet, 1)).toHaveLength(1)
    expect(faultsOf([a, { ...a, x: 10 }], sheet, 1)).toHaveLength(1)
    expect(faultsOf([a, { ...a, x: 11 }], sheet, 1)).toEqual([])
  })
})
