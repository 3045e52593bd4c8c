import { describe, expect, it } from 'vitest'
import { partitions } from '../../../src/job/chapters/box-inside.ts'
import { boxCount, carcassThickness, kick, looseShelves } from '../../../src/job/chapters/cabinets.ts'
import { floorFinish, plinthOn } from '../../../src/job/chapters/floor-and-trim.ts'
import { ceiling, floor, returns, widths } from '../../../src/job/chapters/wall.ts'
import { feetLines, feetOfRun } from '../../../src/plan/run/levellers.ts'
import { millimetres as mm, ZERO } from '../../../src/units/length.ts'
import { inMm, runsOf, wallOf } from '../run-for-test.ts'

/** A run of 1000 mm: slot 1050 less two fillers of 25. */
const alcove = wallOf('metric', ['alcove'])
  .put(widths, 'a', [
    { height: ZERO, back: mm(1050), front: mm(1050), left: ZERO },
    { height: mm(2400), back: mm(1050), front: mm(1050), left: ZERO },
  ])
  .put(returns, 'a', [mm(400), mm(400)])
  .put(ceiling, 'a', [mm(2440)])
  .put(floor, 'a', [{ x: ZERO, drop: ZERO }])
  .put(carcassThickness, 'job', mm(18))
  .put(boxCount, 'a', 1)

describe('a divider', () => {
  const plan = runsOf(alcove.put(looseShelves, 'job', 1).put(partitions, 'a', [{ box: 1, what: 'divider' }]).job)

  it('stands in the middle from bottom to top: 760 − 36 high, left face at (1000 − 18) / 2', () => {
    const divider = plan.part('a/box-1/divider-1')
    expect(inMm(divider.length)).toBe(724)
    expect(inMm(plan.boxes.boxes[0]!.dividers[0]!)).toBe(491)
  })

  it('halves the loose shelves: two of (1000 − 3 × 18) / 2 − 2', () => {
    expect(plan.boxes.boxes[0]!.looseShelves).toBe(2)
    expect(['a/box-1/loose-shelf-1', 'a/box-1/loose-shelf-2'].map((id) => inMm(plan.part(id).length))).toEqual([
      471, 471,
    ])
  })

  it('cures a loose shelf that sags', () => {
    const codes = (job: Parameters<typeof runsOf>[0]) => runsOf(job).messages.map((m) => m.code)
    const wide = alcove
      .put(looseShelves, 'job', 1)
      .put(widths, 'a', [{ height: ZERO, back: mm(2050), front: mm(2050), left: ZERO }])
    const sagging = runsOf(wide.job).messages.find((m) => m.code === 'S13')
    const fix = sagging?.fixes[0]?.answers[0]
    expect(fix?.key).toBe('a.partitions')
    expect(codes(wide.put(partitions, 'a', fix?.value as never).job)).not.toContain('S13')
  })
})

describe('a fixed shelf', () => {
  it('is two pieces beside a divider, and takes the place of a loose one', () => {
    const plan = runsOf(
      alcove.put(partitions, 'a', [
        { box: 1, what: 'divider' },
        { box: 1, what: 'fixed-shelf', at: mm(380) },
      ]).job,
    )
    const shelf = plan.part('a/box-1/fixed-shelf-2')
    expect([inMm(shelf.length), inMm(shelf.placement.z)]).toEqual([473, 100 + 371])
    expect(plan.boxes.boxes[0]!.looseShelves).toBe(0)
  })

  it('with no room names the nearest place that has', () => {
    const plan = runsOf(alcove.put(partitions, 'a', [{ box: 1, what: 'fixed-shelf', at: mm(40) }]).job)
    const stop = plan.messages.find((m) => m.code === 'S23')
    // Bottom 18, free 75, half the shelf 9.
    expect(stop?.fixes[0]?.answers[0]?.value).toEqual([{ box: 1, what: 'fixed-shelf', at: mm(102) }])
    expect(plan.parts.some((p) => p.id.includes('fixed-shelf'))).toBe(false)
  })
})

describe('what the boxes stand on', () => {
  it('screw feet take the place of the frame: four a box and one a joint (common practice, no source)', () => {
    const plan = runsOf(alcove.put(boxCount, 'a', 2).put(plinthOn, 'job', 'feet').job)
    expect(plan.parts.some((p) => p.id.includes('plinth'))).toBe(false)
    expect(feetLines(plan.context, plan.boxes.boxes).map((l) => l.count)).toEqual([9])
    expect(feetOfRun({ boxes: 1 })).toBe(4)
  })

  it('rises by a floor still to be laid', () => {
    const plan = runsOf(alcove.put(kick, 'job', mm(100)).put(floorFinish, 'job', mm(15)).job)
    expect(inMm(plan.slots.plinth)).toBe(115)
  })
})
