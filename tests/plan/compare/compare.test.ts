import { describe, expect, it } from 'vitest'
import { boxCount, boxDepth, boxHeight, boxKind, fillerWidth, kick } from '../../../src/job/chapters/cabinets.ts'
import { shelfCount, shelfHeights, shelfThickness } from '../../../src/job/chapters/shelves.ts'
import { baseboard, ceiling, floor, returns, wallKind, widths } from '../../../src/job/chapters/wall.ts'
import { devices } from '../../../src/job/chapters/wall-devices.ts'
import { comparePlans } from '../../../src/plan/compare/compare.ts'
import { effectLine } from '../../../src/plan/compare/effect-line.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { effectWords, layoutOf } from '../../../src/screens/frame.ts'
import { ZERO } from '../../../src/units/length.ts'
import { in_, type Put, wallOf } from '../run-for-test.ts'

const measured = (put: Put, bay: string): Put =>
  put
    .put(widths, bay, [
      { height: in_(4), back: in_(40), front: in_(40) },
      { height: in_(84), back: in_(40), front: in_(40) },
    ])
    .put(returns, bay, [in_(15), in_(15)])
    .put(ceiling, bay, [in_(97)])
    .put(floor, bay, [{ x: ZERO, drop: ZERO }])
    .put(baseboard, bay, [in_(4), in_(0, 5, 8)])
    .put(wallKind, bay, 'masonry')
    .put(devices, bay, [])
    .put(shelfCount, bay, 3)
    .put(shelfHeights, bay, [in_(49), in_(61), in_(73)])

const two = measured(measured(wallOf('inch', ['alcove', 'alcove']), 'a'), 'b')
const says = (before: Put, after: Put) =>
  comparePlans(makePlan(before.job, 'quick'), makePlan(after.job, 'quick')).map((c) => c.says)

describe('what an answer changes, in a carpenter’s words', () => {
  it('run and boxes of the bay, without what stayed', () => {
    expect(says(two, two.put(fillerWidth, 'a', in_(1, 1, 2)))[0]).toBe('left alcove: run 38 → 37, 2 boxes of 18 1/2')
    expect(says(two, two.put(boxCount, 'a', 1))[0]).toBe('left alcove: 2 boxes of 19 → 1 box of 38')
    expect(says(two, two.put(boxKind, 'b', 'none'))[0]).toBe('right alcove: 2 boxes of 19 → no boxes')
    expect(says(two, two.put(boxDepth, 'b', in_(12)))[0]).toMatch(/^right alcove: box depth \S.* → 12$/)
  })

  it('bays that change alike are said together', () => {
    expect(says(two, two.put(boxHeight, 'job', in_(28)))[0]).toMatch(
      /^left alcove and right alcove: box height .+ → 28$/,
    )
    expect(says(two, two.put(kick, 'job', in_(5)))).toContain('plinth 4 1/4 → 5')
  })

  it('shelves: the count with their heights, heights alone, thickness alone', () => {
    const three = '3 shelves at 49, 61, 73'
    expect(says(two, two.put(shelfHeights, 'a', [in_(50), in_(61), in_(73)]))[0]).toBe(
      `left alcove: ${three} → 50, 61, 73`,
    )
    expect(says(two, two.put(shelfCount, 'a', 0))[0]).toBe(`left alcove: ${three} → no shelves`)
    const thick = two.put(shelfThickness, 'a', in_(2)).put(shelfThickness, 'b', in_(2))
    expect(says(thick, thick.put(shelfThickness, 'a', in_(3)))[0]).toBe('left alcove: shelf thickness 2 → 3')
  })

  it('counts what is to be confirmed or stops, after what is built; the words are in the review', () => {
    const wide = two.put(fillerWidth, 'a', in_(4))
    const said = says(two, wide)
    expect(said[0]).toMatch(/^left alcove: run 38 → 32/)
    expect(said).toContain('1 more to confirm')
    expect(says(wide, two)).toContain('1 no longer to confirm')
    const stopped = says(two, two.put(boxDepth, 'a', in_(4)))
    expect(stopped).toContain('1 new stop')
    expect(says(two.put(boxDepth, 'a', in_(4)), two)).toContain('1 stop cleared')
  })

  it.each([
    [60, 20],
    [80, 24],
    [120, 40],
  ])('the effect in a window of %i columns holds whole changes and what is to be confirmed', (columns, rows) => {
    const layout = layoutOf({ columns, rows }, { signs: 'unicode', colour: false })
    const wide = two.put(fillerWidth, 'a', in_(4))
    const changes = comparePlans(makePlan(two.job, 'quick'), makePlan(wide.job, 'quick'))
    const shown = effectWords(layout, changes)
    for (const part of shown.split('; ')) expect(changes.map((c) => c.says)).toContain(part)
    expect(shown).toMatch(/\d more to confirm/)
    expect(shown).toMatch(/^left alcove: run/)
    expect(shown).not.toBe(effectLine(changes, () => true))
  })
})
