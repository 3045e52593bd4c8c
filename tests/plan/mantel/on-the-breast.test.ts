import { describe, expect, it } from 'vitest'
import {
  cable,
  cableTo,
  clearanceRule,
  fuel,
  hearth,
  opening,
  paintHeat,
  realMasonry,
  tv,
  tvHeat,
  tvPlace,
} from '../../../src/job/chapters/firebox.ts'
import { mantelDepth, mantelFrieze } from '../../../src/job/chapters/mantel.ts'
import { breastSize, ceiling } from '../../../src/job/chapters/wall.ts'
import { type BreastDeviceRow, breastDevices } from '../../../src/job/chapters/wall-devices.ts'
import { type Job, withAnswer } from '../../../src/job/job.ts'
import { mantels } from '../../../src/plan/mantel/mantel.ts'
import { survey } from '../../../src/plan/survey/survey.ts'
import { ZERO } from '../../../src/units/length.ts'
import { contextOfJob, in_, inInches, wallOf } from '../run-for-test.ts'

const built = (job: Job) => {
  const context = contextOfJob(job)
  return mantels(context, survey(context))
}
const raised = (job: Job) => built(job).contribution.messages.filter((m) => m.weight !== 'note')
const codes = (job: Job) => raised(job).map((m) => m.code)

/** A masonry breast 66 wide, opening x 16 to 50, top at 30; mantel 8 deep, beam 42 1/2 to 48 1/2 from x 5 to 61, top at 50. */
const breast = wallOf('inch', ['breast'])
  .put(breastSize, 'a', [in_(66), in_(16)])
  .put(ceiling, 'a', [in_(96), in_(96)])
  .put(fuel, 'a', 'open-fire')
  .put(opening, 'a', [in_(16), ZERO, in_(34), in_(30)])
  .put(realMasonry, 'a', true)
  .put(clearanceRule, 'a', 'irc')
  .put(hearth, 'a', [in_(20), in_(12), in_(12)])
  .put(paintHeat, 'a', ZERO)
const screen = breast
  .put(tv, 'a', true)
  .put(tvPlace, 'a', [in_(9), in_(54), in_(48), in_(27)])
  .put(tvHeat, 'a', in_(20))

const device = (x: number, z: number, more: Partial<BreastDeviceRow> = {}): BreastDeviceRow => ({
  what: 'outlet',
  x: in_(x),
  z: in_(z),
  width: in_(3),
  height: in_(5),
  fate: 'keep',
  ...more,
})
const withDevice = (row: BreastDeviceRow, job = screen) => job.put(breastDevices, 'a', [row]).job

/** NEC 314.29: the wiring in a box stays reachable without removing any part of the building. One inch stays clear round it. */
describe('devices on the face of a breast', () => {
  it.each([
    ['behind the beam', device(30, 43), ['S8']],
    ['nearer than an inch under the beam', device(8, 37), ['S8']],
    ['an inch under the beam', device(8, 36, { height: in_(5, 1, 2) }), []],
    ['behind the screen', device(30, 60), ['S8']],
    ['behind the screen, left open behind its bracket', device(30, 60, { fate: 'cut-through' }), []],
    ['left open behind the mantel is still covered', device(30, 43, { fate: 'cut-through' }), ['S8']],
    ['beside everything', device(1, 60), []],
    ['to be moved', device(30, 43, { fate: 'move' }), []],
    ['a gas tap behind the beam', device(30, 43, { what: 'gas-tap' }), ['S7']],
    ['a grille behind the screen', device(30, 60, { what: 'grille', fate: 'cut-through' }), ['S7']],
  ])('%s', (_says, row, expected) => {
    expect(codes(withDevice(row))).toEqual(expected)
  })

  it('names the smallest move: from 37 up, five high, down 1/2 to an inch under 42 1/2', () => {
    const [stop] = raised(withDevice(device(8, 37)))
    expect(stop?.todo).toContain('outlet down by 1/2 in')
    const [fix] = stop!.fixes
    expect(codes(withAnswer(withDevice(device(8, 37)), breastDevices, 'a', fix!.answers[0]!.value as never))).toEqual(
      [],
    )
  })

  it('a device to be moved is a call to its trade', () => {
    const calls = built(withDevice(device(30, 43, { what: 'gas-tap', fate: 'move' }))).trades
    expect(calls.map((c) => c.trade)).toEqual(['gas fitter'])
  })
})

describe('the cable of a screen', () => {
  const parts = (job: Job) => built(job).contribution.parts
  const through = screen.put(cable, 'a', 'through-mantel')

  it('goes through the top between end and first block, and out of one end, with an inch of wood all round', () => {
    const job = through.job
    const top = parts(job).find((p) => p.piece === 'top')!.cutOuts[0]!
    const block = parts(job).find((p) => p.piece === 'block')!
    const ledger = parts(job).find((p) => p.piece === 'ledger')!
    const ends = parts(job).filter((p) => p.piece === 'end')
    expect(ends.map((p) => [p.quantity, p.cutOuts.length])).toEqual([
      [1, 0],
      [1, 1],
    ])
    const hole = { from: inInches(top.x) + 4, to: inInches(top.x) + 4 + 2.375 }
    expect(hole.from - (5 + 0.75)).toBeGreaterThanOrEqual(1)
    expect(inInches(block.placement.x) - hole.to).toBeGreaterThanOrEqual(1)
    expect(inInches(top.z) - inInches(ledger.placement.dy)).toBeGreaterThanOrEqual(1)
    // Through the end: 3/4 of soffit, 5 1/4 of room, the hole in its middle.
    expect([ends[1]!.cutOuts[0]!.x, ends[1]!.cutOuts[0]!.z].map(inInches)).toEqual([2.5, 2.1875])
  })

  it('leaves by the side it goes to', () => {
    const at = (to: 'left' | 'right') =>
      parts(through.put(cableTo, 'a', to).job).find((p) => p.piece === 'top')!.cutOuts[0]!.x
    expect(at('left') + at('right') + in_(2, 3, 8)).toBe(in_(58))
  })

  it.each([
    ['a shallow mantel', through.put(mantelDepth, 'a', in_(6)), 'between ledger and frieze'],
    ['a low frieze', through.put(mantelFrieze, 'a', in_(4)), 'over its soffit'],
  ])('%s asks, and the duct clears it', (_says, put, where) => {
    const [tight] = raised(put.job)
    expect([tight?.code, tight?.short.includes(where)]).toEqual(['C8', true])
    expect(codes(withAnswer(put.job, cable, 'a', 'surface-duct'))).toEqual([])
  })

  it('never runs down inside masonry with a flue', () => {
    expect(codes(screen.put(cable, 'a', 'breast-void').job)).toEqual(['S26'])
    expect(codes(screen.put(cable, 'a', 'breast-void').put(fuel, 'a', 'none').job)).toEqual([])
  })
})

describe('a screen that does not hang right names where it does', () => {
  it.each([
    ['past the edge', [1, 54, 48, 27], 20],
    ['too low over the mantel', [9, 52, 48, 27], 20],
    ['too near the fire', [9, 54, 48, 27], 30],
  ] as const)('%s', (_says, four, heat) => {
    const job = screen
      .put(
        tvPlace,
        'a',
        four.map((n) => in_(n)),
      )
      .put(tvHeat, 'a', in_(heat)).job
    const [asked] = raised(job)
    expect(asked?.code).toBe('C8')
    const value = asked!.fixes[0]!.answers[0]!.value as never
    expect(codes(withAnswer(job, tvPlace, 'a', value))).toEqual([])
  })
})
