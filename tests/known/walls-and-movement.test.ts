import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { carcassThickness, fitLeft } from '../../src/job/chapters/cabinets.ts'
import { floor, widths } from '../../src/job/chapters/wall.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { followingBody } from '../../src/plan/shelves/body-shape.ts'
import type { AlcoveWall } from '../../src/plan/survey/survey.ts'
import { inches, type Length, millimetres as mm, ZERO } from '../../src/units/length.ts'
import { cutStep } from '../../src/units/round.ts'
import { in_, inInches, inMm } from '../plan/run-for-test.ts'
import { inchAlcove, metricAlcove } from './worked-alcoves.ts'

const planOf = (job: typeof inchAlcove) => makePlan(job.job, 'quick')
const run = (job: typeof inchAlcove) => planOf(job).slots.runs[0]!

describe('walls as found (NAHB Residential Construction Performance Guidelines, 3/8 in out of plumb in 32 in, as quoted by hanaleikauaivacation.com)', () => {
  /** Both returns at that limit, leaning away from one another over the 30 in of a box: 2 × 30 × (3/8) / 32. */
  const lean = in_(30 * (3 / 8) * (1 / 32))
  const leaning = inchAlcove.put(widths, 'a', [
    { height: in_(5, 1, 2), back: in_(41), front: in_(41), left: ZERO, right: ZERO },
    {
      height: in_(35, 1, 2),
      back: (in_(41) + 2 * lean) as Length,
      front: (in_(41) + 2 * lean) as Length,
      left: -lean as Length,
      right: -lean as Length,
    },
  ])

  it('the opening differs by 0.703125 in over a box: more than a caulked gap closes, less than a filler takes', () => {
    expect(inInches(lean)).toBeCloseTo(0.3515625, 7)
    const { left, right } = run(leaning)
    expect(inInches((left.gapTop + right.gapTop - left.gapFoot - right.gapFoot) as Length)).toBeCloseTo(0.703125, 6)
    expect(planOf(leaning).messages.filter((m) => m.code === 'S2' || m.code === 'S3')).toEqual([])
    const caulked = planOf(leaning.put(fitLeft, 'a', 'caulk')).messages.map((m) => m.code)
    expect(caulked).toContain('S3')
  })

  it('a floor that falls 4 mm a metre (UK warranty notes 2017) drops 4.1656 mm under a run of 1041.4 mm', () => {
    const drop = mm(4.1656)
    const falling = metricAlcove.put(floor, 'a', [
      { x: ZERO, drop: ZERO },
      { x: mm(1041.4), drop },
    ])
    const plate = planOf(falling).parts.find((p) => p.name === 'kick plate')!
    const taper = Number(plate.taper!.replace('left ', ''))
    expect(inMm(plate.width) - taper).toBe(4)
    expect(inMm(plate.roughWidth)).toBeGreaterThanOrEqual(100 + 4.1656)
  })
})

it('a scribe is at most 1 1/2 in wide (Architectural Woodwork Standards, 1st edition 2009, 1.2.20.1.4, p. 253): the usual filler is under it', () => {
  expect(inInches(figuresIn('inch').length('filler.nominal'))).toBeLessThanOrEqual(1.5)
  expect(inMm(figuresIn('metric').length('filler.nominal'))).toBeLessThanOrEqual(38.1)
})

describe('MDF moves 0.05 % in its plane for each 1 % of moisture (European MDF association, mdf-info.eu)', () => {
  const PER_PERCENT = 0.0005
  it('600 mm over 5 %: 1.5 mm, as the page says', () => expect(600 * PER_PERCENT * 5).toBeCloseTo(1.5, 9))

  it('a run of 39 in from 8 to 11 % grows 0.0585 in: the gaps of the worked example take more than that', () => {
    const growth = inInches(in_(39)) * PER_PERCENT * 3
    expect(growth).toBeCloseTo(0.0585, 6)
    const { left, right, width } = run(inchAlcove)
    expect(inInches(width)).toBe(39)
    expect(inInches((left.gapLeast + right.gapLeast) as Length)).toBeGreaterThan(growth)
    expect(inInches(figuresIn('inch').length('caulk.fit'))).toBeGreaterThan(growth)
  })

  it('even at the 0.33 % of ANSI A208.2 (0.1287 in) one caulked gap of 1/8 in is nearly used up: a filler is left at one end at least', () => {
    const ceiling = 39 * 0.0033
    expect(ceiling).toBeCloseTo(0.1287, 6)
    expect([run(inchAlcove).left.fit, run(inchAlcove).right.fit]).toContain('filler')
  })

  it('a loose door panel keeps half its own movement and 1/32 in each side (computed): the play does, for the widest leaf', () => {
    const figures = figuresIn('inch')
    const widest =
      figures.length('door.leaf-most') - 2 * figures.length('door.stile') + 2 * figures.length('door.tongue')
    const needed = (widest * PER_PERCENT * 3) / 2 + inches(0, 1, 32)
    expect(figures.length('door.panel-play')).toBeGreaterThanOrEqual(needed)
  })
})

it('a 3/4 sheet that measures 0.703 in changes the inside of a box by 2 × 0.047 = 0.094 in (US PS 1-19 tolerances; worked by hand)', () => {
  const inside = (t: Length) => planOf(inchAlcove.put(carcassThickness, 'job', t)).boxes.boxes[0]!
  const [thin, nominal] = [inside(in_(0.703)), inside(in_(0.75))]
  const exact = (box: typeof thin, t: number) => inInches(box.width) - 2 * t
  expect(exact(thin, 0.703) - exact(nominal, 0.75)).toBeCloseTo(0.094, 9)
  expect(inInches(thin.insideWidth) - inInches(nominal.insideWidth)).toBe(1 / 16)
})

describe('a trapezium shelf, back 40.9375, front 41.03125, 15 deep (geometry; worked by hand)', () => {
  /** Returns that open by 0.09375 over 15 in, evenly: edges half an inch out of the way so that no rounding enters. */
  const wallWith = (left: number, right: number): AlcoveWall => {
    const base = planOf(inchAlcove).survey.walls[0] as AlcoveWall
    const edge = (v: number) => [{ at: ZERO, v: in_(v) }]
    return {
      ...base,
      depth: in_(15),
      frontDepth: in_(15),
      left: { back: edge(0), front: edge(-left) },
      right: { back: edge(40.9375), front: edge(40.9375 + right) },
    }
  }
  const body = (wall: AlcoveWall) =>
    followingBody({ wall, from: in_(58), to: in_(60), depth: in_(15), play: ZERO, cut: cutStep(in_(0, 1, 32)) })
  const degrees = (offset: Length) => (Math.atan(offset / in_(15)) * 180) / Math.PI

  it('split evenly, each end leans 0.179049°', () => {
    const even = body(wallWith(0.046875, 0.046875))
    expect([even.back, even.front].map(inInches)).toEqual([40.9375, 41.03125])
    expect(degrees(even.offsetRight)).toBeCloseTo(0.179049, 6)
    expect(degrees(even.offsetLeft)).toBeCloseTo(-0.179049, 6)
  })
  it('all at one end, that end leans 0.358094° and the other is square', () => {
    const oneSided = body(wallWith(0, 0.09375))
    expect(degrees(oneSided.offsetRight)).toBeCloseTo(0.358094, 6)
    expect(oneSided.offsetLeft).toBe(0)
  })
})
