import { expect } from 'vitest'
import {
  contingency,
  discount,
  handling,
  hourRate,
  overhead,
  profit,
  sundries,
  tax,
  tripCost,
} from '../../src/job/chapters/price.ts'
import { fieldById } from '../../src/job/fields.ts'
import { type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { comparePlans } from '../../src/plan/compare/compare.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import type { Fix, Message } from '../../src/things/message.ts'
import type { Part } from '../../src/things/part.ts'
import { type Money, minorUnits } from '../../src/units/money.ts'
import { variedJobs } from '../plan/varied-jobs.ts'
import { relations, VACUOUS } from './holds.ts'

const planned = (job: Job): Plan => makePlan(job, 'quick')
const cubicMetres = (p: Part): number => (p.length / 1e9) * (p.width / 1e9) * (p.thickness / 1e9) * p.quantity
const total = (numbers: readonly number[]): number => numbers.reduce((t, n) => t + n, 0)

relations(
  'every plan',
  variedJobs,
  {
    'names each part, joint, task and purchase once, and no two things by one mark': (_, plan) => {
      const p = plan
      for (const ids of [
        p.parts.map((x) => x.id),
        p.joints.joints.map((x) => x.id),
        p.joints.joints.map((x) => String(x.number)),
        p.calendar.tasks.map((x) => x.id),
        p.purchases.map((x) => x.id),
      ])
        expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
      // One mark for the pieces of one thing, told apart by their names; never for two things.
      for (const mark of new Set(p.parts.map((x) => x.mark))) {
        const [first, ...others] = p.parts.filter((x) => x.mark === mark).toSorted((a, b) => a.id.length - b.id.length)
        for (const other of others) {
          expect(other.piece, `${other.id} beside ${first!.id}`).toBeDefined()
          expect(other.id.startsWith(first!.id) || thingOf(other) === thingOf(first!), `${other.id} as ${mark}`).toBe(
            true,
          )
        }
      }
    },

    'gives whole positive sizes, none finer than its cut from the rough, none rough under finished': (_, plan) => {
      for (const p of plan.parts) {
        expect(Math.min(p.length, p.width, p.thickness, p.quantity), p.id).toBeGreaterThan(0)
        expect(p.roughLength, p.id).toBeGreaterThanOrEqual(p.length)
        expect(p.roughWidth, p.id).toBeGreaterThanOrEqual(p.width)
        for (const n of Object.values(p.placement)) expect(Number.isSafeInteger(n), p.id).toBe(true)
      }
    },

    'puts every made part on one sheet or stick, whole and once, and every bought one in one request': (_, plan) => {
      const { parts, panels, messages, supply } = plan
      const tooLarge = new Set(messages.filter((m) => m.code === 'S16').map((m) => m.part))
      const laid = [
        ...panels.layouts.flatMap((l) => l.laid.map((x) => x.part.id)),
        ...panels.sticks.flatMap((s) => s.bars.flatMap((b) => b.pieces.map((x) => x.part.id))),
      ]
      const made = parts
        .filter((p) => p.supply === 'made' && !tooLarge.has(p.id))
        .flatMap((p) => Array.from({ length: p.quantity }, () => p.id))
      expect([...laid].sort()).toEqual([...made].sort())
      for (const p of parts.filter((x) => x.supply !== 'made'))
        expect(supply.requests.filter((r) => r.id === p.supply).length, p.id).toBe(1)
    },

    'orders no fewer sheets than their parts cover, and covers no more of a sheet than it has': (_, plan) => {
      const p = plan
      const { panels } = p
      for (const [material, order] of panels.order) {
        const sheets = panels.layouts.filter((l) => l.material.id === material)
        expect(order.bound, material).toBeLessThanOrEqual(sheets.length)
        expect(order.sheets, material).toBe(sheets.length + order.spare)
        for (const sheet of sheets) {
          const area = total(sheet.laid.map((x) => x.part.roughLength * x.part.roughWidth))
          expect(area).toBeLessThanOrEqual(p.figures.length('sheet.length') * p.figures.length('sheet.width'))
        }
      }
    },

    'weighs each part as its volume times the density of what it is cut from, and each box as its panels': (
      _job,
      plan,
    ) => {
      const p = plan
      // A prefinished panel has a core of MDF.
      const density = (part: Part) =>
        p.figures.number(`density.${part.material.replace('prefinished', 'mdf').split('-')[0]}`)
      for (const part of p.parts)
        expect(p.fixings.masses.get(part.id)!, part.id).toBeCloseTo(cubicMetres(part) * density(part), 9)
      for (const box of p.boxes.boxes) {
        const own = p.parts.filter((x) => x.id.startsWith(`${box.id}/`) && !/-(?:D|Y)\d*$/.test(x.mark))
        const mass = total(own.map((x) => p.fixings.masses.get(x.id)!))
        expect(p.fixings.boxMasses.get(box.mark)!, box.id).toBeCloseTo(mass, 9)
      }
    },

    'starts no task before what it comes after is ready, nor two at once for one pair of hands': (_, plan) => {
      const { tasks } = plan.calendar
      const at = new Map(tasks.map((t) => [t.id, t]))
      for (const t of tasks) {
        for (const id of t.after) {
          expect(at.get(id), `${t.id} after ${id}`).toBeDefined()
          expect(t.startsAt, `${t.id} after ${id}`).toBeGreaterThanOrEqual(at.get(id)!.endsAt)
          expect(t.start >= at.get(id)!.ready, `${t.id} after ${id}`).toBe(true)
        }
        expect(t.endsAt).toBeGreaterThanOrEqual(t.startsAt)
      }
      const busy = tasks.filter((t) => t.hours > 0).toSorted((a, b) => a.startsAt - b.startsAt)
      for (const [i, t] of busy.entries())
        if (i > 0)
          expect(t.startsAt, `${t.id} with ${busy[i - 1]!.id}`).toBeGreaterThanOrEqual(busy[i - 1]!.endsAt - 1e-9)
    },

    'buys what is needed and not a pack more than that, for a task that stands in the calendar': (_, plan) => {
      const p = plan
      const tasks = new Set(p.calendar.tasks.map((t) => t.id))
      for (const b of p.purchases) {
        expect(b.packs * b.packSize, b.id).toBeGreaterThanOrEqual(b.need - 1e-6)
        expect(tasks.has(b.firstUsedBy), `${b.id} for ${b.firstUsedBy}`).toBe(true)
      }
    },

    'asks a price that is the sum of its printed lines, and stages that are the price': (_, plan) => {
      const { price } = plan
      const lines = [...price.labour, ...price.materials, ...price.boughtIn]
      for (const line of lines) expect(Number.isSafeInteger(line.amount), line.id).toBe(true)
      const direct = total(lines.map((l) => l.amount)) + price.sundries + price.handling + price.travel
      expect(price.direct).toBe(direct)
      expect(price.cost).toBe(direct + price.overhead + price.contingency)
      expect(price.beforeTax).toBe(price.cost + price.profit + price.rounding - price.discount)
      expect(price.total).toBe(price.beforeTax + price.tax)
      expect(total(price.stages.map((s) => s.amount))).toBe(price.total)
    },

    'never asks less when a rate goes up, nor more for a larger discount': (job, plan) => {
      const before = plan
      const dearer = <T extends number>(field: Field<T>, by: number): Job => {
        const used = before.used.get(`job.${field.id}`)?.value
        return withAnswer(job, field, 'job', ((typeof used === 'number' ? used : 0) + by) as T)
      }
      const rates = [
        ['hour rate', dearer(hourRate as Field<Money>, 700)],
        ['trip', dearer(tripCost as Field<Money>, 300)],
        ['handling', dearer(handling, 3)],
        ['sundries', dearer(sundries, 2)],
        ['overhead', dearer(overhead, 4)],
        ['contingency', dearer(contingency, 2)],
        ['profit', dearer(profit, 5)],
        ['tax', dearer(tax, 2)],
      ] as const
      // One rate a job, by turns: each is raised in an eighth of them.
      const [id, after] = rates[before.parts.length % rates.length]!
      expect(planned(after).price.total, id).toBeGreaterThanOrEqual(before.price.total)
      const cheaper = planned(withAnswer(job, discount, 'job', minorUnits(before.price.discount + 5000)))
      expect(cheaper.price.total).toBeLessThanOrEqual(before.price.total)
    },

    'closes each joint by its wider end, and tapes just those where two colours meet': (_, plan) => {
      const p = plan
      for (const j of p.joints.joints) {
        const gap = Math.max(j.gap1, j.gap2)
        expect(Math.min(j.gap1, j.gap2), j.id).toBeGreaterThanOrEqual(0)
        if (j.kind === 'fillet') expect(gap, j.id).toBeLessThanOrEqual(p.figures.length('bead.fillet-only'))
        if (j.kind === 'caulk') expect(gap, j.id).toBeLessThanOrEqual(p.figures.length('caulk.most'))
        expect(j.tape > 0, j.id).toBe(j.twoColours && j.kind !== 'open')
        if (j.tape > 0) expect(j.tape, j.id).toBeGreaterThan(j.length)
      }
    },

    'spaces shelves evenly to the cut step, with the least opening between them': (_, plan) => {
      const p = plan
      const step = p.figures.units === 'metric' ? 1_000_000 : 1_587_500
      const rows = p.bays.map((b) => p.shelves.shelves.filter((s) => s.bay.id === b.id)).filter((r) => r.length > 2)
      if (rows.length === 0 || p.messages.some((m) => m.code === 'S10')) return VACUOUS
      for (const row of rows) {
        const pitches = row.slice(1).map((s, i) => s.z - row[i]!.z)
        expect(Math.max(...pitches) - Math.min(...pitches), row[0]!.id).toBeLessThanOrEqual(2 * step)
        expect(Math.min(...pitches) - row[0]!.thickness).toBeGreaterThanOrEqual(
          p.figures.length('shelf.clear-least') - step,
        )
      }
    },

    'compared with itself shows no change, and a change of price is shown both ways round': (job, plan) => {
      const before = plan
      const after = planned(withAnswer(job, overhead, 'job', 60))
      expect(comparePlans(before, plan)).toEqual([])
      expect(comparePlans(before, after).length > 0).toBe(comparePlans(after, before).length > 0)
      if (after.price.total !== before.price.total) expect(comparePlans(before, after).length).toBeGreaterThan(0)
    },

    'offers fixes that clear their stop': (job) => {
      const stops = stopsOf(job).filter((m) => m.fixes.length > 0)
      for (const stop of stops)
        for (const fix of stop.fixes) {
          const after = fixed(job, fix)
          expect(jobSchema.safeParse(after).success, `${stop.code} ${fix.says}`).toBe(true)
          const left = stopsOf(after).filter(
            (m) => m.code === stop.code && m.about === stop.about && m.place === stop.place,
          )
          expect(
            left.map((m) => m.short),
            `${stop.code} ${stop.about}: ${fix.says}`,
          ).toEqual([])
        }
      return stops.length === 0 ? VACUOUS : undefined
    },

    'says what it used for every question, and that an answer was answered': (job, plan) => {
      const { used } = plan
      for (const [key, u] of used) {
        const [place = '', id = ''] = key.split('.')
        const field = fieldById(id)
        expect(field, key).toBeDefined()
        const answer = job[field!.section][place]?.[id]
        if (u.origin === 'answered') expect(u.value, key).toEqual(answer)
        else expect(answer === undefined || answer === NOT_MEASURED || u.value === u.suggested, key).toBe(true)
      }
    },
  },
  0.95,
)

/** Place and thing of a piece: `a/box-1/leaf-2` of `a/box-1/leaf-2/rail-lower`. */
const thingOf = ({ id }: Part): string => id.slice(0, id.lastIndexOf('/'))

const stopsOf = (job: Job): readonly Message[] => planned(job).messages.filter((m) => m.weight === 'stop')

/** The job with the answers of a fix put in, as one key does on the screen. */
const fixed = (job: Job, fix: Fix): Job =>
  fix.answers.reduce<Job>((now, { key, value }) => {
    const dot = key.indexOf('.')
    const field = fieldById(key.slice(dot + 1))
    expect(field, key).toBeDefined()
    return field === undefined ? now : withAnswer<unknown>(now, field, key.slice(0, dot), value)
  }, job)
