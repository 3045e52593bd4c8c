import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../src/geometry/drawing.ts'
import { dimensionChain } from '../../src/geometry/drawing.ts'
import { scaleOfDrawing, scaleThatFits } from '../../src/geometry/scale.ts'
import { inches, type Length, millimetres, ZERO } from '../../src/units/length.ts'

describe('the first scale that fits (scales of ISO 5455, from memory; US scales: common practice, no source)', () => {
  it('a wall 144 × 96 in on 10 × 7 in of Letter: 144/10 = 14.4, so 1:16 (worked by hand)', () => {
    const wall = { width: 144 * 25.4, height: 96 * 25.4 }
    const scale = scaleThatFits(wall, { width: 254, height: 177.8 }, 'inch')
    expect(scale).toEqual({ ratio: 16, says: '3/4 in = 1 ft (1:16)' })
  })

  it('the same wall on 277 × 170 mm of A4: 2438.4/170 = 14.3, so 1:20 (worked by hand)', () => {
    expect(scaleThatFits({ width: 3657.6, height: 2438.4 }, { width: 277, height: 170 }, 'metric').says).toBe('1:20')
  })

  it('whatever the size, the picture fits its paper', () => {
    const side = fc.double({ min: 1, max: 60_000, noNaN: true })
    fc.assert(
      fc.property(side, side, fc.constantFrom('inch' as const, 'metric' as const), (width, height, units) => {
        const { ratio } = scaleThatFits({ width, height }, { width: 245, height: 150 }, units)
        return width / ratio <= 245 + 1e-9 && height / ratio <= 150 + 1e-9
      }),
    )
  })

  it('keeps room for the rows of dimensions', () => {
    const frame = { x: ZERO, z: ZERO, width: millimetres(2000), height: millimetres(1000) }
    const bare: Drawing = { says: '', frame, shapes: [] }
    const chain = dimensionChain({ side: 'left', row: 3, stations: [ZERO, millimetres(1000)] }, String)
    const paper = { width: 200, height: 150 }
    expect(scaleOfDrawing(bare, paper, 'metric').ratio).toBe(10)
    expect(scaleOfDrawing({ ...bare, shapes: chain }, paper, 'metric').ratio).toBe(20)
  })
})

describe('a dimension chain', () => {
  it('adds up to its ends, whatever order the stations come in', () => {
    const stations = fc.array(fc.integer({ min: 0, max: 5_000_000_000 }), { minLength: 2, maxLength: 12 })
    fc.assert(
      fc.property(stations, (given) => {
        const lengths = given.map((v) => v as Length)
        const chain = dimensionChain({ side: 'below', row: 1, stations: lengths }, (l) => String(l))
        const total = chain.reduce((sum, s) => sum + (s.kind === 'dimension' ? Number(s.says) : 0), 0)
        return total === Math.max(...given) - Math.min(...given)
      }),
    )
  })

  it('reads 1 1/8, 39, 1 1/8 over a slot of 41 1/4', () => {
    const at = [ZERO, inches(1, 1, 8), inches(40, 1, 8), inches(41, 1, 4)]
    const chain = dimensionChain({ side: 'below', row: 1, stations: at }, (l) => String(l / 25.4e6))
    expect(chain.map((s) => (s.kind === 'dimension' ? s.says : ''))).toEqual(['1.125', '39', '1.125'])
  })
})
