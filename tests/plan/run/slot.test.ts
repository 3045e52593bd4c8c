import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { edgeAt, stationsBetween } from '../../../src/geometry/edge.ts'
import {
  boxCount,
  boxKind,
  boxWidths,
  fillerWidth,
  fitLeft,
  fitRight,
  runLength,
} from '../../../src/job/chapters/cabinets.ts'
import { doors } from '../../../src/job/chapters/hardware.ts'
import {
  ceiling,
  flatEnds,
  flatLength,
  returns,
  squareLeft,
  squareRight,
  widths,
} from '../../../src/job/chapters/wall.ts'
import type { Job } from '../../../src/job/job.ts'
import { equalWidths } from '../../../src/plan/boxes/box-widths.ts'
import type { AlcoveWall } from '../../../src/plan/survey/survey.ts'
import { inches, type Length, less, millimetres as mm, nanometres, sum, ZERO } from '../../../src/units/length.ts'
import { cutStep } from '../../../src/units/round.ts'
import { inMm, runsOf, wallOf } from '../run-for-test.ts'

const sixteenths = (n: number): Length => inches(0, n, 16)
const reading = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n * 2)

/** A crooked alcove in even sixteenths, so that halves stay whole nanometres. */
const crooked = fc.record({
  width: reading(180, 400),
  rows: fc.array(fc.record({ back: reading(-4, 4), front: reading(-4, 4), left: reading(-4, 4) }), {
    minLength: 3,
    maxLength: 3,
  }),
  square: reading(-6, 6),
  depths: fc.tuple(reading(100, 150), reading(100, 150)),
})
type Crooked = typeof crooked extends fc.Arbitrary<infer T> ? T : never

const HEIGHTS = [4, 36, 84]
function jobOf(c: Crooked, seen: 'as it is' | 'in a mirror'): Job {
  const foot = c.rows[0]!
  const tableRows = HEIGHTS.map((height, i) => {
    const r = c.rows[i]!
    const back = sixteenths(c.width + r.back)
    // Lean is 0 at the lowest height; the right lean is what the widths leave.
    const left = sixteenths(i === 0 ? 0 : r.left)
    const right = less(sixteenths(c.width + foot.back), back, left)
    const lean = seen === 'as it is' ? { left } : { left: right }
    return { height: inches(height), back, front: sixteenths(c.width + r.front), ...lean }
  })
  const [a, b] = c.depths.map((d) => sixteenths(d))
  return (
    wallOf('inch', ['alcove'])
      .put(widths, 'a', tableRows)
      .put(returns, 'a', seen === 'as it is' ? [a!, b!] : [b!, a!])
      // Square taken at one side is taken at the other one in the mirror; the widths' taper gives the rest.
      .put(seen === 'as it is' ? squareLeft : squareRight, 'a', sixteenths(c.square))
      .put(ceiling, 'a', [inches(96)]).job
  )
}

describe('a run in its alcove', () => {
  it('has boxes inside both returns at every height, at the back and at the front', () => {
    fc.assert(
      fc.property(crooked, (c) => {
        const plan = runsOf(jobOf(c, 'as it is'))
        for (const box of plan.boxes.boxes) {
          const wall = box.run.wall as AlcoveWall
          const { z0, z1 } = box.run
          for (const edge of [wall.left.back, wall.left.front])
            for (const z of stationsBetween(edge, z0, z1)) expect(edgeAt(edge, z)).toBeLessThan(box.x)
          for (const edge of [wall.right.back, wall.right.front])
            for (const z of stationsBetween(edge, z0, z1))
              expect(edgeAt(edge, z)).toBeGreaterThan(sum(box.x, box.width))
        }
      }),
    )
  })

  it('fills its run: the widths add up to it', () => {
    fc.assert(
      fc.property(crooked, fc.integer({ min: 1, max: 3 }), (c, count) => {
        const job = { ...jobOf(c, 'as it is') }
        const plan = runsOf({ ...job, choices: { ...job.choices, a: { boxCount: count } } })
        const run = plan.slots.runs[0]
        fc.pre(run !== undefined && plan.boxes.boxes.length > 0)
        expect(sum(ZERO, ...plan.boxes.boxes.map((b) => b.width))).toBe(run?.width)
      }),
    )
  })

  it('is the same run in a mirror, its gaps swapped', () => {
    fc.assert(
      fc.property(crooked, (c) => {
        const [one, other] = [runsOf(jobOf(c, 'as it is')), runsOf(jobOf(c, 'in a mirror'))]
        const [run, mirrored] = [one.slots.runs[0], other.slots.runs[0]]
        fc.pre(run !== undefined && mirrored !== undefined)
        expect(mirrored!.width).toBe(run!.width)
        for (const gap of ['gapFoot', 'gapTop', 'gapMost', 'gapLeast'] as const) {
          expect(Math.abs(mirrored!.left[gap] - run!.right[gap])).toBeLessThanOrEqual(3)
          expect(Math.abs(mirrored!.right[gap] - run!.left[gap])).toBeLessThanOrEqual(3)
        }
        const sizes = (plan: typeof one) =>
          plan.parts.map((p) => `${p.name} ${p.length} ${p.width} ${p.thickness}`).sort()
        expect(sizes(other)).toEqual(sizes(one))
      }),
      { numRuns: 60 },
    )
  })

  it('comes out the same when its readings were typed in millimetres', () => {
    // 41 1/4 in = 1047.75 mm and 15 1/2 in = 393.7 mm exactly (16 CFR 500.19: 1 in = 2.54 cm).
    const typed = (width: Length, depth: Length) =>
      runsOf(
        wallOf('inch', ['alcove'])
          .put(widths, 'a', [{ height: ZERO, back: width, front: width }])
          .put(returns, 'a', [depth, depth]).job,
      ).parts
    expect(typed(mm(1047.75), mm(393.7))).toEqual(typed(inches(41, 1, 4), inches(15, 1, 2)))
  })
})

describe('box widths', () => {
  it.each([
    [1143, 2, [572, 571]],
    [1000, 3, [333, 334, 333]],
    [1001, 3, [334, 333, 334]],
    [1003, 4, [251, 251, 250, 251]],
    [1200, 1, [1200]],
  ])('%d mm in %d', (width, count, expected) => {
    expect(equalWidths({ width: mm(width), count, cut: cutStep(mm(1)) }).map(inMm)).toEqual(expected)
  })

  it('add up, whatever the run', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 9000 }), fc.integer({ min: 1, max: 24 }), (width, count) => {
        const all = equalWidths({ width: mm(width), count, cut: cutStep(mm(1)) })
        expect(sum(ZERO, ...all)).toBe(mm(width))
        expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(mm(1))
      }),
    )
  })
})

const straight = wallOf('metric', ['alcove'])
  .put(widths, 'a', [{ height: mm(0), back: mm(1050), front: mm(1050), left: ZERO }])
  .put(returns, 'a', [mm(400), mm(400)])
  .put(ceiling, 'a', [mm(2440)])
const leaning = straight.put(widths, 'a', [
  { height: mm(0), back: mm(1050), front: mm(1050), left: ZERO },
  { height: mm(900), back: mm(1050), front: mm(1050), left: mm(18) },
])
const codes = (job: Job) => runsOf(job).messages.map((m) => `${m.code} ${m.weight}`)

describe('what a run says', () => {
  it('hinged leaves get fillers; open boxes caulk where the gap stays small', () => {
    const open = straight.put(doors, 'job', 'no')
    expect(runsOf(straight.job).slots.runs[0]!.left.fit).toBe('filler')
    expect(runsOf(open.job).slots.runs[0]!.left.fit).toBe('caulk')
    expect(runsOf(leaning.put(doors, 'job', 'no').job).slots.runs[0]!.left.fit).toBe('filler')
  })

  it.each([
    ['too narrow a slot', straight.put(widths, 'a', [{ height: ZERO, back: mm(250), front: mm(250) }]).job, 'S1 stop'],
    ['a thin filler', leaning.put(fillerWidth, 'a', mm(8)).job, 'S2 stop'],
    ['a wide filler', straight.put(fillerWidth, 'a', mm(90)).job, 'C2 confirm'],
    ['a caulked gap that opens', leaning.put(fitLeft, 'a', 'caulk').job, 'S3 stop'],
    ['a leaf beside the wall', straight.put(fitRight, 'a', 'caulk').job, 'N5 note'],
    ['readings that end below the box', straight.job, 'N1 note'],
    ['widths that do not fill the run', straight.put(boxWidths, 'a', [mm(400), mm(500)]).job, 'S20 stop'],
    ['boxes too narrow', straight.put(boxCount, 'a', 6).job, 'S1 stop'],
  ])('%s', (_words, job, code) => {
    expect(codes(job)).toContain(code)
  })

  it('names the difference of widths that do not fill the run', () => {
    const said = runsOf(straight.put(boxWidths, 'a', [mm(400), mm(500)]).job).messages.find((m) => m.code === 'S20')
    expect(said?.todo).toBe('They are 100 mm too narrow: change one width by that.')
    const fitting = runsOf(straight.put(boxWidths, 'a', [mm(450), mm(550)]).job)
    expect(fitting.boxes.boxes.map((b) => inMm(b.width))).toEqual([450, 550])
  })

  it('widens the fillers by what is short, and then passes', () => {
    const thin = leaning.put(fillerWidth, 'a', mm(8)).job
    const fix = runsOf(thin).messages.find((m) => m.code === 'S2')?.fixes[0]?.answers[0]
    expect(codes(leaning.put(fillerWidth, 'a', nanometres(fix?.value as number)).job)).not.toContain('S2 stop')
  })

  it('builds nothing where no boxes are wanted', () => {
    expect(runsOf(straight.put(boxKind, 'a', 'none').job).parts).toEqual([])
  })
})

describe('a run on a flat wall', () => {
  const flat = wallOf('metric', ['flat'])
    .put(flatLength, 'a', mm(3000))
    .put(ceiling, 'a', [mm(2440)])

  it('gets gables at free ends and a fit at a wall', () => {
    const run = runsOf(flat.put(flatEnds, 'a', 'left').job).slots.runs[0]!
    expect([run.left.fit, run.right.fit]).toEqual(['filler', 'gable'])
    expect([inMm(run.startX), inMm(run.width)]).toEqual([25, 3000 - 25 - 18])
  })

  it('may not run past the end of the wall', () => {
    expect(codes(flat.put(runLength, 'a', mm(3100)).job)).toContain('S20 stop')
  })
})
