import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { hallway, narrowTurn, smallestDoor } from '../../../src/job/chapters/carrying.ts'
import { type Job, jobSchema, withAnswer } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import type { Field } from '../../../src/things/field.ts'
import { inches, type Length } from '../../../src/units/length.ts'

const wide: Job = jobSchema.parse(
  JSON.parse(readFileSync(new URL('../../../demo/alcoves-inch/job.json', import.meta.url), 'utf8')),
) as Job
const through = (field: Field<readonly Length[]>, a: number, b: number, job = wide): Job =>
  withAnswer(job, field, 'job', [inches(a), inches(b)])
const planOf = (job: Job) => makePlan(job, 'quick')
const codes = (job: Job) => planOf(job).messages.map((m) => m.code)

describe('carrying in', () => {
  it('says nothing where no way in was measured, nor where everything passes', () => {
    for (const job of [wide, through(smallestDoor, 36, 80)]) {
      expect(codes(job)).not.toContain('C18')
      expect(codes(job)).not.toContain('C20')
    }
    expect(planOf(wide).carryingIn.ways.size).toBe(0)
  })

  it('puts a box together in the room when its end does not pass the door, with its own step and hours', () => {
    const narrow = planOf(through(smallestDoor, 14, 78))
    expect(narrow.messages.map((m) => m.code)).toContain('C18')
    const room = narrow.calendar.tasks.find((t) => t.id === 'F0')
    expect(room?.marks).toEqual([...narrow.carryingIn.builtInRoom])
    expect(room?.hours).toBeGreaterThan(0)
    const inShop = narrow.calendar.tasks.find((t) => t.id === 'W3')
    for (const mark of narrow.carryingIn.builtInRoom) expect(inShop?.marks ?? []).not.toContain(mark)
  })

  it('names the largest size that passes, and it does pass', () => {
    const plan = planOf(through(smallestDoor, 14, 78))
    const message = plan.messages.find((m) => m.code === 'C18')
    // 14 in less 1 in of play each side: a box 12 deep goes through on end.
    expect(message?.why).toMatch(/12 in deep/)
  })

  it('long pieces stick at a turn: a counter of 46 in in ways of 16 in', () => {
    const plan = planOf(through(narrowTurn, 16, 16))
    const stuck = plan.messages.find((m) => m.code === 'C20')
    expect(stuck?.short).toMatch(/L-T1|R-T1|H\d/)
  })

  it('a higher hallway never lets less through', () => {
    const stuckIn = (height: number) =>
      [...planOf(through(hallway, 40, height, through(narrowTurn, 24, 24))).carryingIn.ways.values()].filter(
        (how) => how === 'not',
      ).length
    expect(stuckIn(96)).toBeLessThanOrEqual(stuckIn(60))
    expect(stuckIn(60)).toBeLessThanOrEqual(stuckIn(30))
  })

  it('a wider door never lets less through', () => {
    const stuckIn = (width: number) =>
      [...planOf(through(smallestDoor, width, 78)).carryingIn.ways.values()].filter((how) => how === 'not').length
    const counts = [12, 14, 16, 20, 30].map(stuckIn)
    expect(counts).toEqual(counts.toSorted((a, b) => b - a))
    expect(counts[0]).toBeGreaterThan(counts[4] ?? 0)
  })
})
