import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Job, jobSchema } from '../../src/job/job.ts'
import { makePlan, type Plan } from '../../src/plan/plan.ts'
import type { Part } from '../../src/things/part.ts'
import { inches, type Length, sum } from '../../src/units/length.ts'
import { boxFaults } from './box-fit.ts'
import { counterFaults } from './counter-fit.ts'
import { cutOutFaults } from './cut-out-fit.ts'
import { leafFaults } from './front-fit.ts'
import { overlapFaults } from './overlaps.ts'
import { cleatFaults, shelfFaults } from './shelf-fit.ts'
import { fillerFaults, kickFaults } from './strip-fit.ts'

const job = jobSchema.parse(
  JSON.parse(readFileSync(new URL('../../demo/alcoves-inch/job.json', import.meta.url), 'utf8')),
) as Job
const plan = makePlan(job, 'quick')
const STEP = inches(0, 1, 16)
const more = (l: Length, eighths: number) => sum(l, inches(0, eighths, 8))

/** The plan with one of its parts spoilt. */
const spoilt = (id: string, spoil: (part: Part) => Partial<Part>): Plan => ({
  ...plan,
  parts: plan.parts.map((p) => (p.id === id ? { ...p, ...spoil(p) } : p)),
})
const moved = (id: string, eighths: number): Plan =>
  spoilt(id, (p) => ({ placement: { ...p.placement, x: more(p.placement.x, eighths) } }))
const shelvesWith = (change: (shelf: Plan['shelves']['shelves'][number]) => object): Plan => ({
  ...plan,
  shelves: { ...plan.shelves, shelves: plan.shelves.shelves.map((s) => ({ ...s, ...change(s) })) },
})
const jointsWith = (id: string, eighths: number): Plan => ({
  ...plan,
  joints: {
    ...plan.joints,
    joints: plan.joints.joints.map((j) => (j.id === id ? { ...j, gap1: more(j.gap1, eighths) } : j)),
  },
})

/** What each check must see. A check that finds nothing in a spoilt plan would find nothing anywhere. */
const SPOILT: Readonly<Record<string, readonly [faults: (p: Plan) => readonly string[], spoilt: Plan]>> = {
  'a box side pushed into the return': [(p) => boxFaults(job, p, 'a'), moved('a/box-1/side-left', -10)],
  'a shelf a quarter inch too long to pass': [
    (p) => shelfFaults(job, p, 'a', STEP),
    shelvesWith((s) => ({ backLength: more(s.backLength, 2), frontLength: more(s.frontLength, 2) })),
  ],
  'a shelf seated in a wall': [(p) => shelfFaults(job, p, 'a', STEP), shelvesWith((s) => ({ x: more(s.x, 2) }))],
  'a joint that names a gap that is not there': [
    (p) => shelfFaults(job, p, 'a', STEP),
    jointsWith('a/shelf-1/left-over', 2),
  ],
  'a counter longer than its walls': [
    (p) => counterFaults(job, p, 'a', STEP),
    spoilt('a/counter-1', (p) => ({ length: more(p.length, 4) })),
  ],
  'a leaf over the next one': [
    (p) => leafFaults(p, 'a'),
    {
      ...plan,
      fronts: {
        ...plan.fronts,
        leaves: plan.fronts.leaves.map((l, i) => (i === 0 ? { ...l, width: more(l.width, 4) } : l)),
      },
    },
  ],
  'an outlet without its opening': [(p) => cutOutFaults(job, p, 'a'), spoilt('a/box-1/back', () => ({ cutOuts: [] }))],
  'an opening beside its outlet': [
    (p) => cutOutFaults(job, p, 'a'),
    spoilt('a/box-1/back', (p) => ({ cutOuts: p.cutOuts.map((c) => ({ ...c, x: more(c.x, 4) })) })),
  ],
  'a cleat as high as the void': [
    (p) => cleatFaults(job, p, 'a'),
    spoilt('a/shelf-1/cleat-back', (p) => ({ placement: { ...p.placement, dz: more(p.placement.dz, 2) } })),
  ],
  'a side cleat through the back cleat': [(p) => cleatFaults(job, p, 'a'), moved('a/shelf-1/cleat-left', 4)],
  'a filler cut to its finished width': [
    (p) => fillerFaults(job, p, 'a', STEP),
    spoilt('a/filler-left', (p) => ({ roughWidth: more(p.width, -2) })),
  ],
  'a kick plate that stops short of the wall': [
    (p) => kickFaults(job, p, 'a', STEP),
    spoilt('a/kick-plate-1', (p) => ({ roughLength: more(p.length, -4) })),
  ],
  'a kick plate that hangs over the floor': [
    (p) => kickFaults(job, p, 'a', STEP),
    spoilt('a/kick-plate-1', (p) => ({ roughWidth: more(p.width, -4) })),
  ],
  'two boxes in one place': [(p) => overlapFaults(job, p, 'a', STEP), moved('a/box-2/side-left', -4)],
}

describe('the second geometry sees', () => {
  it.each(Object.entries(SPOILT))('%s', (_, [faults, bad]) => {
    expect(faults(plan)).toEqual([])
    expect(faults(bad)).not.toEqual([])
  })
})
