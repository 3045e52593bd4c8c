import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxCount, boxDepth, counter, runLength, runStart } from '../../../src/job/chapters/cabinets.ts'
import { baseboard, ceiling, flatEnds, flatLength, floor } from '../../../src/job/chapters/wall.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { ZERO } from '../../../src/units/length.ts'
import { in_, inInches, wallOf } from '../run-for-test.ts'

const flat = wallOf('inch', ['flat'])
  .put(flatLength, 'a', in_(160))
  .put(flatEnds, 'a', 'neither')
  .put(ceiling, 'a', [in_(96)])
  .put(floor, 'a', [
    { x: ZERO, drop: ZERO },
    { x: in_(160), drop: in_(1) },
  ])
  .put(baseboard, 'a', [in_(4), in_(0, 1, 2)])
  .put(boxDepth, 'a', in_(15))
  .put(runStart, 'a', in_(20))

describe('a run with free ends', () => {
  const plan = makePlan(flat.put(runLength, 'a', in_(60)).job, 'quick')
  const run = plan.slots.runs[0]!

  it('has a gable at each, down to the floor there', () => {
    const gables = plan.parts.filter((p) => p.name === 'gable')
    expect(gables.map((g) => g.mark)).toEqual(['M-G1', 'M-G2'])
    const right = inInches(run.startX) + inInches(run.width)
    expect(inInches(gables[1]!.length)).toBeCloseTo(inInches(run.z1) + right / 160, 1)
    expect(gables[0]!.cutOuts.map((c) => [c.width, c.height].map(inInches))).toEqual([[0.5, 4]])
    expect(inInches(gables[0]!.width)).toBe(15 + 3 / 4 + 1 / 16)
  })

  it('its counter reaches over gables and overhang at both', () => {
    const top = plan.parts.find((p) => p.id === 'a/counter-1')!
    expect(inInches(top.length)).toBe(inInches(run.width) + 2 * (3 / 4 + 3 / 4))
    expect(inInches(top.placement.x)).toBe(inInches(run.startX) - 1.5)
    expect(plan.joints.joints.filter((j) => j.id.startsWith('a/top-')).map((j) => j.id)).toEqual(['a/top-back'])
  })

  it('no counter, no top', () => {
    const bare = makePlan(flat.put(runLength, 'a', in_(60)).put(counter, 'job', false).job, 'quick')
    expect(bare.parts.filter((p) => p.name === 'counter')).toEqual([])
    expect(bare.tops.counterTop.get('a')).toBe(bare.slots.runs[0]!.z1)
  })
})

describe('a counter longer than the sheet', () => {
  const plan = makePlan(flat.put(runLength, 'a', in_(120)).job, 'quick')
  const pieces = plan.parts.filter((p) => p.name === 'counter')

  it('is joined over joints between boxes; its pieces add up', () => {
    expect(pieces.map((p) => p.mark)).toEqual(['M-T1', 'M-T2'])
    const joint = pieces[1]!.placement.x
    expect(plan.boxes.boxes.map((b) => b.x)).toContain(joint)
    expect(pieces.reduce((t, p) => t + inInches(p.length), 0)).toBe(123)
    for (const p of pieces) expect(inInches(p.roughLength)).toBeLessThanOrEqual(95.5)
  })
})

describe('no piece of a counter is longer than the sheet', () => {
  const usable = 95.5

  it('with the joints where boxes meet, on runs of any length and any boxes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 140 }), fc.integer({ min: 1, max: 8 }), (length, count) => {
        const job = flat.put(runStart, 'a', in_(2)).put(runLength, 'a', in_(length)).put(boxCount, 'a', count).job
        const { parts, boxes } = makePlan(job, 'quick')
        const pieces = parts.filter((p) => p.name === 'counter')
        const widest = Math.max(...boxes.boxes.map((b) => inInches(b.width)))
        for (const p of pieces) expect(inInches(p.roughLength)).toBeLessThanOrEqual(usable)
        expect(pieces.reduce((t, p) => t + inInches(p.length), 0)).toBeCloseTo(length + 3, 6)
        if (widest < 80) for (const p of pieces.slice(1)) expect(boxes.boxes.map((b) => b.x)).toContain(p.placement.x)
      }),
      { numRuns: 30 },
    )
  })

  it('takes the fewest, and of those the most even', () => {
    const job = flat.put(flatLength, 'a', in_(300)).put(runLength, 'a', in_(240)).put(boxCount, 'a', 8).job
    const pieces = makePlan(job, 'quick').parts.filter((p) => p.name === 'counter')
    expect(pieces.map((p) => inInches(p.length))).toEqual([91.5, 90, 61.5])
  })

  it('says so where the joint lies on a box that is wider than a sheet', () => {
    const job = flat.put(runLength, 'a', in_(120)).put(boxCount, 'a', 1).job
    const pieces = makePlan(job, 'quick').parts.filter((p) => p.name === 'counter')
    expect(pieces.map((p) => inInches(p.length))).toEqual([61.5, 61.5])
    expect(pieces[0]?.details.join()).toContain('Joined on the box:')
  })
})
