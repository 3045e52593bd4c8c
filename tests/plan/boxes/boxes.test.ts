import { describe, expect, it } from 'vitest'
import {
  backFit,
  boxCount,
  boxDepth,
  boxHeight,
  boxKind,
  boxTop,
  looseShelves,
  tallHeight,
} from '../../../src/job/chapters/cabinets.ts'
import { bow, ceiling, returns, widths } from '../../../src/job/chapters/wall.ts'
import type { Job } from '../../../src/job/job.ts'
import { lipHeight, longestShelfSpan } from '../../../src/plan/boxes/loose-shelf.ts'
import { type Length, millimetres as mm, nanometres, ZERO } from '../../../src/units/length.ts'
import { inMm, runsOf, wallOf } from '../run-for-test.ts'

const alcove = wallOf('metric', ['alcove'])
  .put(widths, 'a', [
    { height: ZERO, back: mm(1050), front: mm(1050), left: ZERO },
    { height: mm(2400), back: mm(1050), front: mm(1050), left: ZERO },
  ])
  .put(returns, 'a', [mm(400), mm(400)])
  .put(ceiling, 'a', [mm(2440)])
const codes = (job: Job) => runsOf(job).messages.map((m) => m.code)
const idsOf = (job: Job) => runsOf(job).parts.map((p) => p.id)

describe('boxes', () => {
  it('with a grooved back: sides full depth, back in its grooves, nailer behind it', () => {
    const plan = runsOf(alcove.put(backFit, 'job', 'grooved').job)
    // Run 1000: two boxes of 500; depth 400 − 32 − 18 − 2 − 6 = 342.
    expect(inMm(plan.part('a/box-1/side-left').width)).toBe(342)
    // 500 − 36 + 12 − 2 and 760 − 36 + 12 − 2.
    const back = plan.part('a/box-1/back')
    expect([inMm(back.length), inMm(back.width)]).toEqual([474, 734])
    // Inside 342 − 18 − 6, less the shelf's 20.
    expect(inMm(plan.part('a/box-1/loose-shelf-1').width)).toBe(298)
    expect(plan.part('a/box-1/nailer-1').coat).toBeUndefined()
  })

  it('with two rails instead of a top', () => {
    const ids = idsOf(alcove.put(boxTop, 'job', 'rails').job)
    expect(ids.filter((id) => id.startsWith('a/box-1/rail'))).toEqual(['a/box-1/rail-rear', 'a/box-1/rail-front'])
    expect(ids).not.toContain('a/box-1/top')
  })

  it('stand clear of a wall that bows towards them', () => {
    const plan = runsOf(alcove.put(bow, 'a', [ZERO, mm(9)]).job)
    expect(inMm(plan.boxes.backGap.get('a')!)).toBe(12)
    expect(inMm(plan.boxes.boxes[0]!.depth)).toBe(336)
  })

  it('reach under the ceiling when tall, with a second nailer and a filler over them', () => {
    const plan = runsOf(alcove.put(boxKind, 'a', 'tall').job)
    // 2440 − 50 − 100 (no baseboard: the plinth is the kick height).
    expect(inMm(plan.boxes.boxes[0]!.height)).toBe(2290)
    expect(plan.part('a/box-1/nailer-2').name).toBe('nailer')
    const filler = plan.part('a/top-filler')
    expect([inMm(filler.length), inMm(filler.width), inMm(filler.roughLength), inMm(filler.roughWidth)]).toEqual([
      1050, 50, 1075, 70,
    ])
    expect(plan.joints.map((j) => j.id)).toContain('a/top-filler')
  })

  it('cannot be stood up when they are too high, and the height offered can', () => {
    const high = alcove.put(boxKind, 'a', 'tall').put(tallHeight, 'a', mm(2420))
    const stop = runsOf(high.job).messages.find((m) => m.code === 'S4')!
    const offered = stop.fixes[0]!.answers[0]!.value as number
    // √(2428² − 342²) is 2403.8, but on a plinth of 100 only 2440 − 12 − 100 is left.
    expect(inMm(offered as Length)).toBe(2328)
    expect(codes(high.put(tallHeight, 'a', nanometres(offered)).job)).not.toContain('S4')
  })

  it.each([
    ['returns too shallow', alcove.put(returns, 'a', [mm(240), mm(240)]).job, 'S5'],
    // 6 behind the box, 2 and 18 for bumper and door, 400 of return: fronts flush with its edge at 394.
    ['doors proud of the breast', alcove.put(boxDepth, 'a', mm(375)).job, 'C4'],
    ['box fronts flush with the end of the return', alcove.put(boxDepth, 'a', mm(394)).job, 'C4'],
    [
      'box fronts past it, where no wall is left for filler and kick plate',
      alcove.put(boxDepth, 'a', mm(395)).job,
      'S5',
    ],
    [
      'a loose shelf beyond any lip',
      alcove.put(boxCount, 'a', 1).put(widths, 'a', [{ height: ZERO, back: mm(2400), front: mm(2400) }]).job,
      'S13',
    ],
    ['a base box higher than the room', alcove.put(boxHeight, 'job', mm(1500)).put(ceiling, 'a', [mm(1400)]).job, 'S4'],
  ])('%s', (_words, job, code) => {
    expect(codes(job)).toContain(code)
  })

  it('past the return are cleared by each depth that is named: behind it with their doors, then with their fronts', () => {
    const [stop] = runsOf(alcove.put(boxDepth, 'a', mm(450)).job).messages.filter((m) => m.code === 'S5')
    const offered = stop!.fixes.flatMap((f) => f.answers).filter((a) => a.key === 'a.boxDepth')
    const codesAt = offered.map((a) => codes(alcove.put(boxDepth, 'a', a.value as Length).job))
    expect(offered.map((a) => inMm(a.value as Length))).toEqual([374, 394])
    expect(codesAt.map((c) => [c.includes('S5'), c.includes('C4')])).toEqual([
      [false, false],
      [false, true],
    ])
  })

  it('wait for the measurements their sizes rest on', () => {
    const plan = runsOf(wallOf('metric', ['alcove']).job)
    expect(plan.part('a/box-1/side-left').waitsFor).toEqual(['a.widths', 'a.baseboard', 'a.returns', 'a.devices'])
    expect(runsOf(wallOf('metric', ['alcove']).put(boxKind, 'a', 'tall').job).part('a/box-1/back').waitsFor).toContain(
      'a.ceiling',
    )
  })
})

describe('loose shelves', () => {
  const strength = { thickness: mm(18), stiffness: 2400, load: 1915, limit: 144 }

  it('need no lip up to the span they carry plain, and one beyond it', () => {
    const span = longestShelfSpan(strength)
    expect(lipHeight({ ...strength, span, depth: mm(300) })).toBeLessThanOrEqual(mm(1))
    expect(lipHeight({ ...strength, span: mm(864), depth: mm(300) })).toBeGreaterThan(mm(25))
  })

  it('get a lip stiff enough by 5·w·L⁴/(384·E·I) ≤ L/144 (Wood Handbook, table 9-1)', () => {
    const [span, depth] = [864, 300]
    const h = inMm(lipHeight({ ...strength, span: mm(span), depth: mm(depth) }))
    const second = (depth * 18 ** 3) / 12 + (18 * h ** 3) / 12
    const load = (1915 / 1e6) * depth
    expect((5 * load * span ** 4) / (384 * 2400 * second)).toBeCloseTo(span / 144, 3)
  })

  it('appear as a part under the shelf of a wide box', () => {
    // Run 900 in one box: inside 864, over the 687 that 18 mm carries plain.
    const wide = alcove.put(widths, 'a', [{ height: ZERO, back: mm(950), front: mm(950) }])
    const plan = runsOf(wide.job)
    expect(plan.boxes.boxes).toHaveLength(1)
    const lip = plan.part('a/box-1/loose-shelf-1-lip')
    expect([lip.mark, lip.piece, lip.length]).toEqual(['M1-A1', 'lip', plan.part('a/box-1/loose-shelf-1').length])
    expect(idsOf(wide.put(looseShelves, 'job', 0).job).some((id) => id.includes('loose'))).toBe(false)
  })
})
