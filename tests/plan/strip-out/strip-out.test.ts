import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { houseYear } from '../../../src/job/chapters/job.ts'
import { leadEarlier, leadFirm, type RemovalRow, removals } from '../../../src/job/chapters/removal.ts'
import { type Job, jobSchema, withAnswer } from '../../../src/job/job.ts'
import { OLD_FIXINGS, REMOVALS } from '../../../src/kinds/removal/list.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { disturbedArea } from '../../../src/plan/strip-out/old-paint.ts'
import { coatedSurface, removedMass, solidVolume } from '../../../src/plan/strip-out/removal-sums.ts'
import { looseVolume, wasteBags } from '../../../src/plan/strip-out/waste.ts'
import { SQUARE_METRES_PER_SQUARE_FOOT, squareMetres } from '../../../src/units/area.ts'
import { inches, millimetres } from '../../../src/units/length.ts'
import { kilograms } from '../../../src/units/mass.ts'
import { litres } from '../../../src/units/volume.ts'

const demo = (name: string): Job =>
  jobSchema.parse(JSON.parse(readFileSync(new URL(`../../../demo/${name}/job.json`, import.meta.url), 'utf8'))) as Job
const wide = demo('alcoves-inch')
const mantel: RemovalRow = {
  what: 'mantel',
  length: inches(60),
  height: inches(8),
  depth: inches(7),
  fixing: 'nailed',
  coat: 'painted',
  holds: 'nothing',
}
const shelf: RemovalRow = { ...mantel, what: 'shelf', length: inches(36), height: inches(1), depth: inches(8) }
const off = (rows: readonly RemovalRow[], year = 1950, base = wide): Job =>
  withAnswer(withAnswer(base, houseYear, 'job', year), removals, 'b', rows)
const codes = (job: Job) => makePlan(job, 'quick').messages.map((m) => m.code)

describe('sums of what comes off (worked by hand)', () => {
  it('a painted shelf of 36 × 1 × 8 in shows 36 + 2·8·37 = 628 sq in of paint', () => {
    const area = coatedSurface({ ...shelf, sides: 1, quantity: 1 })
    expect(area / SQUARE_METRES_PER_SQUARE_FOOT).toBeCloseTo(628 / 144, 9)
  })
  it('a solid softwood board of 1000 × 100 × 20 mm is 2 l and 0.96 kg at 480 kg/m³', () => {
    const solid = solidVolume({
      length: millimetres(1000),
      height: millimetres(100),
      depth: millimetres(20),
      solidShare: 1,
    })
    expect(solid).toBeCloseTo(2, 9)
    expect(removedMass({ solidVolume: solid, density: 480 })).toBeCloseTo(0.96, 9)
  })
  it('bags go by room or by mass: 100 l loose in bags of 60 l are 2, 70 kg at 20 kg a bag are 4', () => {
    const room = looseVolume({ solid: litres(50), bulking: 2 })
    expect(wasteBags({ volume: room, mass: kilograms(30), bag: 60, bagMass: 20 })).toBe(2)
    expect(wasteBags({ volume: room, mass: kilograms(70), bag: 60, bagMass: 20 })).toBe(4)
    expect(wasteBags({ volume: litres(0), mass: kilograms(0), bag: 60, bagMass: 20 })).toBe(0)
  })
  it('one room within 30 days: baseboard 2 × 2.625 sq ft and 1.5 sq ft sanded are 6.75 > 6 (40 CFR 745.83)', () => {
    const feet = (n: number) => squareMetres(n * SQUARE_METRES_PER_SQUARE_FOOT)
    const together = disturbedArea({ trim: feet(2 * 2.625), pieces: feet(0), earlier: feet(1.5) })
    expect(together / SQUARE_METRES_PER_SQUARE_FOOT).toBeCloseTo(6.75, 9)
    expect(together).toBeGreaterThan(feet(6))
  })
})

describe('old paint on what comes off', () => {
  it('asks at 6 sq ft and stops above it: earlier work in the room counts too', () => {
    // The shelf alone shows 4.36 sq ft.
    expect(codes(off([shelf]))).toContain('C15')
    expect(codes(off([shelf]))).not.toContain('S19')
    expect(codes(withAnswer(off([shelf]), leadEarlier, 'job', 2))).toContain('S19')
    expect(codes(withAnswer(off([shelf]), leadEarlier, 'job', 1.6))).not.toContain('S19')
  })
  it('stops at demolition whatever the area, and not for bare wood', () => {
    expect(codes(off([{ ...shelf, length: inches(4), fixing: 'mortar' }]))).toContain('S19')
    expect(codes(off([{ ...mantel, coat: 'bare', fixing: 'mortar' }]))).not.toContain('S19')
  })
  it('is lifted by a certified firm and renovator named, who is printed with the lead-safe list', () => {
    const firm = 'Invented Lead-Safe, certificate 0000 (invented)'
    const plan = makePlan(withAnswer(off([mantel]), leadFirm, 'job', firm), 'quick')
    expect(plan.messages.map((m) => m.code)).not.toContain('S19')
    expect(plan.messages.some((m) => m.code === 'C15' && m.why.includes(firm))).toBe(true)
    const protect = plan.calendar.tasks.find((t) => t.id === 'B1')
    expect(protect?.checks.join(' ')).toContain(firm)
    expect(protect?.checks.join(' ')).toMatch(/HEPA/)
  })
  it('counts nothing of a piece younger than the rule, and asks about one older than a young house', () => {
    expect(codes(off([{ ...mantel, year: 1990 }]))).not.toContain('S19')
    expect(codes(off([{ ...mantel, year: 1910 }], 1986))).toContain('C15')
  })
  it('more paint never makes it milder', () => {
    const severity = (job: Job) => {
      const all = codes(job)
      return all.includes('S19') ? 2 : all.includes('C15') ? 1 : 0
    }
    const rows = fc.array(
      fc.record({
        what: fc.constantFrom('shelf' as const, 'mantel' as const, 'panel' as const),
        length: fc.integer({ min: 2, max: 60 }).map((n) => inches(n)),
        fixing: fc.constantFrom('nailed' as const, 'glued' as const),
      }),
      { minLength: 1, maxLength: 4 },
    )
    fc.assert(
      fc.property(rows, (some) => {
        const all = some.map((r) => ({ ...shelf, ...r }))
        expect(severity(off(all))).toBeGreaterThanOrEqual(severity(off(all.slice(1))))
      }),
      { numRuns: 15 },
    )
  })
})

describe('the work of taking off', () => {
  it('has its steps before repair: made safe, taken off alone, taken off by two, waste out', () => {
    const heavy: RemovalRow = {
      ...mantel,
      what: 'cabinet',
      length: inches(60),
      height: inches(84),
      depth: inches(20),
      coat: 'bare',
      holds: 'wire',
    }
    const plan = makePlan(off([{ ...shelf, coat: 'bare' }, heavy]), 'quick')
    const task = (id: string) => plan.calendar.tasks.find((t) => t.id === id)
    expect(task('R1')?.setOut.join(' ')).toMatch(/dead/)
    expect(task('R2')?.people).toBe(1)
    expect(task('R3')?.people).toBe(2)
    expect(task('R3')?.cautions.join(' ')).toMatch(/cabinet .*kg/)
    const order = ['R1', 'R2', 'R3', 'R4', 'B4'].map((id) => task(id)?.startsAt ?? Number.NaN)
    expect(order).toEqual(order.toSorted((a, b) => a - b))
    expect(plan.calendar.tasks.some((t) => t.id.startsWith('A6') && t.setOut.join(' ').includes('cabinet'))).toBe(true)
    expect(plan.purchases.find((p) => p.id === 'waste.bag')?.packs).toBe(plan.stripOut.waste.bags)
  })
  it('costs more hours when it is glued, twice as much when there are two', () => {
    const hours = (row: RemovalRow) =>
      makePlan(off([{ ...row, coat: 'bare' }]), 'quick').stripOut.pieces.reduce((h, p) => h + p.effort, 0)
    expect(hours({ ...shelf, fixing: 'glued' })).toBeGreaterThan(hours(shelf))
    expect(hours({ ...shelf, count: 2 })).toBe(2 * hours(shelf))
  })
  it('has an entry of figures for each kind and fixing', () => {
    for (const what of Object.keys(REMOVALS) as (keyof typeof REMOVALS)[])
      for (const fixing of Object.keys(OLD_FIXINGS) as (keyof typeof OLD_FIXINGS)[])
        expect(() => makePlan(off([{ ...shelf, what, fixing }]), 'quick')).not.toThrow()
  })
  it('is in a skip instead of too many bags', () => {
    const plan = makePlan(
      off([
        {
          ...mantel,
          what: 'floor',
          length: inches(200),
          height: inches(100),
          depth: inches(2),
          coat: 'bare',
          year: 2010,
        },
      ]),
      'quick',
    )
    expect(plan.stripOut.waste.skips).toBeGreaterThan(0)
    expect(plan.purchases.map((p) => p.id)).toContain('waste.skip')
  })
  it('leaves a job with nothing to come off as it was', () => {
    const plan = makePlan(wide, 'quick')
    expect(plan.stripOut.pieces).toEqual([])
    expect(plan.calendar.tasks.filter((t) => /^R\d/.test(t.id))).toEqual([])
  })
})
