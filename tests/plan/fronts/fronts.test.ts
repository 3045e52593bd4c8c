import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../../src/figures/figures.ts'
import { boxCount, boxHeight, boxKind, carcassThickness } from '../../../src/job/chapters/cabinets.ts'
import {
  doors,
  frontStyle,
  frontThickness,
  handle,
  hingeSheet,
  leavesPerBox,
  pullSpacing,
  stileWidth,
} from '../../../src/job/chapters/hardware.ts'
import { ceiling, flatEnds, flatLength, returns, widths } from '../../../src/job/chapters/wall.ts'
import type { Job } from '../../../src/job/job.ts'
import { armFor, cupsClearOf, hingeCount } from '../../../src/plan/fronts/hinges.ts'
import { millimetres as mm, sum, ZERO } from '../../../src/units/length.ts'
import { kilograms } from '../../../src/units/mass.ts'
import { cutStep } from '../../../src/units/round.ts'
import { inMm, runsOf, wallOf } from '../run-for-test.ts'

const alcove = wallOf('metric', ['alcove', 'breast'])
  .put(widths, 'a', [
    { height: ZERO, back: mm(1050), front: mm(1050), left: ZERO },
    { height: mm(2400), back: mm(1050), front: mm(1050), left: ZERO },
  ])
  .put(returns, 'a', [mm(400), mm(400)])
  .put(ceiling, 'a', [mm(2440)])
const codes = (job: Job) => runsOf(job).messages.map((m) => m.code)

describe('leaves', () => {
  it('of a framed door: stiles through, rails and panel with tongues (common practice, no source)', () => {
    const plan = runsOf(alcove.put(frontStyle, 'job', 'framed').job)
    // Box 500 × 760: leaf 500 − 1.5 − 1.5 = 497 wide, 760 − 3 − 1.5 = 755.5 high; stile 60, tongue 10, play 1.5.
    const size = (id: string) => {
      const p = plan.part(`a/box-1/leaf-1/${id}`)
      return [p.length, p.width, p.roughLength, p.thickness].map(inMm)
    }
    expect(size('stile-left')).toEqual([755.5, 60, 780.5, 18])
    expect(size('rail-lower')).toEqual([497 - 120 + 20, 60, 397, 18])
    expect(size('panel')).toEqual([755.5 - 120 + 20 - 3, 497 - 120 + 20 - 3, 652.5, 6])
    const pieces = plan.parts.filter((p) => p.mark === 'L1-D1')
    expect(pieces.map((p) => p.piece)).toEqual(['stile', 'stile', 'rail', 'rail', 'panel'])
  })

  it('never cross a box side, and hang in pairs from their outer edges', () => {
    const plan = runsOf(alcove.put(leavesPerBox, 'job', 3).job)
    for (const leaf of plan.fronts.leaves) {
      expect(leaf.x).toBeGreaterThanOrEqual(leaf.box.x)
      expect(sum(leaf.x, leaf.width)).toBeLessThanOrEqual(sum(leaf.box.x, leaf.box.width))
    }
    const pair = runsOf(alcove.put(leavesPerBox, 'job', 2).job).fronts.leaves.filter((l) => l.box.number === 1)
    expect(pair.map((l) => l.hingeSide)).toEqual(['left', 'right'])
  })

  it('stand a whole gap off a flush gable', () => {
    const flat = wallOf('metric', ['flat']).put(flatLength, 'a', mm(536)).put(flatEnds, 'a', 'neither')
    const leaf = runsOf(flat.job).fronts.leaves[0]!
    expect([inMm(leaf.box.width), inMm(leaf.width)]).toEqual([500, 494])
  })

  it('hang a single leaf away from the breast', () => {
    expect(
      runsOf(alcove.put(boxCount, 'a', 1).put(leavesPerBox, 'job', 1).job).fronts.leaves.map((l) => l.hingeSide),
    ).toEqual(['left'])
  })

  it('set a pull’s holes below the top edge, in the middle of the stile', () => {
    const leaf = runsOf(alcove.put(handle, 'job', 'pull').put(pullSpacing, 'job', mm(128)).job).fronts.leaves[0]!
    expect(leaf.handleHoles.map((h) => [inMm(h.fromHandleEdge), inMm(h.fromTop)])).toEqual([
      [30, 75],
      [30, 203],
    ])
  })

  it('set a tall leaf’s knob a metre above the floor', () => {
    const leaf = runsOf(alcove.put(boxKind, 'a', 'tall').job).fronts.leaves[0]!
    expect(inMm(leaf.z) + inMm(leaf.height) - inMm(leaf.handleHoles[0]!.fromTop)).toBe(1000)
  })

  it.each([
    ['a frame that leaves no panel', alcove.put(stileWidth, 'job', mm(150)).put(leavesPerBox, 'job', 2).job],
    ['a leaf too thin for a cup', alcove.put(frontThickness, 'job', mm(15)).job],
    [
      'a leaf too narrow to hang',
      alcove
        .put(boxCount, 'a', 4)
        .put(leavesPerBox, 'job', 4)
        .put(boxHeight, 'job', mm(230))
        .put(frontThickness, 'job', mm(16))
        .put(frontStyle, 'job', 'framed').job,
    ],
    [
      'a slab too heavy for hinges',
      alcove.put(boxKind, 'a', 'tall').put(boxCount, 'a', 1).put(leavesPerBox, 'job', 1).put(frontStyle, 'job', 'slab')
        .job,
    ],
  ])('%s is a stop', (_words, job) => {
    expect(codes(job)).toContain('S9')
  })

  it('are not there on open boxes, which then stand deeper', () => {
    const plan = runsOf(alcove.put(doors, 'job', 'no').job)
    expect(plan.fronts.leaves).toEqual([])
    expect(inMm(plan.boxes.boxes[0]!.depth)).toBe(400 - 32 - 6)
  })
})

describe('hinges by height and mass (common practice, no source)', () => {
  const figures = figuresIn('metric')
  it.each([
    [900, 6, 400, 2],
    [901, 3, 400, 3],
    [700, 12.1, 400, 4],
    [2000, 5, 400, 4],
    [2400, 22, 400, 5],
    [900, 6, 601, 3],
    [2401, 5, 400, undefined],
    [900, 22.1, 400, undefined],
  ])('%d mm high, %d kg, %d mm wide: %s', (height, mass, width, expected) => {
    expect(hingeCount({ height: mm(height), width: mm(width), mass: kilograms(mass), figures })).toBe(expected)
  })
})

describe('cups slide clear of what is fixed behind the leaf, 35 mm from their centres (common practice, no source)', () => {
  const given = { height: mm(760), cupClear: mm(35), cut: cutStep(mm(1)) }
  const cups = [mm(100), mm(660)]
  const clear = (from: number, to: number) => cupsClearOf(cups, [{ from: mm(from), to: mm(to) }], given).map(inMm)
  it.each([
    ['a shelf nowhere near', 300, 318, [100, 660]],
    ['a shelf 35 mm above the lower cup is far enough', 135, 153, [100, 660]],
    ['a shelf just under the lower cup: up by the shortfall', 60, 78, [113, 660]],
    ['a shelf across the lower cup: up past it', 95, 113, [148, 660]],
    ['a shelf just over the upper cup: down by the shortfall', 680, 698, [100, 645]],
    ['a shelf across the upper cup: down past it', 650, 668, [100, 615]],
  ])('%s', (_words, from, to, expected) => {
    expect(clear(from, to)).toEqual(expected)
  })

  it('and clear of a second one it would then meet', () => {
    const behind = [
      { from: mm(60), to: mm(78) },
      { from: mm(130), to: mm(148) },
    ]
    expect(cupsClearOf(cups, behind, given).map(inMm)).toEqual([183, 660])
  })
})

describe('hinges are ordered by overlay: side − margin there', () => {
  it('at the run’s end, at a joint and against a flush gable', () => {
    const margins = runsOf(alcove.put(leavesPerBox, 'job', 1).job).fronts.leaves.map((l) => inMm(l.overlay))
    expect(margins).toEqual([16.5, 16.5])
    const flat = wallOf('metric', ['flat']).put(flatLength, 'a', mm(536)).put(flatEnds, 'a', 'neither')
    expect(inMm(runsOf(flat.job).fronts.leaves[0]!.overlay)).toBe(15)
  })

  it.each([
    [16.5, 'full'],
    [9, 'half'],
    [30, undefined],
    [2, undefined],
  ])('%d mm: %s', (overlay, arm) => {
    expect(armFor(mm(overlay), figuresIn('metric'))?.id).toBe(arm)
  })

  it('a side too thick for any hinge of the list is a stop', () => {
    expect(codes(alcove.put(carcassThickness, 'job', mm(30)).job)).toContain('S9')
  })
})

describe('set-out of leaves', () => {
  it('plates stand where the cups are, from the box’s lower edge', () => {
    const leaf = runsOf(alcove.job).fronts.leaves[0]!
    expect(leaf.plates.map(inMm)).toEqual(leaf.cups.map((c) => inMm(c) + 1.5))
  })

  it('a sheet typed in replaces the generic figures and takes their warning away', () => {
    const words = (job: Job) =>
      JSON.stringify(
        runsOf(job)
          .parts.filter((p) => p.mark === 'L1-D1')
          .map((p) => p.details),
      )
    const own = alcove.put(hingeSheet, 'job', [mm(35), mm(21), mm(11.5), mm(37)]).job
    expect(words(alcove.job)).toContain('check against the hinge’s sheet')
    expect(words(own)).not.toContain('check against')
    expect(words(own)).toContain('centre 21 mm')
    expect(codes(own)).not.toContain('N21')
  })
})
