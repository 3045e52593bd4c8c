import { describe, expect, it } from 'vitest'
import { boxWidths } from '../../../src/job/chapters/cabinets.ts'
import { returns, studs, wallKind, widths } from '../../../src/job/chapters/wall.ts'
import { type DeviceRow, devices } from '../../../src/job/chapters/wall-devices.ts'
import type { Job } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { in_, inInches, wallOf } from '../run-for-test.ts'

/** An alcove 40 wide: fillers of 1 in, two boxes of 19, boxes from 4 in up, sides 3/4. */
const alcove = wallOf('inch', ['alcove'])
  .put(widths, 'a', [{ height: in_(4), back: in_(40), front: in_(40) }])
  .put(returns, 'a', [in_(15), in_(15)])
  .put(wallKind, 'a', 'studs')
  .put(studs, 'a', [in_(8), in_(24)])
const outlet: DeviceRow = {
  what: 'outlet',
  wall: 'back',
  x: in_(8),
  z: in_(15),
  width: in_(3),
  height: in_(5),
  fate: 'keep',
}
const withDevice = (device: Partial<DeviceRow>) => alcove.put(devices, 'a', [{ ...outlet, ...device }])
const plan = (job: Job) => makePlan(job, 'quick')
const codes = (device: Partial<DeviceRow>) =>
  plan(withDevice(device).job)
    .messages.map((m) => m.code)
    .filter((c) => ['S6', 'S7', 'N7'].includes(c))

describe('a device behind a box', () => {
  const made = plan(withDevice({}).job)
  const box = made.boxes.boxes[0]!
  const back = made.parts.find((p) => p.id === 'a/box-1/back')!

  it('gets a cut-out with 1/8 in round it, from the back’s own edges', () => {
    const [cut] = back.cutOuts
    expect([cut!.width, cut!.height].map(inInches)).toEqual([3.25, 5.25])
    expect(inInches(cut!.x)).toBeCloseTo(inInches(outlet.x) - 1 / 8 - inInches(back.placement.x), 1)
    expect(inInches(cut!.z)).toBeCloseTo(inInches(outlet.z) - 1 / 8 - inInches(back.placement.z), 1)
    expect(codes({})).toEqual([])
  })

  it('is extended to the new face by an electrician: gap behind the box and its back (NEC 314.20: no set-back in wood)', () => {
    expect(made.devices.trades).toHaveLength(1)
    expect(made.devices.trades[0]!.says).toContain('extend the box to the new face by 1/2 in (licensed electrician)')
    expect(inInches(box.backGap)).toBe(0.25)
  })

  it('that moves leaves no cut-out and calls its trade', () => {
    const moved = plan(withDevice({ fate: 'move', what: 'gas-tap' }).job)
    expect(moved.devices.cutOuts.size).toBe(0)
    expect(moved.devices.trades[0]!.trade).toBe('gas fitter')
  })

  it('is refused under the boxes’ foot, and a covered grille or gas tap too', () => {
    expect(codes({ z: in_(2) })).toEqual(['S7'])
    expect(codes({ what: 'grille' })).toEqual(['S7'])
    expect(codes({ what: 'grille', fate: 'cut-through' })).toEqual([])
  })

  it('meets a side, a filler, the bottom', () => {
    expect(codes({ x: in_(17) })).toEqual(['S6'])
    expect(codes({ x: in_(37), width: in_(3) })).toContain('S6')
    expect(codes({ z: in_(5) })).toContain('S6')
  })

  it('offers other box widths that clear it', () => {
    const put = withDevice({ x: in_(17) })
    const stop = plan(put.job).messages.find((m) => m.code === 'S6')!
    const answer = stop.fixes[0]!.answers[0]!
    expect(answer.key).toBe('a.boxWidths')
    const after = plan(put.put(boxWidths, 'a', answer.value as never).job)
    expect(after.messages.filter((m) => m.code === 'S6' || m.code === 'S1')).toEqual([])
  })

  it('across the nailer leaves a note', () => {
    expect(codes({ z: in_(28), height: in_(3) })).toContain('N7')
  })
})

describe('a device on a return', () => {
  it('gets its cut-out in the box side there', () => {
    const made = plan(withDevice({ wall: 'left', x: in_(5) }).job)
    const side = made.parts.find((p) => p.id === 'a/box-1/side-left')!
    expect(side.cutOuts).toHaveLength(1)
    expect(inInches(side.cutOuts[0]!.x)).toBeCloseTo(5 - 1 / 8 - inInches(side.placement.y), 1)
    expect(made.devices.trades[0]!.says).toContain('by 1 3/4 in')
  })
  it('beyond the boxes does not matter', () => {
    expect(codes({ wall: 'right', x: in_(16) })).toEqual([])
  })
})

describe('a device at the counter', () => {
  const top = plan(alcove.job).slots.runs[0]!.z1

  it.each([
    ['between box top and counter top', inInches(top) + 0.25],
    ['at the box top', inInches(top)],
  ])('%s is not covered: S6, with how far up or down', (_where, z) => {
    const made = plan(withDevice({ z: in_(z) }).job)
    const stop = made.messages.find((m) => m.code === 'S6')
    expect(stop?.short).toMatch(/counter/)
    expect(stop?.todo).toMatch(/moved up by .* or down by/)
  })

  it('above the counter nothing is said', () => {
    expect(codes({ z: in_(inInches(top) + 1) })).toEqual([])
  })
  it('on a return, under the counter, it is stopped too', () => {
    expect(codes({ wall: 'left', x: in_(4), z: in_(inInches(top) + 0.25) })).toEqual(['S6'])
  })
})
