import { describe, expect, it } from 'vitest'
import { edgeAt } from '../../src/geometry/edge.ts'
import { boxHeight } from '../../src/job/chapters/cabinets.ts'
import { leavesPerBox } from '../../src/job/chapters/hardware.ts'
import { baseboard, ceiling, floor, returns, widths } from '../../src/job/chapters/wall.ts'
import { longestShelfSpan } from '../../src/plan/boxes/loose-shelf.ts'
import { widthAt } from '../../src/plan/survey/outline.ts'
import type { AlcoveWall } from '../../src/plan/survey/survey.ts'
import { type Length, millimetres as mm, ZERO } from '../../src/units/length.ts'
import { in_, inInches, inMm, runsOf, wallOf } from '../plan/run-for-test.ts'
import { inchAlcove, metricAlcove } from './worked-alcoves.ts'

const size = (part: { readonly length: Length; readonly width: Length }) => [
  inInches(part.length),
  inInches(part.width),
]

describe('worked example A, inch, opens outward (invented, computed by hand)', () => {
  const plan = runsOf(inchAlcove.job)
  const run = plan.slots.runs[0]!
  const wall = plan.survey.walls[0] as AlcoveWall

  it('stands above the kept baseboard: plinth 5 1/2, boxes to 35 1/2', () => {
    expect([plan.slots.plinth, run.z0, run.z1].map(inInches)).toEqual([5.5, 5.5, 35.5])
  })

  it.each([
    ['left back, foot', wall.left.back, 5.5, 0.005859],
    ['left back, top', wall.left.back, 35.5, 0.123047],
    ['left front, top', wall.left.front, 35.5, 0.123047 - 0.0625],
    ['right back, foot', wall.right.back, 5.5, 41.244141],
    ['right back, top', wall.right.back, 35.5, 41.126953],
    ['right front, foot', wall.right.front, 5.5, 41.306641],
    ['right front, top', wall.right.front, 35.5, 41.189453],
  ])('%s', (_where, edge, height, x) => {
    expect(inInches(edgeAt(edge, in_(height)))).toBeCloseTo(x, 6)
  })

  it('slot 41.003906, run 39 from 1.125, two boxes of 19 1/2', () => {
    expect(inInches(run.slot)).toBeCloseTo(41.003906, 6)
    expect(inInches(run.width)).toBe(39)
    expect(inInches(run.startX)).toBeCloseTo(1.125, 7)
    expect(plan.boxes.boxes.map((b) => inInches(b.width))).toEqual([19.5, 19.5])
  })

  it('front gaps 1.181641 at the foot, 1.064453 at the top, both sides', () => {
    for (const side of [run.left, run.right]) {
      expect(inInches(side.gapFoot)).toBeCloseTo(1.181641, 6)
      expect(inInches(side.gapTop)).toBeCloseTo(1.064453, 6)
      expect(side.fit).toBe('filler')
    }
  })

  it.each([
    ['a/box-1/side-left', [30, 12.9375]],
    ['a/box-2/side-right', [30, 12.9375]],
    ['a/box-1/bottom', [18, 12.9375]],
    ['a/box-1/top', [18, 12.9375]],
    ['a/box-1/back', [19.375, 29.875]],
    ['a/box-1/nailer-1', [18, 4]],
    ['a/box-1/loose-shelf-1', [17.9375, 12.1875]],
    ['a/box-1/leaf-1', [29.8125, 19.375]],
  ])('%s', (id, expected) => {
    expect(size(plan.part(id))).toEqual(expected)
  })

  it('box depth 13 3/16, one loose shelf, no second nailer', () => {
    expect(inInches(plan.boxes.boxes[0]!.depth)).toBe(13.1875)
    expect(plan.boxes.boxes[0]!.looseShelves).toBe(1)
    expect(plan.parts.some((p) => p.id.endsWith('nailer-2'))).toBe(false)
  })

  it('slab leaf 5.32 kg on two hinges, cups at 4 and 25 13/16', () => {
    const leaf = plan.fronts.leaves[0]!
    expect(leaf.mass).toBeCloseTo(5.32, 2)
    expect(leaf.cups.map(inInches)).toEqual([4, 25.8125])
    expect(plan.fronts.leaves.map((l) => l.hingeSide)).toEqual(['left', 'right'])
  })

  it('asked for two leaves per box: 9 5/8 each', () => {
    const two = runsOf(inchAlcove.put(leavesPerBox, 'job', 2).job)
    expect(two.fronts.leaves.map((l) => inInches(l.width))).toEqual([9.625, 9.625, 9.625, 9.625])
  })

  it('plinth frame 38 1/2 × 10 5/8 × 5 3/8 with four cross-pieces', () => {
    const rail = plan.part('a/plinth-1/rail-front')
    expect(size(rail)).toEqual([38.5, 5.375])
    const crosses = plan.parts.filter((p) => p.id.startsWith('a/plinth-1/cross'))
    expect(crosses.map((p) => inInches(p.length) + 1.5)).toEqual([10.625, 10.625, 10.625, 10.625])
  })

  it('kick plate 40 3/16, 5 7/16 left to 5 11/16 right, rough 41 11/16 × 6', () => {
    const y = in_(11, 7, 16)
    expect(inInches(widthAt(wall, ZERO, y))).toBeCloseTo(41.342, 3)
    expect(inInches(widthAt(wall, in_(5, 1, 2), y))).toBeCloseTo(41.331, 3)
    const kickPlate = plan.part('a/kick-plate-1')
    expect(size(kickPlate)).toEqual([40.1875, 5.6875])
    expect(kickPlate.taper).toBe('left 5 7/16')
    expect([kickPlate.roughLength, kickPlate.roughWidth].map(inInches)).toEqual([41.6875, 6])
  })

  it('raises nothing but the notes that square was not measured, and that the generic hinge sheet is to be checked', () => {
    expect(plan.messages.map((m) => m.code)).toEqual(['N4', 'N21'])
  })

  it('marks its parts by place and role', () => {
    const marks = ['side-left', 'side-right', 'bottom', 'top', 'back', 'nailer-1', 'loose-shelf-1', 'leaf-1']
    expect(marks.map((id) => plan.part(`a/box-2/${id}`).mark)).toEqual(
      ['S1', 'S2', 'B1', 'T1', 'K1', 'N1', 'A1', 'D1'].map((role) => `M2-${role}`),
    )
    expect([plan.part('a/kick-plate-1').mark, plan.part('a/plinth-1/rail-back').mark]).toEqual(['M-P1', 'M-U1'])
  })
})

describe('worked example B, metric, both returns slant the same way (invented, computed by hand)', () => {
  const plan = runsOf(metricAlcove.job)
  const run = plan.slots.runs[0]!
  const wall = plan.survey.walls[0] as AlcoveWall

  it.each([
    ['left back, foot', wall.left.back, 100, 0.105263],
    ['left back, top', wall.left.back, 820, 1.621053],
    ['left front, top', wall.left.front, 820, 8.621053],
    ['right back, top', wall.right.back, 820, 1202.378947],
    ['right front, foot', wall.right.front, 100, 1206.894737],
    ['right front, top', wall.right.front, 820, 1205.378947],
  ])('%s', (_where, edge, height, x) => {
    expect(inMm(edgeAt(edge, mm(height)))).toBeCloseTo(x, 5)
  })

  it('slot 1193.757895, run 1143 from 34, boxes 572 and 571, 292 deep', () => {
    expect(inMm(run.slot)).toBeCloseTo(1193.757895, 5)
    expect(inMm(run.width)).toBe(1143)
    expect(inMm(run.startX)).toBeCloseTo(34, 5)
    expect(plan.boxes.boxes.map((b) => inMm(b.width))).toEqual([572, 571])
    expect(inMm(plan.boxes.boxes[0]!.depth)).toBe(292)
  })

  it('front gaps left 26.894737 to 25.378947, right 29.894737 to 28.378947', () => {
    expect(inMm(run.left.gapFoot)).toBeCloseTo(26.894737, 5)
    expect(inMm(run.left.gapTop)).toBeCloseTo(25.378947, 5)
    expect(inMm(run.right.gapFoot)).toBeCloseTo(29.894737, 5)
    expect(inMm(run.right.gapTop)).toBeCloseTo(28.378947, 5)
  })

  it('bottoms 536 and 535, cut to the box’s own width', () => {
    expect([plan.part('a/box-1/bottom'), plan.part('a/box-2/bottom')].map((p) => inMm(p.length))).toEqual([536, 535])
  })
})

describe('a right alcove beside a breast, inch (invented, computed by hand)', () => {
  const plan = runsOf(
    wallOf('inch', ['breast', 'alcove'])
      .put(widths, 'b', [
        { height: in_(4), back: in_(40, 3, 4), front: in_(40, 7, 8), left: ZERO },
        { height: in_(36), back: in_(40, 5, 8), front: in_(40, 13, 16), left: ZERO },
        { height: in_(84), back: in_(40, 1, 2), front: in_(40, 9, 16), left: in_(0, 1, 16) },
      ])
      .put(returns, 'b', [in_(15, 1, 2), in_(15, 5, 8)])
      .put(ceiling, 'b', [in_(96), in_(96)])
      .put(floor, 'b', [
        { x: ZERO, drop: in_(0, 1, 4) },
        { x: in_(40, 3, 4), drop: in_(0, 3, 8) },
      ])
      .put(baseboard, 'b', [in_(5, 1, 4), in_(0, 9, 16)])
      .put(boxHeight, 'job', in_(30)).job,
  )
  const run = plan.slots.runs[0]!

  it('slot 40.627, run 38 5/8 from 1, boxes 19 5/16, leaves 19 3/16 × 29 13/16', () => {
    expect(inInches(run.slot)).toBeCloseTo(40.627, 3)
    expect(inInches(run.width)).toBe(38.625)
    expect(inInches(run.startX)).toBeCloseTo(1, 2)
    expect(plan.boxes.boxes.map((b) => inInches(b.width))).toEqual([19.3125, 19.3125])
    expect(plan.fronts.leaves.map((l) => [inInches(l.width), inInches(l.height)])).toEqual([
      [19.1875, 29.8125],
      [19.1875, 29.8125],
    ])
  })

  it('kick plate 39 11/16, 5 11/16 to 5 13/16', () => {
    const kickPlate = plan.part('b/kick-plate-1')
    expect(size(kickPlate)).toEqual([39.6875, 5.8125])
    expect(kickPlate.taper).toBe('left 5 11/16')
  })
})

describe('published shelf lengths (Architectural Woodwork Standards, 1st edition, 2009, p. 279; limit span/144, p. 253)', () => {
  const NEWTON_MM2_PER_PSI = 0.00689475729
  const PASCALS_PER_LB_SQ_FT = 47.88025898
  it.each([
    [950_000, 0.75, 40, 40.026025, 40],
    [950_000, 0.75, 50, 37.15687, 37],
    [950_000, 1, 40, 53.368033, 53],
    [950_000, 1, 50, 49.542493, 49],
    [1_800_000, 0.75, 40, 49.528909, 49],
    [1_800_000, 0.75, 50, 45.978566, 46],
    [1_800_000, 1, 40, 66.038545, 66],
    [1_800_000, 1, 50, 61.304755, 61],
    [1_820_000, 0.75, 40, 49.711674, 49],
    [1_820_000, 0.75, 50, 46.14823, 46],
    [1_820_000, 1, 40, 66.282232, 66],
    [1_820_000, 1, 50, 61.530973, 61],
    // Same rule for MDF at the 2400 N/mm² of ANSI A208.2-2016 grade 130; not printed in the standard's table.
    [348_091, 0.75, 40, 28.641704, undefined],
    [348_091, 1, 40, 38.188939, undefined],
  ])('E %d psi, %d in thick, %d lb/sq ft: %d in', (psi, thickness, load, computed, printed) => {
    const span = longestShelfSpan({
      thickness: in_(thickness),
      stiffness: psi * NEWTON_MM2_PER_PSI,
      load: load * PASCALS_PER_LB_SQ_FT,
      limit: 144,
    })
    expect(inInches(span)).toBeCloseTo(computed, 5)
    if (printed !== undefined) expect(Math.abs(inInches(span) - printed)).toBeLessThan(1)
  })
})
