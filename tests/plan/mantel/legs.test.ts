import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  clearanceRule,
  face,
  fuel,
  hearth,
  opening,
  paintFace,
  realMasonry,
} from '../../../src/job/chapters/firebox.ts'
import {
  hearthTop,
  legDepth,
  legWidth,
  mantelLegs,
  mantelLength,
  mantelUnderside,
} from '../../../src/job/chapters/mantel.ts'
import { breastSize, ceiling } from '../../../src/job/chapters/wall.ts'
import { type Job, withAnswer } from '../../../src/job/job.ts'
import { mantels } from '../../../src/plan/mantel/mantel.ts'
import { survey } from '../../../src/plan/survey/survey.ts'
import { NOT_MEASURED } from '../../../src/things/field.ts'
import { millimetres, ZERO } from '../../../src/units/length.ts'
import { contextOfJob, in_, inInches, inMm, wallOf } from '../run-for-test.ts'

const built = (job: Job) => {
  const context = contextOfJob(job)
  return mantels(context, survey(context))
}
const stops = (job: Job) =>
  built(job)
    .contribution.messages.filter((m) => m.weight === 'stop')
    .map((m) => m.code)

/** Opening x 20 to 52, top at 27, on a breast 72 wide; beam 59 long, so that a leg's outer edge stands at 6 1/2. */
const withLegs = wallOf('inch', ['breast'])
  .put(breastSize, 'a', [in_(72), in_(16)])
  .put(ceiling, 'a', [in_(96), in_(96)])
  .put(fuel, 'a', 'open-fire')
  .put(opening, 'a', [in_(20), ZERO, in_(32), in_(27)])
  .put(realMasonry, 'a', true)
  .put(clearanceRule, 'a', 'irc')
  .put(hearth, 'a', [in_(20), in_(14), in_(14)])
  .put(mantelLength, 'a', in_(61))
  .put(mantelUnderside, 'a', in_(40))
  .put(mantelLegs, 'a', true)
  .put(legWidth, 'a', in_(6))
  .put(legDepth, 'a', in_(0, 7, 8))

const piecesOf = (job: Job, side: 'left' | 'right') =>
  built(job).contribution.parts.filter((p) => p.id.startsWith(`a/mantel/leg-${side}/`))

/** Worked example, invented, computed by hand: flat pilaster x 6 1/2 to 12 1/2, p = 7/8. */
describe('a flat leg 7 1/2 beside the opening', () => {
  it('passes at 7/8 and at 15/16, stops at 1, and names 15/16', () => {
    expect(stops(withLegs.job)).toEqual([])
    expect(stops(withLegs.put(legDepth, 'a', in_(0, 15, 16)).job)).toEqual([])
    const deep = withLegs.put(legDepth, 'a', in_(1)).job
    const stop = built(deep).contribution.messages.find((m) => m.code === 'S14')
    expect(stop?.short).toBe(
      'The mantel’s left leg stands out 1 in, 7 1/2 in from the opening; allowed there: 15/16 in at most.',
    )
    expect(stop?.fixes[0]?.answers).toEqual([{ key: 'a.legDepth', value: in_(0, 15, 16) }])
    expect(stops(withAnswer(deep, legDepth, 'a', in_(0, 15, 16)))).toEqual([])
    expect(stops(withAnswer(deep, mantelLegs, 'a', false))).toEqual([])
    // 8 in away 1 in may stand out: the leg loses half an inch of its width.
    expect(stop?.fixes[1]?.answers).toEqual([{ key: 'a.legWidth', value: in_(5, 1, 2) }])
    expect(stops(withAnswer(deep, legWidth, 'a', in_(5, 1, 2)))).toEqual([])
  })

  it('is one board each side, packed out 1/8, left long at the foot', () => {
    const left = piecesOf(withLegs.job, 'left')
    expect(left.map((p) => [p.mark, p.piece, p.quantity])).toEqual([['M-E2', 'front', 1]])
    const [board] = left
    expect([board!.length, board!.width, board!.thickness, board!.roughLength].map(inInches)).toEqual([40, 6, 0.75, 41])
    expect(board!.details.join(' ')).toContain('Packed out 1/8 in')
    expect([board!.placement.x, board!.placement.y].map(inInches)).toEqual([6.5, 16.125])
    expect(piecesOf(withLegs.job, 'right').map((p) => p.mark)).toEqual(['M-E3'])
    expect(inInches(piecesOf(withLegs.job, 'right')[0]!.placement.x)).toBe(72 - 6.5 - 6)
  })
})

describe('a leg with sides', () => {
  const boxed = withLegs.put(clearanceRule, 'a', 'england').put(legDepth, 'a', in_(2)).put(legWidth, 'a', in_(5))
  it('gets a front, two sides and core blocks of what is left between them', () => {
    const sizes = Object.fromEntries(
      piecesOf(boxed.job, 'left').map((p) => [
        p.piece,
        [p.quantity, ...[p.length, p.width, p.thickness, p.roughLength, p.roughWidth].map(inInches)],
      ]),
    )
    // 2 − 3/4 = 1 1/4 behind the front; 5 − 2 × 3/4 = 3 1/2 between the sides; 40 / 16 = 2.5, so 3 blocks.
    expect(sizes).toEqual({
      front: [1, 40, 5, 0.75, 41, 5],
      side: [2, 40, 1.25, 0.75, 41, 1.5],
      core: [3, 3.5, 3.5, 1.25, 3.5, 3.5],
    })
  })
  it('stands on the hearth and is shorter by its height', () => {
    expect(inInches(piecesOf(boxed.put(hearthTop, 'a', in_(2)).job, 'left')[0]!.length)).toBe(38)
    // Short of the leg's outer edge the hearth does not carry it: it stands on the floor.
    const short = boxed.put(hearthTop, 'a', in_(2)).put(hearth, 'a', [in_(20), in_(13), in_(13)])
    const [front] = piecesOf(short.job, 'left')
    expect(inInches(front!.length)).toBe(40)
    expect(front!.details.join(' ')).toContain('over the hearth’s edge')
  })
  it('in millimetres', () => {
    const metric = wallOf('metric', ['breast'])
      .put(breastSize, 'a', [millimetres(1800), millimetres(400)])
      .put(opening, 'a', [millimetres(500), ZERO, millimetres(800), millimetres(700)])
      .put(fuel, 'a', 'open-fire')
      .put(clearanceRule, 'a', 'canada')
      .put(hearth, 'a', [millimetres(500), millimetres(400), millimetres(400)])
      .put(mantelUnderside, 'a', millimetres(1010))
      .put(mantelLegs, 'a', true).job
    const size = Object.fromEntries(
      piecesOf(metric, 'right').map((p) => [p.piece, [p.length, p.width, p.thickness].map(inMm)]),
    )
    // 38 mm out from 150 mm on: the beam ends 275 beyond the opening, the leg 125 wide stands 150 from it.
    expect(size).toEqual({ front: [1010, 125, 18], side: [1010, 20, 18], core: [89, 90, 20] })
  })
})

/** IRC R1001.10 (2006 to 2021): 864 sq in is large, 12 in at each side. */
describe('a leg and the hearth zone', () => {
  it.each([
    ['the stone reaches past the leg', 14, false],
    ['the stone covers the zone, the leg reaches beyond it onto the floor', 12, false],
    ['the stone ends inside the zone', 11, true],
    ['no stone at the sides', 0, true],
  ])('%s: %d in', (_says, side, stop) => {
    expect(stops(withLegs.put(hearth, 'a', [in_(20), in_(side), in_(side)]).job).includes('S12')).toBe(stop)
  })
  it('waits for a hearth nobody has measured', () => {
    const { parts } = built(withLegs.put(hearth, 'a', NOT_MEASURED as never).job).contribution
    expect(parts.filter((p) => p.waitsFor.includes('a.hearth')).map((p) => p.id)).toEqual([
      'a/mantel/leg-left/front',
      'a/mantel/leg-right/front',
    ])
  })
})

describe('legs in the rest of the plan', () => {
  it('close four edges, coat one face, and take their area off the painted face', () => {
    const { contribution, breasts } = built(withLegs.put(face, 'a', 'smooth').put(paintFace, 'a', true).job)
    expect(contribution.joints.filter((j) => j.id.includes('/leg-')).map((j) => inInches(j.length))).toEqual([
      40, 40, 40, 40,
    ])
    expect(piecesOf(withLegs.job, 'left')[0]?.coat).toEqual({ surface: 'built-in', faces: 1 })
    const without = built(withLegs.put(face, 'a', 'smooth').put(paintFace, 'a', true).put(mantelLegs, 'a', false).job)
      .breasts[0]!.paintedFace
    expect(without - breasts[0]!.paintedFace).toBeCloseTo((2 * 6 * 40 * 0.09290304) / 144, 9)
  })

  it('are none unasked, and as suggested they pass the fire', () => {
    const bare = withLegs.put(mantelLegs, 'a', undefined as never)
    expect(built(bare.job).breasts[0]?.mantel?.legs).toBeUndefined()
    fc.assert(
      fc.property(
        fc.integer({ min: 24, max: 44 }),
        fc.constantFrom('irc', 'irc-metric', 'nfpa-211', 'canada', 'england'),
        (wide, code) => {
          const job = wallOf('inch', ['breast'])
            .put(breastSize, 'a', [in_(84), in_(16)])
            .put(fuel, 'a', 'open-fire')
            .put(opening, 'a', [in_(20), ZERO, in_(wide), in_(27)])
            .put(clearanceRule, 'a', code)
            .put(hearth, 'a', [in_(24), in_(20), in_(20)])
            .put(mantelLegs, 'a', true).job
          expect(stops(job)).toEqual([])
        },
      ),
      { numRuns: 40 },
    )
  })
})
