import { expect } from 'vitest'
import { carcassThickness } from '../../src/job/chapters/cabinets.ts'
import { inchStep, metricStep } from '../../src/job/chapters/job.ts'
import { alignShelves, shelfCount, shelfLoad } from '../../src/job/chapters/shelves.ts'
import {
  baseboard,
  bays,
  ceiling,
  floor,
  returns,
  studs,
  type WidthRow,
  wallKind,
  widths,
} from '../../src/job/chapters/wall.ts'
import { devices } from '../../src/job/chapters/wall-devices.ts'
import { answerOf, baysOf, type Job, withAnswer } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import { inches, type Length, millimetres, sum, ZERO } from '../../src/units/length.ts'
import { reading } from '../outline/placed.ts'
import { jobsWithEverything } from '../plan/hold-jobs.ts'
import { measuredJobs } from '../plan/random-jobs.ts'
import { variedJobs } from '../plan/varied-jobs.ts'
import { sizesById } from './digest.ts'
import { relations, VACUOUS } from './holds.ts'

const planned = (job: Job): Plan => makePlan(job, 'quick')
const metric = (p: Plan): boolean => p.figures.units === 'metric'

/** The job with one reading changed at every bay that has it. */
const everywhere = <T>(job: Job, field: Field<T>, change: (value: T) => T): Job =>
  baysOf(job).reduce<Job>((j, bay) => {
    const value = reading(job, field, bay.id)
    return value === undefined ? j : withAnswer(j, field, bay.id, change(value))
  }, job)

const wider =
  (by: Length) =>
  (rows: readonly WidthRow[]): readonly WidthRow[] =>
    rows.map((r) => ({
      ...r,
      ...(r.back === undefined ? {} : { back: sum(r.back, by) }),
      ...(r.front === undefined ? {} : { front: sum(r.front, by) }),
    }))

const alcovesOf = (p: Plan) => p.slots.runs.filter((r) => r.wall.kind === 'alcove')

relations(
  'one answer changed, sizes left to their suggestions',
  measuredJobs,
  {
    'a wider alcove gives a run wider by just that, and shelves longer by just that': (job, plan) => {
      const before = plan
      const by = metric(before) ? millimetres(25) : inches(1)
      const after = planned(everywhere(job, widths, wider(by)))
      for (const run of alcovesOf(before)) {
        const then = after.slots.runs.find((r) => r.bay.id === run.bay.id)
        expect(then?.width).toBe(run.width + by)
        expect(then?.startX).toBe(run.startX)
      }
      return alcovesOf(before).length === 0 ? VACUOUS : undefined
    },

    'a thicker carcass panel never makes an inside wider, and leaves the outside as it was': (job, plan) => {
      const before = plan
      const t = before.boxes.carcassThickness
      const after = planned(withAnswer(job, carcassThickness, 'job', sum(t, inches(0, 1, 16))))
      const own = before.boxes.boxes.filter((b) => b.run.wall.kind === 'alcove')
      for (const box of own) {
        const then = after.boxes.boxes.find((b) => b.id === box.id)!
        expect([then.width, then.height, then.depth]).toEqual([box.width, box.height, box.depth])
        expect(then.insideWidth).toBeLessThan(box.insideWidth)
        expect(after.fixings.boxMasses.get(box.mark)!).toBeGreaterThan(before.fixings.boxMasses.get(box.mark)!)
      }
      return own.length === 0 ? VACUOUS : undefined
    },

    'a finer cut step gives a run at least as wide, and wider by less than the coarse step': (job, plan) => {
      const before = plan
      const [coarse, finer] = metric(before)
        ? [millimetres(1), withAnswer(job, metricStep, 'job', '0.5')]
        : [inches(0, 1, 16), withAnswer(job, inchStep, 'job', '1/64')]
      const after = planned(finer)
      for (const run of before.slots.runs) {
        const then = after.slots.runs.find((r) => r.bay.id === run.bay.id)!
        expect(then.width).toBeGreaterThanOrEqual(run.width)
        expect(then.width - run.width).toBeLessThan(coarse)
      }
      return before.slots.runs.length === 0 ? VACUOUS : undefined
    },

    'one more shelf: the lowest and the highest stay, and the boxes do not change': (job, plan) => {
      const before = plan
      const shelves = (p: Plan, bay: string) => p.shelves.shelves.filter((s) => s.bay.id === bay)
      const bay = before.bays.find((b) => shelves(before, b.id).length > 1)
      if (bay === undefined) return VACUOUS
      const alone = withAnswer(job, alignShelves, 'job', false)
      const count = shelves(planned(alone), bay.id).length
      const more = planned(withAnswer(alone, shelfCount, bay.id, count + 1))
      if (count < 2 || more.messages.some((m) => m.code === 'S10')) return VACUOUS
      const [few, many] = [shelves(planned(alone), bay.id), shelves(more, bay.id)]
      expect(many.length).toBe(few.length + 1)
      expect([many[0]!.z, many.at(-1)!.z]).toEqual([few[0]!.z, few.at(-1)!.z])
      expect(more.boxes.boxes.map((b) => [b.id, b.width])).toEqual(before.boxes.boxes.map((b) => [b.id, b.width]))
    },

    'a heavier load never gives a thinner shelf': (job) => {
      const [light, heavy] = (['ornaments', 'books'] as const).map((load) =>
        planned(withAnswer(job, shelfLoad, 'job', load)),
      )
      for (const shelf of light!.shelves.shelves) {
        const then = heavy!.shelves.shelves.find((s) => s.id === shelf.id)
        if (then !== undefined) expect(then.thickness).toBeGreaterThanOrEqual(shelf.thickness)
      }
    },

    'a bay more at the right end leaves the parts of the others as they were': (job) => {
      const alone = withAnswer(job, alignShelves, 'job', false)
      const before = planned(alone)
      const after = planned(withAlcoveAtTheRight(alone))
      const sizes = sizesById(after)
      for (const [id, size] of sizesById(before)) expect(sizes.get(id), id).toEqual(size)
      expect(sizes.size).toBeGreaterThan(before.parts.length)
    },
  },
  0.8,
)

relations('one answer changed', variedJobs, {
  'a wider alcove never gives a narrower run of boxes, by however little it is wider': (job, plan) => {
    const before = plan
    const after = planned(everywhere(job, widths, wider(inches(0, 1, 64))))
    for (const run of alcovesOf(before))
      expect(after.slots.runs.find((r) => r.bay.id === run.bay.id)!.width).toBeGreaterThanOrEqual(run.width)
    return alcovesOf(before).length === 0 ? VACUOUS : undefined
  },

  'a deeper alcove never gives shallower boxes or shelves': (job, plan) => {
    const deeper = everywhere(job, returns, (list) => list.map((d) => (d === 0 ? d : sum(d, inches(0, 3, 16)))))
    const [before, after] = [plan, planned(deeper)]
    for (const box of before.boxes.boxes) {
      const then = after.boxes.boxes.find((b) => b.id === box.id)
      if (then !== undefined) expect(then.depth).toBeGreaterThanOrEqual(box.depth)
    }
    for (const shelf of before.shelves.shelves) {
      const then = after.shelves.shelves.find((s) => s.id === shelf.id)
      if (then !== undefined) expect(then.depth).toBeGreaterThanOrEqual(shelf.depth)
    }
  },

  'a higher ceiling never shortens a box, lowers the top shelf, or takes a shelf away': (job, plan) => {
    const higher = everywhere(job, ceiling, (list) => list.map((c) => sum(c, inches(3, 5, 16))))
    const [before, after] = [plan, planned(higher)]
    for (const box of before.boxes.boxes)
      expect(after.boxes.boxes.find((b) => b.id === box.id)!.height).toBeGreaterThanOrEqual(box.height)
    for (const bay of before.bays) {
      const tops = (p: Plan) => p.shelves.shelves.filter((s) => s.bay.id === bay.id).map((s) => s.z)
      expect(tops(after).length).toBeGreaterThanOrEqual(tops(before).length)
      expect(Math.max(0, ...tops(after))).toBeGreaterThanOrEqual(Math.max(0, ...tops(before)))
    }
  },
})

relations(
  'one answer changed, outlets and boxes of every kind',
  jobsWithEverything,
  {
    'a device taken away changes nothing but openings, what goes round them, and what trades do': (job, plan) => {
      const before = plan
      const after = planned(everywhere(job, devices, () => []))
      if (!before.parts.some((p) => p.cutOuts.length > 0 && p.bay !== 'b')) return VACUOUS
      const boxes = (p: Plan) => p.parts.filter((x) => x.id.includes('/box-')).map((x) => [x.id, x.length, x.width])
      expect(boxes(after)).toEqual(boxes(before))
      expect(after.parts.filter((p) => p.id.includes('/box-') && p.cutOuts.length > 0)).toEqual([])
    },

    'another reading changes only parts that would wait for it': (job, plan) => {
      const changes: readonly (readonly [Field, (value: never) => unknown])[] = [
        [widths, wider(inches(0, 5, 16)) as never],
        [returns, ((list: readonly Length[]) => list.map((d) => (d === 0 ? d : sum(d, inches(1))))) as never],
        [ceiling, ((list: readonly Length[]) => list.map((c) => sum(c, inches(-2)))) as never],
      ]
      const bay = baysOf(job).find((b) => b.kind === 'alcove')
      if (bay === undefined) return VACUOUS
      const before = sizesById(plan)
      // One reading a job, by turns.
      for (const [field, change] of [changes[plan.parts.length % changes.length]!]) {
        const value = answerOf(job, field, bay.id)
        if (value === undefined || value === NOT_MEASURED) continue
        const after = sizesById(planned(withAnswer<unknown>(job, field, bay.id, change(value as never))))
        const held = planned(withAnswer<unknown>(job, field, bay.id, NOT_MEASURED)).parts
        const settled = new Set(held.filter((p) => p.waitsFor.length === 0).map((p) => p.id))
        for (const [id, size] of before)
          if (settled.has(id) && after.has(id)) expect(after.get(id), `${id} by ${field.id}`).toEqual(size)
      }
    },
  },
  0.9,
)

const NEW = 'z'
/** An alcove without baseboard, crown or devices: nothing of it reaches the other bays. */
function withAlcoveAtTheRight(job: Job): Job {
  const list = answerOf(job, bays, 'job')
  const all = list === undefined || list === NOT_MEASURED ? [] : list
  const steps: readonly ((j: Job) => Job)[] = [
    (j) => withAnswer(j, bays, 'job', [...all, { id: NEW, kind: 'alcove' }]),
    (j) => withAnswer(j, widths, NEW, [{ height: inches(4), back: inches(40), front: inches(40), left: ZERO }]),
    (j) => withAnswer(j, returns, NEW, [inches(15), inches(15)]),
    (j) => withAnswer(j, ceiling, NEW, [inches(96)]),
    (j) => withAnswer(j, floor, NEW, [{ x: ZERO, drop: ZERO }]),
    (j) => withAnswer(j, baseboard, NEW, [ZERO, ZERO]),
    (j) => withAnswer(j, wallKind, NEW, 'studs'),
    (j) => withAnswer(j, studs, NEW, [inches(8), inches(24)]),
    (j) => withAnswer(j, devices, NEW, []),
  ]
  return steps.reduce((j, step) => step(j), job)
}
