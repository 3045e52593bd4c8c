import { describe, expect, it } from 'vitest'
import { boxKind } from '../../../src/job/chapters/cabinets.ts'
import { shelfCount, shelfDepth, shelfLength, shelfThickness } from '../../../src/job/chapters/shelves.ts'
import { ceiling, flatEnds, flatLength, studs, wallKind } from '../../../src/job/chapters/wall.ts'
import { devices } from '../../../src/job/chapters/wall-devices.ts'
import { backCleatHeld, nailerHeld } from '../../../src/plan/fixings/wall-fixing-kinds.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { contextFor } from '../context-for-test.ts'
import { in_, wallOf } from '../run-for-test.ts'

const context = contextFor('inch')
const at = (...inches: readonly number[]) => ({ kind: 'studs', centres: inches.map((n) => in_(n)) }) as const
const cleat = (high: number) => ({ from: in_(10), to: in_(58), length: in_(48), height: in_(high) })

describe('a back cleat 48 in long from 10 (counts: common practice, no source; worked by hand)', () => {
  it.each([
    ['three studs, one screw each', at(8, 24, 40, 56), 1.5, { bought: 3, holding: 3, atTwoPlaces: true }],
    ['a high cleat, two at each stud', at(24, 40, 56), 2.5, { bought: 6, holding: 6, atTwoPlaces: true }],
    ['one stud: two go in, one carries', at(24), 1.5, { bought: 2, holding: 1, atTwoPlaces: false }],
    ['no stud behind it: none carries', at(4, 70), 1.5, { bought: 2, holding: 0, atTwoPlaces: false }],
    ['hollow: none carries', { kind: 'hollow' } as const, 1.5, { bought: 2, holding: 0, atTwoPlaces: false }],
    // 1 + ⌈(48 − 2 · 2) / 12⌉ = 5
    ['masonry: a row', { kind: 'masonry' } as const, 1.5, { bought: 5, holding: 5, atTwoPlaces: true }],
  ])('%s', (_, fixing, high, held) => {
    expect(backCleatHeld(context, fixing, cleat(high))).toEqual(held)
  })
})

it('a nailer 24 in wide: two at each stud, two at least; in masonry 3 in from the ends, 16 apart at most', () => {
  const box = { from: in_(10), to: in_(34), width: in_(24) }
  expect(nailerHeld(context, at(12, 28), box).bought).toBe(4)
  expect(nailerHeld(context, at(40), box)).toMatchObject({ bought: 2, holding: 0 })
  // 1 + ⌈(24 − 6) / 16⌉ = 3
  expect(nailerHeld(context, { kind: 'masonry' }, box).bought).toBe(3)
})

describe('shelves on a wall without boxes', () => {
  const shelves = wallOf('inch', ['flat'])
    .put(flatLength, 'a', in_(100))
    .put(flatEnds, 'a', 'neither')
    .put(ceiling, 'a', [in_(96)])
    .put(boxKind, 'a', 'none')
    .put(devices, 'a', [])
    .put(shelfCount, 'a', 2)
    .put(shelfLength, 'a', in_(60))
    .put(shelfDepth, 'a', in_(8))
    .put(shelfThickness, 'a', in_(2))
  const line = (kind: 'masonry' | 'studs' | 'hollow', id: string) =>
    makePlan(
      shelves.put(wallKind, 'a', kind).put(studs, 'a', [in_(34), in_(50), in_(66)]).job,
      'quick',
    ).fixings.lines.find((l) => l.id === id)

  it('in masonry hang on anchors, not on wood screws', () => {
    expect(line('masonry', 'anchor')?.use).toContain('shelf cleats')
    expect(line('masonry', 'screw.wall')).toBeUndefined()
  })

  it('on studs get what carries them and no more: three a shelf', () => {
    expect(line('studs', 'screw.wall')?.count).toBe(6)
    expect(line('studs', 'anchor')).toBeUndefined()
  })

  it('on a hollow wall are credited with nothing: stopped, and blocking is asked for', () => {
    const codes = makePlan(shelves.put(wallKind, 'a', 'hollow').job, 'quick').messages.map((m) => m.code)
    expect(codes).toContain('S13')
    expect(codes).toContain('C5')
  })
})
