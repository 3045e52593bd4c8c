import { describe, expect, it } from 'vitest'
import { softwood } from '../../../src/plan/materials.ts'
import { panels } from '../../../src/plan/panels/panels.ts'
import { millimetres } from '../../../src/units/length.ts'
import { contextFor } from '../context-for-test.ts'
import { partOf } from '../part-for-test.ts'

const context = contextFor('metric')

describe('panel layouts of a job', () => {
  it('nothing to cut: no sheet, no message', () => {
    expect(panels(context, [], 'quick')).toEqual({ layouts: [], sticks: [], order: new Map(), messages: [] })
  })

  it('sheets are per material, at rough size, bought parts left out, numbered through', () => {
    const parts = [
      partOf({ mm: [760, 330, 18], quantity: 4, roughLength: millimetres(800) }),
      partOf({ id: 'k', mark: 'L1-K1', mm: [758, 568, 6] }),
      partOf({ id: 'd', mark: 'L1-D1', mm: [757, 569, 18], supply: 'fronts' }),
    ]
    const { layouts, order, messages } = panels(context, parts, 'quick')
    expect(layouts.map((l) => [l.number, l.material.name, l.laid.length])).toEqual([
      [1, 'MDF 18 mm, double-refined', 4],
      [2, 'MDF 6 mm, double-refined', 1],
    ])
    expect(layouts[0]?.laid.every((l) => Math.max(l.length, l.width) === millimetres(800))).toBe(true)
    expect([...order.values()]).toEqual([
      { sheets: 1, spare: 0, bound: 1 },
      { sheets: 1, spare: 0, bound: 1 },
    ])
    // 2440 × 1220 × 18 mm at 750 kg/m³ (common practice, no source): 2.44 · 1.22 · 0.018 · 750 = 40.19 kg.
    expect(layouts[0]?.mass).toBeCloseTo(40.1868, 4)
    expect(layouts[0]?.yield).toBeCloseTo((4 * 0.8 * 0.33) / (2.44 * 1.22), 9)
    expect(messages).toEqual([])
  })

  it('more than six sheets: one spare (common practice, no source)', () => {
    const { order } = panels(context, [partOf({ mm: [2400, 1200, 18], quantity: 7 })], 'quick')
    expect([...order.values()]).toEqual([{ sheets: 8, spare: 1, bound: 7 }])
  })

  it('a part larger than its sheet is a stop that names both, and is left out', () => {
    const long = partOf({ id: 'a/counter', mark: 'L-T1', name: 'counter', mm: [2600, 400, 25] })
    const { layouts, messages } = panels(context, [long], 'quick')
    expect(layouts).toEqual([])
    expect(messages).toHaveLength(1)
    expect(messages[0]).toMatchObject({ code: 'S16', weight: 'stop', part: 'a/counter' })
    expect(messages[0]?.short).toContain('L-T1 counter')
    expect(messages[0]?.why).toContain('2600 × 400 mm; MDF 25 mm, double-refined holds at most 2430 × 1210 mm')
    // Two pieces of 1300, or 2600 + 2 × 5 and 400 + 2 × 5 of sheet: by hand.
    expect(messages[0]?.todo).toContain('2 pieces end to end, jointed at 1300 mm')
    expect(messages[0]?.todo).toContain('a sheet of at least 2610 × 410 mm')
  })

  it('grain that may not turn: too wide across is a stop, without grain it turns', () => {
    const wide = partOf({ mm: [600, 1400, 18] })
    expect(panels(context, [wide], 'quick').layouts[0]?.laid[0]?.turned).toBe(true)
    expect(panels(context, [{ ...wide, grain: 'length' }], 'quick').messages.map((m) => m.code)).toEqual(['S16'])
  })

  it('parts on HOLD lie on sheets of their own, last, without a saw order, and it is said', () => {
    const held = partOf({ id: 'h', mark: 'L1-B1', mm: [500, 330, 18], waitsFor: ['a.returns'] })
    const { layouts, messages } = panels(context, [held, partOf({ mm: [760, 330, 18] })], 'quick')
    expect(layouts.map((l) => [l.state, l.cuts.length > 0, l.laid.map((x) => x.part.mark)])).toEqual([
      ['sheet', true, ['L1-S1']],
      ['hold', false, ['L1-B1']],
    ])
    expect(messages).toMatchObject([{ code: 'N15', weight: 'note', about: 'a.returns' }])
    expect(messages[0]?.why).toContain('L1-B1')
  })

  it('offcuts worth keeping are at least 300 × 600 mm (common practice, no source)', () => {
    const { layouts } = panels(context, [partOf({ mm: [760, 330, 18] })], 'quick')
    const [layout] = layouts
    expect(layout?.keep.length).toBeGreaterThan(0)
    for (const o of layout?.keep ?? []) {
      expect(Math.max(o.length, o.width)).toBeGreaterThanOrEqual(millimetres(600))
      expect(Math.min(o.length, o.width)).toBeGreaterThanOrEqual(millimetres(300))
    }
  })

  it('sticks: longest first from stock, a kerf after each piece, a stop for a longer one', () => {
    const stick = softwood(millimetres(38), millimetres(24))
    const cleat = (id: string, mm: number, quantity: number) =>
      partOf({ id, mark: 'L-C1', mm: [mm, 38, 24], quantity, material: stick })
    const { sticks, messages } = panels(context, [cleat('x', 1150, 2), cleat('y', 90, 1), cleat('z', 2500, 1)], 'quick')
    // 1150 + 3.2 + 1150 + 3.2 leaves 93.6 of 2400: the 90 goes into the same bar.
    expect(sticks[0]?.bars.map((b) => b.pieces.map((p) => p.length))).toEqual([
      [1150, 1150, 90].map((mm) => millimetres(mm)),
    ])
    expect(sticks[0]?.bars[0]?.left).toBe(millimetres(0.4))
    expect(messages.map((m) => m.code)).toEqual(['S16'])
  })
})
