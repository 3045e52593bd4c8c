import { describe, expect, it } from 'vitest'
import { baseboardFate, boxDepth, kick, kickSet } from '../../../src/job/chapters/cabinets.ts'
import { baseboard, ceiling, flatLength, floor, returns, widths } from '../../../src/job/chapters/wall.ts'
import type { Job } from '../../../src/job/job.ts'
import { sectionsAt } from '../../../src/plan/run/run-sections.ts'
import { inches, millimetres as mm, ZERO } from '../../../src/units/length.ts'
import { inMm, runsOf, wallOf } from '../run-for-test.ts'

const alcove = wallOf('metric', ['alcove'])
  .put(widths, 'a', [{ height: ZERO, back: mm(1050), front: mm(1050), left: ZERO }])
  .put(returns, 'a', [mm(400), mm(400)])
  .put(ceiling, 'a', [mm(2440)])
  .put(baseboard, 'a', [mm(120), mm(15)])
const codes = (job: Job) => runsOf(job).messages.map((m) => m.code)

describe('levels', () => {
  it('lift the boxes over a kept baseboard (common practice, no source)', () => {
    expect(inMm(runsOf(alcove.job).slots.plinth)).toBe(126)
    expect(inMm(runsOf(alcove.put(baseboardFate, 'job', 'cut').job).slots.plinth)).toBe(100)
  })

  it('suggest to cut back a high baseboard', () => {
    const high = alcove.put(baseboard, 'a', [mm(180), mm(15)])
    expect(inMm(runsOf(high.job).slots.plinth)).toBe(100)
    expect(codes(high.put(baseboardFate, 'job', 'keep').job)).not.toContain('C3')
    expect(codes(high.put(baseboardFate, 'job', 'keep').put(baseboard, 'a', [mm(210), mm(15)]).job)).toContain('C3')
  })

  it('share the plinth that the highest baseboard of the wall needs', () => {
    const two = wallOf('metric', ['alcove', 'breast', 'alcove'])
      .put(baseboard, 'a', [mm(120), mm(15)])
      .put(baseboard, 'c', [mm(134), mm(15)])
    expect(runsOf(two.job).slots.runs.map((r) => inMm(r.z0))).toEqual([140, 140])
  })

  it('say when the boxes start higher than was asked', () => {
    const plan = runsOf(alcove.put(kick, 'job', mm(80)).job)
    expect(inMm(plan.slots.plinth)).toBe(126)
    expect(plan.messages.map((m) => m.code)).toContain('N16')
  })

  it.each([
    [
      'a floor that falls far',
      alcove.put(floor, 'a', [
        { x: ZERO, drop: ZERO },
        { x: mm(1050), drop: mm(30) },
      ]).job,
      'N6',
    ],
    ['no depth left for the plinth', alcove.put(kickSet, 'job', mm(150)).put(boxDepth, 'a', mm(200)).job, 'S20'],
  ])('%s', (_words, job, code) => {
    expect(codes(job)).toContain(code)
  })

  it('leave out plinth and kick plate where the boxes stand on the floor', () => {
    const flush = alcove.put(baseboardFate, 'job', 'remove').put(kick, 'job', ZERO)
    const ids = runsOf(flush.job).parts.map((p) => p.id)
    expect(ids.some((id) => id.includes('plinth') || id.includes('kick'))).toBe(false)
  })

  it('leave the kick plate open at the floor and caulk its ends', () => {
    const joints = runsOf(alcove.job).joints.filter((j) => j.id.startsWith('a/kick'))
    expect(joints.map((j) => [j.id, j.leftOpen ?? false])).toEqual([
      ['a/kick-left', false],
      ['a/kick-right', false],
      ['a/kick-floor', true],
    ])
  })
})

describe('a run longer than a sheet', () => {
  it('has frames and kick plates jointed at box joints, each within the sheet', () => {
    const plan = runsOf(
      wallOf('inch', ['flat'])
        .put(flatLength, 'a', inches(200))
        .put(ceiling, 'a', [inches(96)]).job,
    )
    const joints = new Set(plan.boxes.boxes.map((b) => b.x as number))
    const rails = plan.parts.filter((p) => p.id.endsWith('rail-front'))
    expect(rails.length).toBeGreaterThan(2)
    for (const rail of rails) expect(rail.length).toBeLessThanOrEqual(inches(95, 1, 2))
    const kicks = plan.parts.filter((p) => p.name === 'kick plate')
    for (const piece of kicks.slice(1)) expect(joints.has(piece.placement.x as number)).toBe(true)
  })

  it('stays one section where no joint helps', () => {
    expect(sectionsAt({ from: ZERO, to: mm(900) }, [mm(450)], mm(1000))).toHaveLength(1)
    expect(sectionsAt({ from: ZERO, to: mm(1200) }, [], mm(1000))).toHaveLength(1)
    expect(sectionsAt({ from: ZERO, to: mm(1200) }, [mm(400), mm(800)], mm(1000))).toEqual([
      { from: ZERO, to: mm(800) },
      { from: mm(800), to: mm(1200) },
    ])
  })
})
