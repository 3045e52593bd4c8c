import { describe, expect, it } from 'vitest'
import type { FrontPlan } from '../../../src/plan/fronts/fronts.ts'
import { supply } from '../../../src/plan/supply/supply.ts'
import type { Part } from '../../../src/things/part.ts'
import { millimetres, ZERO } from '../../../src/units/length.ts'
import { minorUnits } from '../../../src/units/money.ts'
import { contextFor } from '../context-for-test.ts'
import { leafOf } from '../leaf-for-test.ts'
import { partOf } from '../part-for-test.ts'

const place = (x: number, y: number, z: number, dx: number, dy: number, dz: number) => {
  const [a, b, c, d, e, f] = [x, y, z, dx, dy, dz].map(millimetres) as Array<Part['length']>
  return { x: a ?? ZERO, y: b ?? ZERO, z: c ?? ZERO, dx: d ?? ZERO, dy: e ?? ZERO, dz: f ?? ZERO }
}
const painted = { coat: { surface: 'built-in', faces: 2 } } as const
const side = (n: number, x: number) =>
  partOf({
    ...painted,
    id: `a/box-1/side-${n}`,
    mark: `L1-S${n}`,
    mm: [760, 344, 18],
    placement: place(x, 6, 100, 18, 344, 760),
  })
const back = partOf({
  id: 'a/box-1/back',
  mark: 'L1-K1',
  name: 'back',
  mm: [596, 756, 6],
  placement: place(27, 0, 102, 596, 6, 756),
  cutOuts: [
    { what: 'outlet', x: millimetres(100), z: millimetres(200), width: millimetres(80), height: millimetres(120) },
  ],
})
const leafPiece = (id: string, piece: string, mm: [number, number, number]) =>
  partOf({ id, mark: 'L1-D1', name: 'door', piece, mm, placement: place(26.5, 356, 101.5, mm[1], 18, mm[0]) })
const leafParts = [
  leafPiece('a/box-1/door-1/stile', 'stile', [755.5, 60, 18]),
  leafPiece('a/box-1/door-1/panel', 'panel', [650, 490, 6]),
]
const kick = partOf({ ...painted, id: 'a/kick', mark: 'L-P1', name: 'kick plate', mm: [1100, 96, 18] })
const parts = [side(1, 25), side(2, 607), back, ...leafParts, kick]
const fronts: FrontPlan = {
  style: 'framed',
  leaves: [leafOf()],
  drawers: [],
  drawerMake: undefined,
  contribution: { parts: [], joints: [], messages: [] },
}
const planFor = (choices: Readonly<Record<string, unknown>>) => supply(contextFor('metric', choices), parts, fronts)

describe('who makes what', () => {
  it('everything is made here until somebody says otherwise', () => {
    const plan = planFor({})
    expect(plan.parts).toEqual(parts)
    expect(plan).toMatchObject({ requests: [], sprayedOut: false, delivery: 0 })
  })

  it.each([
    [{}],
    [{ boxesWay: 'buy' }],
    [{ frontsWay: 'buy' }],
    [{ boxesWay: 'buy', frontsWay: 'buy', sprayingWay: 'buy' }],
  ])('every part is in exactly one of cut list or one request: %j', (choices) => {
    const plan = planFor(choices)
    expect(new Set(plan.parts.map((p) => p.id)).size).toBe(plan.parts.length)
    for (const id of ['boxes', 'fronts'] as const) {
      const marks = plan.parts.filter((p) => p.supply === id).map((p) => p.mark)
      const asked = plan.requests.find((r) => r.id === id)?.lines ?? []
      expect(marks.length > 0).toBe(asked.length > 0)
      for (const mark of marks) {
        const naming = asked.filter((line) => line.mark === mark || line.details.some((d) => d.includes(mark)))
        expect(naming).toHaveLength(1)
      }
    }
    expect(plan.parts.find((p) => p.mark === 'L-P1')?.supply).toBe('made')
  })

  it('bought boxes: one line a box, outside size, each part with its size, cut-outs said', () => {
    const [request] = planFor({ boxesWay: 'buy' }).requests
    expect(request).toMatchObject({ id: 'boxes', title: 'Boxes', leadDays: 10, quoteKnown: 'invented' })
    expect(request?.lines).toHaveLength(1)
    expect(request?.lines[0]).toMatchObject({ mark: 'L1', size: '600 wide × 760 high × 350 mm deep', quantity: 1 })
    expect(request?.lines[0]?.details).toContain('1 × L1-S1 side, 760 × 344 × 18 mm')
    expect(request?.lines[0]?.details.some((d) => d.startsWith('L1-K1 cut-out for outlet: 80 × 120'))).toBe(true)
  })

  it('bought doors: the leaf’s pieces become one part of the leaf’s size, with hinges, overlay, cups and handle hole', () => {
    const plan = planFor({ frontsWay: 'buy', frontQuote: 8850, deliveryCost: 4500 })
    const leaf = plan.parts.filter((p) => p.mark === 'L1-D1')
    expect(leaf).toHaveLength(1)
    expect(leaf[0]).toMatchObject({ supply: 'fronts', length: millimetres(755.5), width: millimetres(597) })
    const [request] = plan.requests
    expect(request).toMatchObject({ id: 'fronts', quoted: 8850, quoteKnown: 'answered' })
    expect(plan.delivery).toBe(minorUnits(4500))
    expect(request?.lines[0]).toMatchObject({ size: '597 wide × 755.5 high × 18 mm', hold: false })
    // Overlay = side 18 − margin 1.5 at the hinge side.
    const details = request?.lines[0]?.details.join('\n')
    expect(details).toContain('overlay at the hinge side 16.5 mm')
    expect(details).toContain('2 cups, centres 100, 655.5 from the lower end')
    expect(details).toContain('handle hole 30 mm from the edge')
    expect(request?.drilling.join(' ')).toContain('35 mm across')
  })

  it('own hours to order, fetch and check: 1 + 0.1 for each piece (common practice, no source)', () => {
    expect(planFor({ frontsWay: 'buy' }).requests[0]?.ownHours).toBeCloseTo(1.1, 9)
  })

  it('spraying out: coated parts once each, the leaf as its blank; priced by the square metre', () => {
    const plan = planFor({ sprayingWay: 'buy', sprayQuote: 9000, builtInColour: 'deep green, satin' })
    const [request] = plan.requests
    expect(plan.sprayedOut).toBe(true)
    expect(request?.lines.map((l) => l.mark)).toEqual(['L1-S1', 'L1-S2', 'L1-D1', 'L-P1'])
    // Both faces and MDF edges twice over (common practice, no source), by hand.
    const face = (l: number, w: number, t: number) => 2 * l * w + 2 * (l + w) * t * 2
    const area = 2 * face(0.76, 0.344, 0.018) + face(0.7555, 0.597, 0.018) + face(1.1, 0.096, 0.018)
    expect(request?.area).toBeCloseTo(area, 9)
    expect(request?.quoted).toBe(Math.round(9000 * area))
    expect(request?.finish[0]).toContain('deep green, satin')
    expect(plan.parts.every((p) => p.supply === 'made')).toBe(true)
  })

  it('an inch job counts square feet (1 sq ft = 0.09290304 m² exactly, 16 CFR 500.19)', () => {
    const one = partOf({ ...painted, mm: [1000, 1000, 0] })
    const plan = supply(contextFor('inch', { sprayingWay: 'buy', sprayQuote: 700 }), [one], { ...fronts, leaves: [] })
    expect(plan.requests[0]?.quoted).toBe(Math.round((2 / 0.09290304) * 700))
  })

  it('a part on HOLD marks its line', () => {
    const held = { ...side(1, 25), waitsFor: ['a.returns' as const] }
    const plan = supply(contextFor('metric', { boxesWay: 'buy' }), [held], fronts)
    expect(plan.requests[0]?.lines[0]?.hold).toBe(true)
  })

  it('no line names the client, the site or a price', () => {
    const plan = planFor({ boxesWay: 'buy', frontsWay: 'buy', sprayingWay: 'buy', frontQuote: 8850 })
    const text = JSON.stringify(plan.requests.map((r) => r.lines))
    expect(text).not.toMatch(/88\.?50|price|client|USD|EUR/i)
  })
})
