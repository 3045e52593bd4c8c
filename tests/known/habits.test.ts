import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { hinge } from '../../src/job/chapters/hardware.ts'
import { type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { makePlan } from '../../src/plan/plan.ts'
import type { Length } from '../../src/units/length.ts'
import { inInches } from '../plan/run-for-test.ts'

// Habits of the trade, common practice, no source: with the settings a job begins with, the plan shows each of them.
const job = jobSchema.parse(
  JSON.parse(readFileSync(new URL('../../demo/alcoves-inch/job.json', import.meta.url), 'utf8')),
) as Job
const plan = makePlan(job, 'quick')
const { tasks } = plan.calendar
const starts = (id: string): number => tasks.find((t) => t.id.startsWith(id))!.startsAt
const ends = (id: string): number => tasks.filter((t) => t.id.startsWith(id)).at(-1)!.endsAt
const shelves = (bay: string) => plan.shelves.shelves.filter((s) => s.bay.id === bay)
const bought = plan.purchases.map((p) => p.item).join('\n')

describe('habits of the trade (common practice, no source)', () => {
  it('boxes stand above a kept baseboard', () => {
    for (const run of plan.slots.runs) expect(run.z0).toBeGreaterThan(run.wall.baseboard.height)
  })

  it('a shelf stops 1/2 in behind its recess', () => {
    const returns: Readonly<Record<string, number>> = { a: 14.625, c: 14.75 }
    for (const s of plan.shelves.shelves) expect(inInches(s.depth)).toBe(returns[s.bay.id]! - 0.5)
  })

  it('the lowest shelf is 1 to 2 in above the mantel top, and one between two is half-way to the cut step', () => {
    const top = Math.max(
      ...plan.parts.filter((p) => p.id === 'b/mantel/top').map((p) => p.placement.z + p.placement.dz),
    )
    for (const bay of ['a', 'c']) {
      const [first, between, last] = shelves(bay).map((s) => s.z)
      expect(inInches((first! - top) as Length)).toBe(1.5)
      expect(Math.abs(inInches((2 * between! - first! - last!) as Length))).toBeLessThanOrEqual(1 / 16)
    }
  })

  it('a shelf is two skins over a void, its cleats thinner than the void by the slip', () => {
    for (const s of plan.shelves.shelves) {
      const part = (piece: string) => plan.parts.find((p) => p.id === `${s.id}/${piece}`)!
      expect(part('skin').quantity).toBe(2)
      const hollow = s.thickness - 2 * part('skin').thickness
      expect(inInches((hollow - part('cleat-back').width) as Length)).toBeCloseTo(1 / 16, 9)
    }
  })

  it('cleats get two bonds, tight to the wall, and screws', () => {
    for (const item of ['instant adhesive', 'construction adhesive', 'wall screw']) expect(bought).toContain(item)
    expect(JSON.stringify(tasks.find((t) => t.id === 'F9'))).toContain('tight to the wall')
  })

  it('shelves and kick plates are left long, and trimmed after the boxes stand', () => {
    const left = plan.parts.filter(
      (p) => p.name === 'kick plate' || p.piece === 'skin' || p.name === 'shelf front edge',
    )
    expect(left.length).toBeGreaterThan(0)
    for (const p of left) expect(p.roughLength, p.id).toBeGreaterThan(p.length)
    expect(Math.min(starts('F7'), starts('F10'))).toBeGreaterThanOrEqual(ends('F4'))
  })

  it('masonry is painted before a box is fixed; backs are cut before that too', () => {
    expect(ends('B6')).toBeLessThanOrEqual(starts('F4'))
    expect(ends('F3')).toBeLessThanOrEqual(starts('F4'))
  })

  it('tape stands back 1/16 in, caulk goes on after it in two passes and more where a gap is 1/8 in', () => {
    expect(inInches(plan.figures.length('tape.back'))).toBe(1 / 16)
    expect(ends('D2')).toBeLessThanOrEqual(starts('D3'))
    const wide = plan.joints.joints.filter((j) => Math.max(j.gap1, j.gap2) >= 3_175_000 && j.kind !== 'open')
    expect(wide.length).toBeGreaterThan(0)
    for (const j of wide) expect(j.passes, j.id).toBeGreaterThanOrEqual(2)
  })

  it('plain masking tape where caulk seals its edge, sharp-line tape where paint alone makes the line', () => {
    expect(bought).toMatch(/masking tape, plain/)
    expect(bought).toMatch(/sharp-line tape/)
  })

  it('soft-close hinges cost about one unit of currency more each', () => {
    const each = (id: 'soft-close' | 'plain') =>
      makePlan(withAnswer(job, hinge, 'job', id), 'quick').purchases.find((p) => p.item.startsWith('cup hinge'))!
    const [soft, plain] = [each('soft-close'), each('plain')]
    expect(soft.need).toBe(plain.need)
    const more = (soft.priceEach / soft.packSize - plain.priceEach / plain.packSize) / 100
    expect(more).toBeGreaterThanOrEqual(0.5)
    expect(more).toBeLessThanOrEqual(2)
  })

  it('single-component water-borne polyurethane is enough where no food, water or chemicals come', () => {
    expect(plan.used.get('job.builtInSystem')?.suggested).toBe('water-polyurethane')
  })

  it('a cable hole goes through the mantel top where a screen hangs above it', () => {
    expect(plan.parts.find((p) => p.id === 'b/mantel/top')!.cutOuts.length).toBe(1)
  })

  it('every edge is sanded and sealed before it is primed and sprayed', () => {
    expect(ends('W7.1')).toBeLessThanOrEqual(starts('W7.3'))
    expect(ends('W7')).toBeLessThanOrEqual(starts('W8'))
    expect(tasks.find((t) => t.id === 'W7.1')!.title).toMatch(/Sand every edge, then .*sealer/)
  })

  it('sprayed parts are cut from double-refined MDF, by name', () => {
    expect(bought).toMatch(/MDF 3\/4 in, double-refined/)
  })

  it('outlets that stay are set out where their backs are cut', () => {
    for (const bay of ['a', 'c'])
      expect(plan.parts.filter((p) => p.bay === bay).flatMap((p) => p.cutOuts.map((c) => c.what))).toContain('outlet')
  })
})
