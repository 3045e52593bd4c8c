import { describe, expect, it } from 'vitest'
import { shelfCount, shelfHeights, shelfLoad, shelfThickness } from '../../src/job/chapters/shelves.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { leastWidth } from '../../src/plan/shelves/body-shape.ts'
import { withdrawal } from '../../src/plan/shelves/shelf-strength.ts'
import type { AlcoveWall } from '../../src/plan/survey/survey.ts'
import { ZERO } from '../../src/units/length.ts'
import { in_, inInches, inMm } from '../plan/run-for-test.ts'
import { inchAlcove, metricAlcove } from './worked-alcoves.ts'

const partIn = (plan: ReturnType<typeof makePlan>, id: string) => plan.parts.find((p) => p.id === id)!

describe('worked example A, inch, opens outward (invented, computed by hand)', () => {
  const plan = makePlan(inchAlcove.job, 'quick')
  const shelf = plan.shelves.shelves[0]!

  it('free width at 60: 40.9375 at the back, 41.028226 at 15 deep', () => {
    const at = { wall: plan.survey.walls[0] as AlcoveWall, from: in_(60), to: in_(60) }
    expect(inInches(leastWidth(at, ZERO))).toBeCloseTo(40.9375, 6)
    expect(inInches(leastWidth(at, in_(15)))).toBeCloseTo(41.028226, 6)
  })

  it('shelf 15 deep: back 40 13/16, front 40 7/8, each end 0.045363 outward', () => {
    expect([shelf.depth, shelf.backLength, shelf.frontLength].map(inInches)).toEqual([15, 40.8125, 40.875])
    expect(inInches(shelf.offsetLeft)).toBeCloseTo(-0.045363, 6)
    expect(inInches(shelf.offsetRight)).toBeCloseTo(0.045363, 6)
  })

  it('skin rough 42 1/16 × 14 1/2, front edge 40 7/8 × 1 1/2', () => {
    const skin = partIn(plan, 'a/shelf-1/skin')
    expect(inInches(skin.roughLength)).toBe(42.0625)
    expect([skin.length, skin.width, skin.roughWidth].map(inInches)).toEqual([40.875, 14.25, 14.5])
    expect(skin.taper).toBe('back 40 13/16')
    expect(skin.quantity).toBe(2)
    const edge = partIn(plan, 'a/shelf-1/edge')
    expect([edge.length, edge.width, edge.thickness].map(inInches)).toEqual([40.875, 1.5, 0.75])
  })

  it('cleats 15/16 × 1 1/2, top at 59 23/32; sides 14 1/8, back 37 9/16; two ribs 12 5/8', () => {
    expect(inInches(shelf.cleatTop)).toBe(59.71875)
    const [back, left] = [partIn(plan, 'a/shelf-1/cleat-back'), partIn(plan, 'a/shelf-1/cleat-left')]
    expect([back.length, back.width, back.thickness].map(inInches)).toEqual([37.5625, 0.9375, 1.5])
    expect(inInches(left.length)).toBe(14.125)
    const rib = partIn(plan, 'a/shelf-1/rib')
    expect([rib.quantity, inInches(rib.length), inInches(rib.width)]).toEqual([2, 12.625, 1])
  })

  it('marks: the shelf L-H1 in pieces, cleats L-C1 to L-C3 (one bay: M)', () => {
    const marks = plan.parts.filter((p) => p.id.startsWith('a/shelf-1/')).map((p) => [p.mark, p.piece])
    expect(marks).toEqual([
      ['M-H1', 'skin'],
      ['M-H1', 'edge'],
      ['M-H1', 'rib'],
      ['M-C1', undefined],
      ['M-C2', undefined],
      ['M-C3', undefined],
    ])
  })

  it('sags 2.97 mm for good with ornaments: passes 1/8 in', () => {
    expect(inMm(shelf.sag)).toBeCloseTo(2.97, 2)
    expect(plan.messages.filter((m) => m.code === 'S13')).toEqual([])
  })

  it.each([
    [in_(1, 1, 2), 6.46, 'stop'],
    [in_(2), 3.23, 'stop'],
    [in_(2, 1, 2), 1.91, 'passes'],
  ])('with books at %d nm thick: %d mm, %s', (thickness, sag, verdict) => {
    const job = inchAlcove.put(shelfLoad, 'job', 'books').put(shelfThickness, 'a', thickness).job
    const books = makePlan(job, 'quick')
    expect(inMm(books.shelves.shelves[0]!.sag)).toBeCloseTo(sag, 2)
    const stops = books.messages.filter((m) => m.code === 'S13')
    expect(stops.length).toBe(verdict === 'stop' ? 1 : 0)
    for (const stop of stops) expect(stop.fixes[0]?.answers[0]?.value).toBe(in_(2, 1, 2))
  })

  it('suggests the thinnest that carries: 2 1/2 for books, 1 1/2 for ornaments', () => {
    const suggested = (load: 'books' | 'ornaments') =>
      makePlan(inchAlcove.put(shelfLoad, 'job', load).job, 'quick').used.get('a.shelfThickness')?.suggested
    expect(suggested('books')).toBe(in_(2, 1, 2))
    expect(suggested('ornaments')).toBe(in_(1, 1, 2))
  })

  it('counter 15 deep, back 40 13/16, front 40 15/16, rough 42 1/8 × 15 1/4, on the boxes at 35 1/2', () => {
    const counter = partIn(plan, 'a/counter-1')
    expect([counter.width, counter.length, counter.roughLength, counter.roughWidth].map(inInches)).toEqual([
      15, 40.9375, 42.125, 15.25,
    ])
    expect(counter.taper).toBe('back 40 13/16')
    expect(inInches(counter.placement.z)).toBe(35.5)
  })

  it('fillers 1 1/8 at the foot, 1 1/16 at the top, cut 1 15/16 × 31', () => {
    for (const side of ['left', 'right']) {
      const filler = partIn(plan, `a/filler-${side}`)
      expect([filler.width, filler.roughWidth, filler.roughLength].map(inInches)).toEqual([1.125, 1.9375, 31])
      expect(filler.taper).toBe('top 1 1/16')
    }
  })
})

describe('worked example B, metric, narrower mouth, both returns slant the same way (invented, computed by hand)', () => {
  const plan = makePlan(metricAlcove.job, 'quick')
  const shelf = plan.shelves.shelves[0]!

  it('shelf 338 deep with parallel ends: 1191 back and front, both ends moved 4.829', () => {
    expect([shelf.depth, shelf.backLength, shelf.frontLength].map(inMm)).toEqual([338, 1191, 1191])
    expect(inMm(shelf.offsetLeft)).toBeCloseTo(4.829, 3)
    expect(shelf.offsetRight).toBe(shelf.offsetLeft)
    expect(inMm(partIn(plan, 'a/shelf-1/skin').roughLength)).toBe(1221)
  })

  it('leaves 3.75 at the back corner and 1.819 at the front: caulk', () => {
    const joint = plan.joints.joints.find((j) => j.id === 'a/shelf-1/left-over')!
    expect(inMm(joint.gap1)).toBeCloseTo(1.819, 3)
    expect(inMm(joint.gap2)).toBe(3.75)
    expect(plan.messages.filter((m) => m.code === 'C6' || m.code === 'S11')).toEqual([])
  })

  it('the counter goes in tipped and keeps the walls’ shape: back 1197, front 1193', () => {
    const counter = partIn(plan, 'a/counter-1')
    expect(inMm(counter.length)).toBe(1197)
    expect(counter.taper).toBe('front 1193')
  })
})

describe('trapezium, pitch (geometry; worked by hand)', () => {
  it('mantel line 48 to 84 in four shelves: 12 apart', () => {
    const heights = [in_(48), in_(60), in_(72), in_(84)]
    const job = inchAlcove.put(shelfCount, 'a', 4).put(shelfHeights, 'a', heights).job
    const z = makePlan(job, 'quick').shelves.shelves.map((s) => inInches(s.z))
    expect(z).toEqual([48, 60, 72, 84])
  })
})

/** Building Design and Construction Handbook eq. 6.37 (NDS): 2850 · G² · D lb per inch. */
describe('withdrawal of wood screws', () => {
  it.each([
    ['#10, G 0.45 (prints 109)', 0.45, 0.19, 1, 109.65375],
    ['#8, spruce 0.41', 0.41, 0.164, 1, 78.56994],
    ['#8, southern pine 0.59', 0.59, 0.164, 1, 162.70194],
    ['#8, Douglas-fir 0.51', 0.51, 0.164, 1, 121.57074],
    ['#8, 1 1/2 in in spruce', 0.41, 0.164, 1.5, 117.8549],
  ])('%s', (_screw, gravity, diameter, inWood, pounds) => {
    expect(withdrawal({ constant: 2850, gravity, diameter, inWood })).toBeCloseTo(pounds, 4)
  })
})
