import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { boxKind, boxTop } from '../../../src/job/chapters/cabinets.ts'
import { cableTo } from '../../../src/job/chapters/firebox.ts'
import { type Job, jobSchema, withAnswer } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { NM_PER_INCH } from '../../../src/units/length.ts'

const demo = jobSchema.parse(
  JSON.parse(readFileSync(new URL('../../../demo/alcoves-inch/job.json', import.meta.url), 'utf8')),
) as Job
const to = (side: 'left' | 'right') => withAnswer(demo, cableTo, 'b', side)
const holed = (job: Job) =>
  makePlan(job, 'quick').parts.filter((p) => p.bay !== 'b' && p.cutOuts.some((c) => c.what.includes('cable')))

describe('the way of a cable into a box beside the breast', () => {
  it.each([
    ['left', 'a'],
    ['right', 'c'],
  ] as const)('%s: one hole, straight down through counter and box top, an inch of wood all round', (side, bay) => {
    const parts = holed(to(side))
    expect(parts.map((p) => p.bay)).toEqual([bay, bay])
    const centres = parts.map((p) => {
      const hole = p.cutOuts.find((c) => c.what.includes('cable'))!
      const inches = (v: number) => v / NM_PER_INCH
      expect(inches(hole.x)).toBeGreaterThanOrEqual(1)
      expect(inches(p.placement.dx - hole.x - hole.width)).toBeGreaterThanOrEqual(1)
      expect(inches(p.placement.dy - hole.z - hole.height)).toBeGreaterThanOrEqual(1)
      return [inches(p.placement.x + hole.x), inches(p.placement.y + hole.z)]
    })
    // Each part rounds its own set-out to 1/16 in: they meet within it.
    expect(Math.abs(centres[0]![0]! - centres[1]![0]!)).toBeLessThanOrEqual(1 / 16)
    expect(Math.abs(centres[0]![1]! - centres[1]![1]!)).toBeLessThanOrEqual(1 / 16)
  })

  it('stays clear of the nailer, of the rear rail and of the box side', () => {
    for (const top of ['full', 'rails'] as const) {
      const job = withAnswer(to('left'), boxTop, 'job', top)
      const plan = makePlan(job, 'quick')
      const [part] = plan.parts.filter((p) => p.bay === 'a' && p.cutOuts.some((c) => c.what.includes('cable')))
      const hole = part!.cutOuts.find((c) => c.what.includes('cable'))!
      const rear = part!.placement.y + hole.z
      const behind = plan.parts.filter((p) => p.bay === 'a' && /box-\d+\/(nailer|rail-rear)/.test(p.id))
      expect(behind.length).toBeGreaterThan(0)
      for (const p of behind) expect(rear - p.placement.y - p.placement.dy).toBeGreaterThan(0.9 * NM_PER_INCH)
    }
  })

  it('no hole unasked; asks where no box stands', () => {
    expect(holed(demo)).toEqual([])
    const none = makePlan(withAnswer(to('left'), boxKind, 'a', 'none'), 'quick')
    expect(none.messages.filter((m) => m.code === 'C8').map((m) => m.about)).toEqual(['b.cableTo'])
  })
})
