import { describe, expect, it } from 'vitest'
import { makePlan } from '../../src/plan/plan.ts'
import { leastWidth } from '../../src/plan/shelves/body-shape.ts'
import { widthAt } from '../../src/plan/survey/outline.ts'
import type { AlcoveWall } from '../../src/plan/survey/survey.ts'
import { type Length, millimetres as mm, ZERO } from '../../src/units/length.ts'
import { recessOf } from '../outline/recess.ts'
import { in_, inInches, inMm } from '../plan/run-for-test.ts'
import { inchAlcove, metricAlcove } from './worked-alcoves.ts'

const wallOfPlan = (plan: ReturnType<typeof makePlan>) => plan.survey.walls[0] as AlcoveWall

describe('worked example A, inch, opens outward (invented, computed by hand): figures on the way', () => {
  const plan = makePlan(inchAlcove.job, 'quick')
  const wall = wallOfPlan(plan)
  const run = plan.slots.runs[0]!
  const shelf = plan.shelves.shelves[0]!

  it.each([
    ['back width at 5 1/2', widthAt(wall, in_(5, 1, 2), ZERO), 41.238281],
    ['back width at 35 1/2', widthAt(wall, in_(35, 1, 2), ZERO), 41.003906],
    ['what rounding leaves over in the slot', (run.slot - in_(2) - run.width) as Length, 0.003906],
    ['counter: free width at its top, at the back', widthAt(wall, in_(36, 1, 2), ZERO), 40.998698],
    ['counter: free width at its top, 15 deep', widthAt(wall, in_(36, 1, 2), in_(15)), 41.119036],
    [
      'shelf: free width at 60, at the mouth',
      leastWidth({ wall, from: in_(60), to: in_(60) }, in_(15, 1, 2)),
      41.03125,
    ],
    ['shelf: board it takes, at the lower face', widthAt(wall, in_(58, 1, 2), in_(15)), 41.034022],
  ])('%s', (_, found, inches) => expect(inInches(found)).toBeCloseTo(inches, 6))

  it('each end of the shelf runs 0.17° outward', () => {
    const degrees = (offset: number) => (Math.atan(offset / shelf.depth) * 180) / Math.PI
    expect(degrees(shelf.offsetLeft)).toBeCloseTo(-0.17, 2)
    expect(degrees(shelf.offsetRight)).toBeCloseTo(0.17, 2)
  })

  it('plinth 5 1/2 on a ladder of 5 3/8; the sides are four of 30 × 12 15/16', () => {
    const sides = plan.parts.filter((p) => p.name === 'side')
    expect(sides.map((p) => [inInches(p.length), inInches(p.width)])).toEqual(Array(4).fill([30, 12.9375]))
  })

  it('the outline worked out a second way agrees, at every height and depth', () => {
    const recess = recessOf(inchAlcove.job, 'a')!
    for (const z of [4, 5.5, 20, 35.5, 36.5, 58.5, 60, 84, 90])
      for (const y of [0, 7, 15, 15.5])
        expect(recess.right(in_(z), in_(y)) - recess.left(in_(z), in_(y))).toBeCloseTo(
          widthAt(wall, in_(z), in_(y)),
          -1,
        )
  })
})

describe('worked example B, metric, narrower mouth (invented, computed by hand): figures on the way', () => {
  const plan = makePlan(metricAlcove.job, 'quick')
  const wall = wallOfPlan(plan)
  const run = plan.slots.runs[0]!
  const part = (id: string) => plan.parts.find((p) => p.id === id)!

  it.each([
    ['back width at 100', widthAt(wall, mm(100), ZERO), 1203.789474],
    ['back width at 820', widthAt(wall, mm(820), ZERO), 1200.757895],
    ['front width at 820', widthAt(wall, mm(820), mm(350)), 1196.757895],
    ['what rounding leaves over in the slot', (run.slot - mm(50) - run.width) as Length, 0.757895],
    ['shelf at 1250: free width at the back', widthAt(wall, mm(1250), ZERO), 1198.5],
    ['shelf at 1250: free width at the mouth', widthAt(wall, mm(1250), mm(350)), 1194.5],
    ['shelf at 1250: free width 338 deep', widthAt(wall, mm(1250), mm(338)), 1194.637143],
    ['counter at 845: free width at the back', widthAt(wall, mm(845), ZERO), 1200.652632],
    ['counter at 845: free width at the mouth', widthAt(wall, mm(845), mm(350)), 1196.652632],
  ])('%s', (_, found, millimetres) => expect(inMm(found)).toBeCloseTo(millimetres, 5))

  it('the slot is 7 mm less than the back width of 1200.76, which measuring the back alone would never show', () => {
    expect(inMm((widthAt(wall, mm(820), ZERO) - run.slot) as Length)).toBeCloseTo(7, 5)
  })

  it('fillers: left 26 at the foot and 24 at the top, cut 47; right 29 and 27, cut 50', () => {
    expect(
      [part('a/filler-left'), part('a/filler-right')].map((p) => [inMm(p.width), p.taper, inMm(p.roughWidth)]),
    ).toEqual([
      [26, 'top 24', 47],
      [29, 'top 27', 50],
    ])
  })

  it('a square-ended board of 1191 would have 1191.74 to stand in: no play left', () => {
    const recess = recessOf(metricAlcove.job, 'a')!
    const [z, d] = [mm(1250), mm(338)]
    const left = Math.max(recess.left(z, 0), recess.left(z, d))
    const right = Math.min(recess.right(z, 0), recess.right(z, d))
    expect((right - left) / 1e6).toBeCloseTo(1191.74, 2)
  })

  it('the outline worked out a second way agrees, at every height and depth', () => {
    const recess = recessOf(metricAlcove.job, 'a')!
    for (const z of [50, 100, 500, 820, 1210, 1250, 2000, 2200])
      for (const y of [0, 100, 338, 350])
        expect(recess.left(mm(z), mm(y)) + widthAt(wall, mm(z), mm(y))).toBeCloseTo(recess.right(mm(z), mm(y)), -1)
  })
})
