import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { lightDriver, lightMount, lightProfile, lights, lightWatts } from '../../../src/job/chapters/lights.ts'
import { skinThickness } from '../../../src/job/chapters/shelves.ts'
import { studs } from '../../../src/job/chapters/wall.ts'
import { type Job, jobSchema, withAnswer } from '../../../src/job/job.ts'
import { driverNeed, lightLoad } from '../../../src/plan/lights/light-sums.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { NOT_MEASURED } from '../../../src/things/field.ts'
import { inches, millimetres } from '../../../src/units/length.ts'

const demo = (name: string): Job =>
  jobSchema.parse(JSON.parse(readFileSync(new URL(`../../../demo/${name}/job.json`, import.meta.url), 'utf8'))) as Job
const wide = demo('alcoves-inch')
const lit = (where: 'shelves' | 'boxes' | 'both', job = wide): Job => withAnswer(job, lights, 'job', where)
const planOf = (job: Job) => makePlan(job, 'quick')

describe('strip lights', () => {
  it('are suggested nowhere', () => {
    expect(planOf(wide).lights.lights).toEqual([])
  })

  it('load and driver by hand: 2 m at 10 W/m are 20 W; a driver at 80 % is named for 25 W', () => {
    const load = lightLoad({ strips: [millimetres(1200), millimetres(800)], lightWatts: 10 })
    expect(load).toBeCloseTo(20, 9)
    expect(driverNeed({ load, driverShare: 0.8 })).toBeCloseTo(25, 9)
  })

  it.each(['alcoves-inch', 'niche-metric'])('lie inside their panel with wood all round: %s', (name) => {
    const plan = planOf(lit('both', demo(name)))
    expect(plan.lights.lights.length).toBe(plan.shelves.shelves.length + plan.boxes.boxes.length)
    for (const part of plan.parts)
      for (const cut of part.cutOuts.filter((c) => c.what.startsWith('light'))) {
        expect(cut.x, `${part.id} ${cut.what}`).toBeGreaterThanOrEqual(0)
        expect(cut.z).toBeGreaterThanOrEqual(0)
        expect(cut.x + cut.width).toBeLessThanOrEqual(part.length)
        expect(cut.z + cut.height).toBeLessThanOrEqual(part.name === 'side' ? part.length : part.width)
      }
  })

  it('cable holes keep clear of every other cut-out', () => {
    const plan = planOf(lit('both'))
    for (const part of plan.parts.filter((p) => p.name === 'back'))
      for (const hole of part.cutOuts.filter((c) => c.what.startsWith('light')))
        for (const other of part.cutOuts.filter((c) => c !== hole)) {
          const apart =
            hole.x + hole.width <= other.x ||
            other.x + other.width <= hole.x ||
            hole.z + hole.height <= other.z ||
            other.z + other.height <= hole.z
          expect(apart, `${part.id}: ${hole.what} and ${other.what}`).toBe(true)
        }
  })

  it('suggest the face of a thin skin, and stop a groove that leaves too little, naming the deepest that works', () => {
    const thin = planOf(lit('shelves'))
    expect(thin.lights.mount).toBe('surface')
    const asked = planOf(withAnswer(lit('shelves'), lightMount, 'job', 'groove'))
    const stop = asked.messages.find((m) => m.code === 'S27')
    // A skin of 1/4 in keeps 1/8 in over the groove.
    expect(stop?.todo).toContain('1/8 in')
    const shallow = withAnswer(withAnswer(lit('shelves'), lightMount, 'job', 'groove'), lightProfile, 'job', [
      inches(0, 11, 16),
      inches(0, 1, 8),
    ])
    expect(planOf(shallow).messages.map((m) => m.code)).not.toContain('S27')
    expect(planOf(withAnswer(shallow, skinThickness, 'job', inches(0, 3, 16))).messages.map((m) => m.code)).toContain(
      'S27',
    )
  })

  it('take drivers that carry them, strip and cable bought, an electrician booked', () => {
    const plan = planOf(lit('both'))
    for (const d of plan.lights.drivers) expect(d.watts * d.count * 0.8).toBeGreaterThanOrEqual(d.load)
    const bought = plan.purchases.filter((p) => p.id.startsWith('lights.'))
    expect(bought.map((p) => p.priceKnown)).toEqual(bought.map(() => 'invented'))
    expect(bought.length).toBeGreaterThanOrEqual(4)
    expect(plan.calendar.tasks.map((t) => t.id)).toEqual(expect.arrayContaining(['W10', 'D8', 'A6.1']))
    const strong = planOf(withAnswer(lit('both'), lightWatts, 'job', 40))
    expect(strong.lights.drivers.some((d) => d.count > 1 || d.watts > (plan.lights.drivers[0]?.watts ?? 0))).toBe(true)
  })

  it('keep their driver in a box, or ask where else it stays in reach', () => {
    expect(planOf(lit('shelves')).messages.map((m) => m.code)).not.toContain('C19')
    expect(planOf(withAnswer(lit('shelves'), lightDriver, 'job', 'elsewhere')).messages.map((m) => m.code)).toContain(
      'C19',
    )
  })

  it('hold what their holes rest on: studs not found hold the skins too', () => {
    const without = planOf(withAnswer<unknown>(lit('shelves'), studs as never, 'a', NOT_MEASURED))
    const skins = without.parts.filter((p) => p.bay === 'a' && p.piece === 'skin')
    expect(skins.length).toBeGreaterThan(0)
    for (const skin of skins) expect(skin.waitsFor).toContain('a.studs')
  })
})
