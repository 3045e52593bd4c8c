import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { joints } from '../../../src/plan/joints/joints.ts'
import type { JointDraft } from '../../../src/things/joint.ts'
import { inches, type Length, millimetres, nanometres, ZERO } from '../../../src/units/length.ts'
import { contextFor } from '../context-for-test.ts'

const inch = contextFor('inch')
const draft = (given: Partial<JointDraft> = {}): JointDraft => ({
  id: 'a/box-left',
  bay: 'a',
  where: 'filler, left wall',
  length: inches(30),
  gap1: inches(0, 1, 32),
  gap2: inches(0, 1, 32),
  ends: ['foot', 'top'],
  colour: 'wall',
  twoColours: true,
  waitsFor: [],
  ...given,
})
const one = (given: Partial<JointDraft>) => joints(inch, [draft(given)])
const gap = (g: Length) => ({ gap1: g, gap2: g })

describe('joints', () => {
  it('no joint, nothing to do', () => {
    expect(joints(inch, [])).toMatchObject({ joints: [], tape: 0, passes: 0, messages: [], rods: [] })
  })

  it('the wider end decides the kind (limits: common practice, no source)', () => {
    const kindAt = (g: Length) => one({ gap1: inches(0, 1, 64), gap2: g }).joints[0]?.kind
    expect(kindAt(inches(0, 1, 32))).toBe('fillet')
    expect(kindAt(nanometres(inches(0, 1, 32) + 1))).toBe('caulk')
    expect(kindAt(inches(0, 1, 4))).toBe('caulk')
    expect(kindAt(nanometres(inches(0, 1, 4) + 1))).toBe('backed-caulk')
    expect(kindAt(inches(0, 1, 2))).toBe('backed-caulk')
  })

  it('wider than caulk over rod can close: a stop with the shortfall', () => {
    const { messages } = one(gap(inches(0, 5, 8)))
    expect(messages).toMatchObject([{ code: 'S21', weight: 'stop', about: 'a.widths' }])
    expect(messages[0]?.why).toContain('5/8 in; caulk over backer rod closes at most 1/2 in')
    expect(messages[0]?.todo).toContain('1/8 in narrower')
  })

  it('left open on purpose: no caulk, no tape, no stop', () => {
    const {
      joints: [kick],
      messages,
    } = one({ leftOpen: true, ...gap(inches(1)) })
    expect(kick).toMatchObject({ kind: 'open', passes: 0, caulk: 0, tape: ZERO })
    expect(messages).toEqual([])
  })

  it('no gap between two colours is a line of colour, with sharp-line tape', () => {
    const plan = one(gap(ZERO))
    expect(plan.joints[0]).toMatchObject({ kind: 'colour-line', passes: 0, caulk: 0, tape: inches(36) })
    expect(plan.tape).toBe(0)
    expect(plan.sharpLineTape).toBeCloseTo(1.1 * 36 * 0.0254, 9)
  })

  it('tape only where two colours meet, 3 in beyond each end (common practice, no source)', () => {
    expect(one({}).joints[0]?.tape).toBe(inches(36))
    expect(one({ twoColours: false }).joints[0]?.tape).toBe(ZERO)
  })

  it('over rod: rod 1.25 × the gap (ASTM C1193 practice, from memory)', () => {
    const plan = one(gap(inches(0, 3, 8)))
    // 3/8 × 1.25 = 0.46875 in: the next size sold is 1/2 in.
    expect(plan.joints[0]?.rod).toBe(inches(0, 1, 2))
    expect(plan.rods).toEqual([{ diameter: inches(0, 1, 2), metres: expect.closeTo(30 * 0.0254, 9) }])
  })

  it('joints of different widths get rods of different sizes, each summed for itself', () => {
    const plan = joints(inch, [
      draft({ id: 'a/1', ...gap(inches(0, 1, 2)) }),
      draft({ id: 'a/2', ...gap(inches(0, 3, 8)) }),
      draft({ id: 'a/3', ...gap(inches(0, 3, 8)) }),
      draft({ id: 'a/4' }),
    ])
    // 1/2 × 1.25 = 0.625 in = 5/8.
    expect(plan.rods).toEqual([
      { diameter: inches(0, 1, 2), metres: expect.closeTo(60 * 0.0254, 9) },
      { diameter: inches(0, 5, 8), metres: expect.closeTo(30 * 0.0254, 9) },
    ])
    expect(plan.joints.map((j) => j.rod)).toEqual([inches(0, 5, 8), inches(0, 1, 2), inches(0, 1, 2), ZERO])
  })

  it('numbers run bay by bay along the wall, whatever order the steps hand them in', () => {
    const plan = joints(inch, [draft({ id: 'b/1', bay: 'b' }), draft({ id: 'a/1' }), draft({ id: 'a/2' })])
    expect(plan.joints.map((j) => [j.number, j.id])).toEqual([
      [1, 'a/1'],
      [2, 'a/2'],
      [3, 'b/1'],
    ])
  })

  it('a wider gap never takes less caulk, and the totals by colour are the sums', () => {
    const widths = fc.array(fc.integer({ min: 0, max: 12_000 }), { minLength: 2, maxLength: 12 })
    fc.assert(
      fc.property(widths, (micrometres) => {
        const sorted = micrometres.toSorted((a, b) => a - b).filter((um) => um <= 6000)
        const plan = joints(
          contextFor('metric'),
          sorted.map((um, n) => draft({ id: `a/${n}`, twoColours: false, ...gap(millimetres(um / 1000)) })),
        )
        const litres = plan.joints.map((j) => j.caulk)
        expect(litres).toEqual(litres.toSorted((a, b) => a - b))
        expect(plan.caulk.wall).toBeCloseTo(
          litres.reduce((a, b) => a + b, 0),
          12,
        )
        expect(plan.caulk['built-in']).toBe(0)
      }),
    )
  })
})
