import { describe, expect, it } from 'vitest'
import { boxDepth, runLength } from '../../../src/job/chapters/cabinets.ts'
import {
  clearanceRule,
  fuel,
  hearth,
  linings,
  manualClearances,
  manualModel,
  opening,
  realMasonry,
} from '../../../src/job/chapters/firebox.ts'
import {
  baseboard,
  breastSize,
  ceiling,
  flatEnds,
  flatLength,
  returns,
  widths,
} from '../../../src/job/chapters/wall.ts'
import { type Job, withAnswer } from '../../../src/job/job.ts'
import { makePlan } from '../../../src/plan/plan.ts'
import { NOT_MEASURED } from '../../../src/things/field.ts'
import { type Length, ZERO } from '../../../src/units/length.ts'
import { in_, wallOf } from '../run-for-test.ts'

const codes = (job: Job) => [...new Set(makePlan(job, 'quick').messages.map((m) => m.code))]
const messagesOf = (job: Job, code: string) => makePlan(job, 'quick').messages.filter((m) => m.code === code)

/** An alcove 41 wide and 16 deep, left of a breast 66 wide that stands out 16; nothing else near. */
const wall = wallOf('inch', ['alcove', 'breast'])
  .put(widths, 'a', [{ height: ZERO, back: in_(41), front: in_(41), left: ZERO, right: ZERO }])
  .put(returns, 'a', [in_(16), in_(16)])
  .put(ceiling, 'a', [in_(96)])
  .put(baseboard, 'a', [ZERO, ZERO])
  .put(breastSize, 'b', [in_(66), in_(16)])
  .put(fuel, 'b', 'open-fire')
  .put(realMasonry, 'b', true)
  .put(clearanceRule, 'b', 'irc')
  .put(hearth, 'b', [in_(20), in_(12), in_(12)])
const openingAt = (x: number, width: number, height: number): readonly Length[] => [
  in_(x),
  ZERO,
  in_(width),
  in_(height),
]

/**
 * IRC R1001.10 (2006 to 2021): 8 in beside an opening under 6 sq ft (864 sq in), 12 in from there on.
 * The filler at the return is the outermost wood, 1/16 in off the breast's edge; the box starts 1 1/2 in further away.
 */
describe('hearth zone beside an opening', () => {
  it.each([
    ['720 sq in, 5 in from the edge: box and filler', 17, openingAt(5, 36, 20), true],
    ['720 sq in, 7 in from the edge: the filler alone', 17, openingAt(7, 36, 20), true],
    ['720 sq in, 8 in from the edge', 17, openingAt(8, 36, 20), false],
    ['810 sq in, 6 in from the edge', 20, openingAt(6, 30, 27), true],
    ['810 sq in, 14 in from the edge', 20, openingAt(14, 30, 27), false],
    ['864 sq in, 11 in from the edge: the filler alone', 20, openingAt(11, 32, 27), true],
    ['864 sq in, 12 in from the edge', 20, openingAt(12, 32, 27), false],
    ['boxes behind the breast face', 14, openingAt(2, 30, 27), false],
  ])('%s', (_words, deep, four, stops) => {
    const job = wall.put(boxDepth, 'a', in_(deep)).put(opening, 'b', four).job
    expect(codes(job).includes('S12')).toBe(stops)
  })

  it('counts on the right of the breast too', () => {
    const right = wallOf('inch', ['breast', 'alcove'])
      .put(widths, 'b', [{ height: ZERO, back: in_(41), front: in_(41), left: ZERO, right: ZERO }])
      .put(returns, 'b', [in_(16), in_(16)])
      .put(breastSize, 'a', [in_(60), in_(16)])
      .put(fuel, 'a', 'open-fire')
      .put(clearanceRule, 'a', 'irc')
      .put(boxDepth, 'b', in_(17))
    expect(codes(right.put(opening, 'a', openingAt(17, 36, 20)).job)).toContain('S12')
    expect(codes(right.put(opening, 'a', openingAt(16, 36, 20)).job)).not.toContain('S12')
  })

  it('is cleared by the depth it names', () => {
    const job = wall.put(boxDepth, 'a', in_(17)).put(opening, 'b', openingAt(7, 36, 20)).job
    const [stop] = messagesOf(job, 'S12')
    const answer = stop!.fixes[0]!.answers[0]!
    expect(answer.key).toBe('a.boxDepth')
    expect(codes(withAnswer(job, boxDepth, 'a', answer.value as Length))).not.toContain('S12')
  })
})

/** IRC R1001.11 exception 4 (2006 to 2021): no wood within 6 in, to 12 in no further out than 1/8 in for each inch. */
describe('wood of the neighbouring bay beside an opening', () => {
  const proud = wall.put(boxDepth, 'a', in_(17))
  it.each([
    // Filler 1 1/4 out and doors 2 1/16 out of a 16 in face; filler at the return, doors 1 1/2 further away.
    ['filler 5 in away: no wood at all', openingAt(5, 36, 20), true],
    ['filler 9 in away: 1 1/8 at most', openingAt(9, 36, 20), true],
    ['filler 10 in away passes, doors 11 1/2 away do not: 1 7/16 at most', openingAt(10, 36, 20), true],
    ['filler 11 in away: 1 3/8; doors beyond 12', openingAt(11, 36, 20), false],
  ])('%s', (_words, four, stops) => {
    expect(codes(proud.put(opening, 'b', four).job).includes('S14')).toBe(stops)
  })

  it('keeps the sides an appliance’s manual names (IRC R1004.1, 2018 to 2024), and how far out it lets wood stand', () => {
    const gas = proud.put(fuel, 'b', 'gas').put(manualModel, 'b', 'model 4, edition 2')
    const at = (sides: number, out: number) =>
      codes(
        gas.put(opening, 'b', openingAt(13, 36, 20)).put(manualClearances, 'b', [in_(12), in_(sides), in_(out)]).job,
      )
    expect(at(14, 10)).toContain('S14')
    expect(at(12, 10)).not.toContain('S14')
    expect(at(12, 1)).toContain('S14')
  })

  it('is cleared by the depth it names', () => {
    const job = proud.put(opening, 'b', openingAt(10, 36, 20)).job
    const [stop] = messagesOf(job, 'S14')
    expect(stop?.part).toMatch(/^a\//)
    const answer = stop!.fixes[0]!.answers[0]!
    const nearer = withAnswer(job, boxDepth, 'a', answer.value as Length)
    expect(codes(nearer)).not.toContain('S14')
  })
})

describe('a fire nobody has measured', () => {
  const proud = wall.put(boxDepth, 'a', in_(17)).put(opening, 'b', openingAt(14, 36, 20))
  const notYet = (field: typeof fuel | typeof opening | typeof breastSize) =>
    proud.put(field as typeof fuel, 'b', NOT_MEASURED as never).job

  it.each([
    ['fuel', fuel],
    ['opening', opening],
    ['breastSize', breastSize],
  ])('what stands out waits for %s, and it is asked about', (id, field) => {
    const { parts, messages } = makePlan(notYet(field as typeof fuel), 'quick')
    const held = parts.filter((p) => p.bay === 'a' && p.waitsFor.includes(`b.${id}`)).map((p) => p.name)
    expect(held).toEqual(expect.arrayContaining(['wall filler', 'side']))
    expect(messages.filter((m) => m.code === 'C14' && m.about === 'a.boxDepth')).toHaveLength(1)
  })

  it('counts as an open fire with a wide opening in the middle: a narrow breast stops', () => {
    const narrow = proud
      .put(breastSize, 'b', [in_(50), in_(16)])
      .put(opening, 'b', NOT_MEASURED as never)
      .put(fuel, 'b', NOT_MEASURED as never)
    expect(codes(narrow.job)).toContain('S12')
  })

  it('boxes behind the breast wait for nothing of it', () => {
    const behind = withAnswer(notYet(opening), boxDepth, 'a', in_(14))
    const { parts } = makePlan(behind, 'quick')
    const held = parts.filter((p) => p.bay === 'a' && p.waitsFor.includes('b.opening')).map((p) => p.name)
    // Shelf heights are lined up with the mantel, whose height rests on the opening.
    expect(held.filter((name) => !name.startsWith('shelf'))).toEqual([])
  })

  it('on a flat wall all wood waits until the breast is measured', () => {
    const flat = wallOf('inch', ['flat', 'breast'])
      .put(flatLength, 'a', in_(60))
      .put(flatEnds, 'a', 'left')
      .put(runLength, 'a', in_(40))
      .put(fuel, 'b', 'open-fire')
    const { parts } = makePlan(flat.job, 'quick')
    const own = parts.filter((p) => p.bay === 'a')
    expect(own.length).toBeGreaterThan(0)
    expect(own.every((p) => p.waitsFor.includes('b.breastSize'))).toBe(true)
  })
})

/** IRC R1001.11 exceptions 2 and 3 (2012), R1001.15: 2 in off the sides, or 12 in from the inside of the lining. */
describe('wood against the side of the breast', () => {
  const beside = wall.put(opening, 'b', openingAt(16, 34, 30))
  it.each([
    ['open-fire', true, true],
    ['stove', true, true],
    ['stove', NOT_MEASURED, true],
    ['stove', false, false],
    ['gas', true, true],
    ['electric', true, false],
    ['none', true, false],
  ] as const)('%s, real masonry %s: asked %s', (burning, masonry, asks) => {
    const job = beside.put(fuel, 'b', burning).put(realMasonry, 'b', masonry as boolean).job
    expect(codes(job).includes('C12')).toBe(asks)
  })

  it('names each kind of piece with its gap, what is known of the masonry, and how far to move', () => {
    const [asked] = messagesOf(beside.job, 'C12')
    expect(asked?.about).toBe('b.linings')
    expect(asked?.todo).toContain('wall filler')
    expect(asked?.why).toContain('left, firebox 16 in to the opening’s edge, flue not measured')
    expect(asked?.todo).toContain('end these pieces 2 in off')
  })

  it.each([
    ['12 in of masonry everywhere: nothing to ask', [12, 12, 12, 12], [false, false]],
    ['a thin flue stops what stands above the opening', [12, 12, 8, 12], [false, true]],
    ['a thin firebox stops what stands beside it', [8, 12, 12, 12], [false, true]],
    ['only the other side is thin', [12, 8, 12, 8], [false, false]],
  ] as const)('%s', (_says, four, [asks, stops]) => {
    const found = codes(
      beside.put(
        linings,
        'b',
        four.map((n) => in_(n)),
      ).job,
    )
    expect([found.includes('C12'), found.includes('S26')]).toEqual([asks, stops])
  })
})
