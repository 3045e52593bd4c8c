import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxCount, boxDepth, boxKind, fitLeft, fitRight } from '../../../src/job/chapters/cabinets.ts'
import { type DrawerRow, drawers, drawersWanted, slide, slideSheet } from '../../../src/job/chapters/drawers.ts'
import { frontStyle, handle, pullSpacing } from '../../../src/job/chapters/hardware.ts'
import { units } from '../../../src/job/chapters/job.ts'
import { ceiling, returns, widths } from '../../../src/job/chapters/wall.ts'
import type { Job } from '../../../src/job/job.ts'
import type { Drawer } from '../../../src/plan/fronts/drawers.ts'
import type { Part } from '../../../src/things/part.ts'
import { inches, millimetres as mm, sum, ZERO } from '../../../src/units/length.ts'
import { inMm, runsOf, wallOf } from '../run-for-test.ts'

/** One alcove, two boxes of 500 × 760 mm, slab fronts. Sizes: common practice, no source; every sum worked by hand. */
const alcove = wallOf('metric', ['alcove', 'breast'])
  .put(widths, 'a', [
    { height: ZERO, back: mm(1050), front: mm(1050), left: ZERO },
    { height: mm(2400), back: mm(1050), front: mm(1050), left: ZERO },
  ])
  .put(returns, 'a', [mm(400), mm(400)])
  .put(ceiling, 'a', [mm(2440)])
  .put(fitLeft, 'a', 'filler')
  .put(fitRight, 'a', 'filler')
  .put(frontStyle, 'job', 'slab')
  .put(drawersWanted, 'job', 'yes')
const withDrawers = (...rows: readonly DrawerRow[]) => alcove.put(drawers, 'a', rows)
const codes = (job: Job) =>
  runsOf(job)
    .messages.filter((m) => m.weight === 'stop')
    .map((m) => m.code)
const front = ({ width, height }: Drawer) => [inMm(width), inMm(height)]
const body = ({ body: b }: Drawer) => [inMm(b.width), inMm(b.height), inMm(b.length)]

describe('drawers', () => {
  it('are in no box that was not asked for, and in none while nobody wants them', () => {
    expect(runsOf(alcove.job).fronts.drawers).toEqual([])
    expect(runsOf(withDrawers({ box: 1 }).put(drawersWanted, 'job', 'no').job).fronts.drawers).toEqual([])
  })

  it('three equal ones share the height of a leaf, the lowest takes what rounding leaves', () => {
    // Leaf 760 − 3 − 1.5 = 755.5; (755.5 − 2·3)/3 = 249.83 → 249.5; the lowest 749.5 − 2·249.5 = 250.5.
    const plan = runsOf(withDrawers({ box: 1 }, { box: 1 }, { box: 1 }).job)
    expect(plan.fronts.drawers.map(front)).toEqual([
      [497, 249.5],
      [497, 249.5],
      [497, 250.5],
    ])
    // Width 500 − 36 − 2·12.7 = 438.6 → 438; height 249.5 − 28 = 221.5 → 221. Inside depth 400 − 32 − 18 − 2 − 6 − 6 = 336,
    // a nailer of 18 behind the top one: 318 − 12 = 306 → slide 300.
    expect(plan.fronts.drawers.map(body)).toEqual([
      [438, 221, 300],
      [438, 221, 300],
      [438, 222, 300],
    ])
    expect(plan.fronts.leaves.filter((l) => l.box.number === 1)).toEqual([])
  })

  it('a drawer box is two sides, two ends between them, and a bottom in grooves all round', () => {
    const plan = runsOf(withDrawers({ box: 1 }, { box: 1 }, { box: 1 }).job)
    const size = (id: string) => {
      const { length, width, thickness } = plan.part(`a/box-1/drawer-1/${id}`)
      return [length, width, thickness].map(inMm)
    }
    expect(size('side-left')).toEqual([300, 221, 12])
    expect(size('end-front')).toEqual([438 - 24, 221, 12])
    // 438 − 24 + 12 − 2 = 424; 300 − 24 + 12 − 2 = 286.
    expect(size('bottom')).toEqual([424, 286, 6])
    const marks = plan.parts.filter((p) => p.id.startsWith('a/box-1/drawer-2')).map((p) => p.mark)
    expect(new Set(marks)).toEqual(new Set(['L1-Y2']))
  })

  it('a front for which a height is given leaves the rest to a door, with a rail between', () => {
    const plan = runsOf(withDrawers({ box: 1, height: mm(150) }).job)
    const leaf = plan.fronts.leaves.find((l) => l.box.number === 1)!
    // 755.5 − 150 − 3 = 602.5, standing 1.5 above the box's lower edge; the drawer front ends with the face.
    expect([inMm(leaf.height), inMm(leaf.z) - inMm(leaf.box.run.z0)]).toEqual([602.5, 1.5])
    const drawer = plan.fronts.drawers[0]!
    expect(inMm(sum(drawer.z, drawer.height)) - inMm(leaf.box.run.z0)).toBe(757)
    const rail = plan.part('a/box-1/drawer-rail')
    // The gap's middle is 1.5 + 602.5 + 1.5 = 605.5 up; the rail of 18 begins 9 below it.
    expect([inMm(rail.length), inMm(rail.width), inMm(rail.placement.z) - inMm(leaf.box.run.z0)]).toEqual([
      464, 100, 596.5,
    ])
    // Between the rail (614.5) and the top panel (742): 127.5 − 3 − 3 = 121.5; front 150 − 28 = 122: the opening governs.
    expect(body(drawer)[1]).toBe(121)
  })

  it('in a tall box they stand below the door', () => {
    const plan = runsOf(
      withDrawers({ box: 1, height: mm(200) }, { box: 1, height: mm(300) }).put(boxKind, 'a', 'tall').job,
    )
    const [upper, lower] = plan.fronts.drawers
    const leaf = plan.fronts.leaves.find((l) => l.box.number === 1)!
    expect([inMm(upper!.height), inMm(lower!.height)]).toEqual([200, 300])
    expect(inMm(lower!.z) - inMm(leaf.box.run.z0)).toBe(1.5)
    expect(inMm(leaf.z)).toBe(inMm(upper!.z) + 200 + 3)
  })

  it('the slide’s own sheet replaces the generic figures, and what is generic says so', () => {
    const generic = runsOf(withDrawers({ box: 1 }).job)
    const own = runsOf(withDrawers({ box: 1 }).put(slideSheet, 'job', [mm(13), mm(4), mm(20)]).job)
    const line = (plan: typeof own) => plan.part('a/box-1/drawer-1/side-left').details.join(' ')
    expect(line(generic)).toContain('check against the slide’s sheet')
    expect(line(own)).not.toContain('check against')
    // 500 − 36 − 26 = 438; the slide's line 20 above the drawer's lower edge.
    expect(inMm(own.fronts.drawers[0]!.body.width)).toBe(438)
    expect(line(own)).toContain('screw line 20 mm')
    expect(generic.messages.map((m) => m.code)).toContain('N21')
  })

  it('under-mounted slides leave the drawer box wider, and higher off what is under it', () => {
    const plan = runsOf(withDrawers({ box: 1 }).put(slide, 'job', 'under').job)
    // 500 − 36 − 10 = 454; opening 760 − 36 = 724 − 14 − 3 = 707; front 755.5 − 28 = 727.5.
    expect(body(plan.fronts.drawers[0]!)).toEqual([454, 707, 300])
  })

  it('handles stand in the middle, two on a wide front; a pull’s holes are its spacing apart', () => {
    const holes = (job: Job) => runsOf(job).fronts.drawers[0]!.holes.map((h) => [inMm(h.fromLeft), inMm(h.fromTop)])
    // 755.5 / 2 = 377.75 → 378; 497 / 2 = 248.5 → 249.
    expect(holes(withDrawers({ box: 1 }).job)).toEqual([[249, 378]])
    expect(holes(withDrawers({ box: 1 }).put(handle, 'job', 'none').job)).toEqual([])
    expect(holes(withDrawers({ box: 1 }).put(handle, 'job', 'pull').put(pullSpacing, 'job', mm(128)).job)).toEqual([
      [185, 378],
      [313, 378],
    ])
    // One box of 1000 − 2: front 997 > 760: middles at 249.25 and 747.75.
    expect(holes(withDrawers({ box: 1 }).put(boxCount, 'a', 1).job)).toEqual([
      [249, 378],
      [748, 378],
    ])
  })

  it.each([
    [
      'heights that are more than the face',
      [
        { box: 1, height: mm(400) },
        { box: 1, height: mm(400) },
      ],
      'S9',
    ],
    ['heights that leave too little for a door', [{ box: 1, height: mm(600) }], 'S9'],
    ['a drawer lower than its slide takes', Array.from({ length: 8 }, () => ({ box: 1 })), 'S9'],
    ['a box that is not there', [{ box: 3 }], 'S25'],
  ] satisfies readonly (readonly [string, readonly DrawerRow[], string])[])('%s is a stop', (_words, rows, code) => {
    expect(codes(withDrawers(...rows).job)).toEqual([code])
  })

  it('a box that no slide goes into is a stop that names the depth it takes', () => {
    const job = withDrawers({ box: 1 }).put(boxDepth, 'a', mm(270)).job
    const stop = runsOf(job).messages.find((m) => m.code === 'S9')!
    // Free 270 − 6 − 18 = 246; 250 + 12 − 246 = 16 more.
    expect(stop.short).toContain('246 mm')
    expect(stop.todo).toContain('286 mm')
    expect(codes(withDrawers({ box: 1 }).put(boxDepth, 'a', mm(286)).job)).toEqual([])
  })

  it('in inches: three equal ones in a box of 30 in', () => {
    const job = wallOf('inch', ['alcove'])
      .put(units, 'job', 'inch')
      .put(widths, 'a', [
        { height: ZERO, back: inches(41), front: inches(41), left: ZERO },
        { height: inches(90), back: inches(41), front: inches(41), left: ZERO },
      ])
      .put(returns, 'a', [inches(16), inches(16)])
      .put(ceiling, 'a', [inches(96)])
      .put(frontStyle, 'job', 'slab')
      .put(fitLeft, 'a', 'filler')
      .put(fitRight, 'a', 'filler')
      .put(drawersWanted, 'job', 'yes')
      .put(drawers, 'a', [{ box: 1 }, { box: 1 }, { box: 1 }]).job
    const plan = runsOf(job)
    // Leaf 29 13/16; (29 13/16 − 1/4)/3 = 9.854 → 9 27/32; box 19 1/2: 19 1/2 − 1 1/2 − 1 = 17; 9 27/32 − 1 1/8 = 8 23/32 → 8 11/16.
    const [drawer] = plan.fronts.drawers
    expect([drawer!.height, drawer!.body.width, drawer!.body.height]).toEqual([
      inches(9, 27, 32),
      inches(17),
      inches(8, 11, 16),
    ])
    // Depth 16 − 1 1/4 − 3/4 − 1/16 − 1/4 = 13 11/16, inside 13 7/16, nailer 3/4: 12 11/16 − 1/2 → 12 in.
    expect(drawer!.body.length).toBe(inches(12))
  })
})

const rowsOf = fc.array(
  fc.record({
    box: fc.integer({ min: 1, max: 2 }),
    height: fc.option(fc.integer({ min: 90, max: 500 }), { nil: undefined }),
  }),
  { minLength: 1, maxLength: 8 },
)
const overlap = (a: Part, b: Part): boolean =>
  (['x', 'y', 'z'] as const).every((axis) => {
    const size = `d${axis}` as const
    const [p, q] = [a.placement, b.placement]
    return p[axis] < q[axis] + q[size] && q[axis] < p[axis] + p[size]
  })

describe('drawers put back into their boxes', () => {
  it('meet no side, bottom, top, back, nailer, rail or other drawer; fronts never meet', () => {
    fc.assert(
      fc.property(rowsOf, fc.constantFrom('base', 'tall'), fc.constantFrom('side', 'under'), (rows, kind, on) => {
        const asked = rows.map(({ box, height }) => (height === undefined ? { box } : { box, height: mm(height) }))
        const plan = runsOf(
          withDrawers(...asked)
            .put(boxKind, 'a', kind as 'base')
            .put(slide, 'job', on).job,
        )
        const drawer = plan.parts.filter((p) => /\/drawer-\d/.test(p.id))
        const groupOf = (p: Part) => p.id.split('/').slice(0, 3).join('/')
        const others = plan.parts.filter((p) => /^a\/box-\d/.test(p.id) && !/loose-shelf/.test(p.id))
        for (const part of drawer)
          for (const other of others)
            if (groupOf(part) !== groupOf(other))
              expect([part.id, other.id, overlap(part, other)]).toEqual([part.id, other.id, false])
      }),
      { numRuns: 30 },
    )
  })
})
