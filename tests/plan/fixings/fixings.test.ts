import { describe, expect, it } from 'vitest'
import { longestScrewSold } from '../../../src/figures/stock-lengths.ts'
import type { BoxPlan } from '../../../src/plan/boxes/boxes.ts'
import { along } from '../../../src/plan/fixings/along.ts'
import { joiningScrewsFor } from '../../../src/plan/fixings/box-fixings.ts'
import { type FixingPlan, fixings } from '../../../src/plan/fixings/fixings.ts'
import { adhesiveLitres } from '../../../src/plan/fixings/gluing.ts'
import { pieceMass } from '../../../src/plan/fixings/masses.ts'
import type { FrontPlan } from '../../../src/plan/fronts/fronts.ts'
import { softwood } from '../../../src/plan/materials.ts'
import type { Part } from '../../../src/things/part.ts'
import { inches, millimetres, ZERO } from '../../../src/units/length.ts'
import { contextFor } from '../context-for-test.ts'
import { boxOf, leafOf } from '../leaf-for-test.ts'
import { partOf } from '../part-for-test.ts'

const first = boxOf({ studs: [100, 500, 900] })
const second = boxOf({ run: first.run, number: 2, mark: 'L2', id: 'a/box-2', x: millimetres(625) })
const boxPlan = (boxes: BoxPlan['boxes']): BoxPlan => ({
  boxes,
  carcassThickness: millimetres(18),
  backThickness: millimetres(6),
  frontThickness: millimetres(18),
  hasDoors: true,
  backGap: new Map(),
  make: { carcass: millimetres(18), back: millimetres(6), backFit: 'applied', top: 'rails' },
  contribution: { parts: [], joints: [], messages: [] },
})
const boxParts = (n: number): readonly Part[] => [
  partOf({ id: `a/box-${n}/side`, mark: `L${n}-S1`, mm: [760, 344, 18], quantity: 2 }),
  partOf({ id: `a/box-${n}/bottom`, mark: `L${n}-B1`, mm: [564, 344, 18] }),
  partOf({ id: `a/box-${n}/rail`, mark: `L${n}-T1`, mm: [564, 100, 18], quantity: 2 }),
  partOf({ id: `a/box-${n}/back`, mark: `L${n}-K1`, mm: [596, 756, 6] }),
  partOf({ id: `a/box-${n}/nailer-1`, mark: `L${n}-N1`, mm: [564, 100, 18] }),
]
const cleat = (id: string, mm: number, along: 'back' | 'side') =>
  partOf({
    id,
    mark: along === 'back' ? 'L-C1' : 'L-C2',
    mm: [mm, 30, 38],
    material: softwood(millimetres(30), millimetres(38)),
    placement: {
      x: millimetres(50),
      y: ZERO,
      z: millimetres(1200),
      dx: millimetres(along === 'back' ? mm : 38),
      dy: millimetres(along === 'back' ? 38 : mm),
      dz: millimetres(30),
    },
  })
const fronts: FrontPlan = {
  style: 'slab',
  drawers: [],
  drawerMake: undefined,
  leaves: [leafOf(), leafOf({ mark: 'L2-D1', id: 'x' })],
  contribution: boxPlan([]).contribution,
}
const work = {
  survey: { walls: [first.run.wall] },
  parts: [...boxParts(1), ...boxParts(2), cleat('c1', 1000, 'back'), cleat('c2', 300, 'side')],
  boxes: boxPlan([first, second]),
  fronts,
  panels: { layouts: [] },
}
const plan = fixings(contextFor('metric'), work)
const countOf = (of: FixingPlan, id: string) => of.lines.find((line) => line.id === id)?.count

describe('fixings (counts: common practice, no source; worked by hand)', () => {
  it('a row of fasteners', () => {
    const row = (length: number) =>
      along({ length: millimetres(length), end: millimetres(40), pitch: millimetres(150) })
    // Shorter than three ends: one; then two; 344: 1 + ⌈264/150⌉ = 3.
    expect([119, 120, 230, 231, 344].map(row)).toEqual([1, 2, 2, 3, 3])
  })

  it('carcass: bottom 3 at each end, rails and nailer 2 at each end', () => {
    // 2·3 + 2 rails · 2·2 + 2·2 = 18 a box.
    expect(countOf(plan, 'screw.carcass')).toBe(36)
  })

  it('a bought box brings its own carcass screws; it is still joined and fixed', () => {
    const bought = fixings(contextFor('metric'), {
      ...work,
      parts: work.parts.map((p) => (p.id.includes('box') ? { ...p, supply: 'boxes' as const } : p)),
    })
    expect(countOf(bought, 'screw.carcass')).toBeUndefined()
    expect(countOf(bought, 'screw.join')).toBe(countOf(plan, 'screw.join'))
    expect(countOf(bought, 'screw.wall')).toBe(countOf(plan, 'screw.wall'))
  })

  it('joining: two columns, length the longest sold under 2 × 18 − 3 = 33 mm', () => {
    expect(joiningScrewsFor({ height: millimetres(760), pitch: millimetres(500) })).toBe(4)
    expect(joiningScrewsFor({ height: millimetres(2300), pitch: millimetres(500) })).toBe(10)
    expect(plan.lines.find((line) => line.id === 'screw.join')).toMatchObject({ count: 4, item: 'joining screw 30 mm' })
    // 2 × 3/4 − 1/8 = 1 3/8: sold 1 1/4.
    expect(longestScrewSold(inches(1, 3, 8), 'inch')).toBe(inches(1, 1, 4))
  })

  it('to the wall: two for each stud behind a nailer, at least two; back cleat at studs, side cleat in a row', () => {
    // Box 1 (25…625): studs 100, 500: 4. Box 2 (625…1225): stud 900: 2. Back cleat 50…1050: 3. Side cleat 300: 1 + ⌈200/300⌉ = 2.
    expect(countOf(plan, 'screw.wall')).toBe(4 + 2 + 3 + 2)
  })

  it('applied back: pins round it', () => {
    // 2·(1 + ⌈550/150⌉) + 2·(1 + ⌈710/150⌉) = 2·5 + 2·6 = 22 a box.
    expect(countOf(plan, 'pin.back')).toBe(44)
  })

  it('hinges, handles, bumpers, shelf pins', () => {
    expect(['hinge.soft-close.straight-arm', 'handle', 'bumper', 'shelf-pin'].map((id) => countOf(plan, id))).toEqual([
      4, 2, 4, 8,
    ])
    const plain = fixings(contextFor('metric', { hinge: 'plain' }), work)
    expect([countOf(plain, 'hinge.plain.straight-arm'), countOf(plain, 'hinge.soft-close.straight-arm')]).toEqual([
      4,
      undefined,
    ])
  })

  it('a cleat gets two bonds besides its screws: one that grabs, one that carries, three beads of 30 mm²', () => {
    expect(adhesiveLitres({ length: millimetres(1000), beads: 3, section: 30 })).toBeCloseTo(0.09, 12)
    expect(countOf(plan, 'adhesive')).toBeCloseTo(0.117, 12)
    expect(countOf(plan, 'instant-glue')).toBe(1)
  })

  it('nothing to build: no line, no message', () => {
    const none = fixings(contextFor('metric'), {
      survey: { walls: [] },
      parts: [],
      boxes: boxPlan([]),
      fronts: { ...fronts, leaves: [] },
      panels: { layouts: [] },
    })
    expect(none).toMatchObject({ lines: [], messages: [] })
  })

  it('nothing in the wall to fix to: asked, with the blocking to put in', () => {
    const hollow = fixings(contextFor('metric'), {
      ...work,
      survey: { walls: [boxOf().run.wall] },
      boxes: boxPlan([boxOf()]),
    })
    expect(hollow.messages).toMatchObject([{ code: 'C5', weight: 'confirm', about: 'a.wallKind' }])
    expect(hollow.messages[0]?.todo).toContain('between 100 mm and 860 mm')
    expect(plan.messages).toEqual([])
  })
})

describe('masses', () => {
  const CUBIC_FOOT = 0.3048 ** 3
  it('leaf 19 3/8 × 30 × 3/4 in at 48 lb/cu ft: 12.109375 lb = 5.492720 kg (worked by hand)', () => {
    const mass = pieceMass({
      length: inches(30),
      width: inches(19, 3, 8),
      thickness: inches(0, 3, 4),
      density: (48 * 0.45359237) / CUBIC_FOOT,
    })
    expect(mass).toBeCloseTo(5.49272, 5)
  })

  it('sheet 2440 × 1220 × 18 mm at 740 kg/m³: 39.650976 kg (worked by hand)', () => {
    const [length, width, thickness] = [millimetres(2440), millimetres(1220), millimetres(18)]
    expect(pieceMass({ length, width, thickness, density: 740 })).toBeCloseTo(39.650976, 6)
  })

  it('a box is the sum of its panels; over 23 kg (NIOSH 94-110, load constant) it takes two', () => {
    const kg = (l: number, w: number, t: number) => (l * w * t * 750) / 1e9
    const box = 2 * kg(760, 344, 18) + kg(564, 344, 18) + 3 * kg(564, 100, 18) + kg(596, 756, 6)
    expect(plan.boxMasses.get('L1')).toBeCloseTo(box, 9)
    const heavy = fixings(contextFor('metric'), {
      ...work,
      parts: [...work.parts, partOf({ id: 'm', mark: 'L-G1', mm: [2300, 700, 25] })],
    })
    expect(heavy.twoPeople.get('L-G1')).toContain('over 23 kg')
    expect(plan.twoPeople.has('L-C1')).toBe(false)
  })

  it('two people where nobody helps is asked; so is what even two do not lift', () => {
    const heavy = partOf({ id: 'm', mark: 'L-G1', mm: [2300, 700, 25] })
    const codes = (part: Part, secondPair: string) =>
      fixings(contextFor('metric', { secondPair }), { ...work, parts: [...work.parts, part] }).messages.map(
        (m) => m.code,
      )
    expect(codes(heavy, 'on-call')).toEqual([])
    expect(codes(heavy, 'never')).toContain('C10')
    expect(codes(partOf({ id: 'm', mark: 'L-G1', mm: [2400, 1200, 30] }), 'always')).toEqual(['C10'])
  })
})
