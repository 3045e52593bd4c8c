import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  cable,
  clearanceRule,
  face,
  fuel,
  hearth,
  manualClearances,
  manualModel,
  opening,
  paintFace,
  paintHeat,
  realMasonry,
  tv,
  tvHeat,
  tvPlace,
} from '../../../src/job/chapters/firebox.ts'
import {
  mantel,
  mantelDepth,
  mantelFrieze,
  mantelLayers,
  mantelLength,
  mantelUnderside,
} from '../../../src/job/chapters/mantel.ts'
import { breastSize, ceiling } from '../../../src/job/chapters/wall.ts'
import { type Job, withAnswer } from '../../../src/job/job.ts'
import { mantels } from '../../../src/plan/mantel/mantel.ts'
import { survey } from '../../../src/plan/survey/survey.ts'
import { NOT_MEASURED } from '../../../src/things/field.ts'
import { inches, ZERO } from '../../../src/units/length.ts'
import { contextOfJob, in_, inInches, wallOf } from '../run-for-test.ts'

const built = (job: Job) => {
  const context = contextOfJob(job)
  return { ...mantels(context, survey(context)), used: context.settle.used }
}
/** Stops and confirms; that a deep mantel hangs lower than some fitters keep it is noted for most of these. */
const asked = (job: Job) => built(job).contribution.messages.filter((m) => m.weight !== 'note')
const codes = (job: Job) => asked(job).map((m) => m.code)

/** A masonry breast 66 wide, opening x 16 to 50, top at 30. */
const breast = wallOf('inch', ['breast'])
  .put(breastSize, 'a', [in_(66), in_(16)])
  .put(ceiling, 'a', [in_(96), in_(96)])
  .put(fuel, 'a', 'open-fire')
  .put(opening, 'a', [in_(16), ZERO, in_(34), in_(30)])
  .put(realMasonry, 'a', true)
  .put(clearanceRule, 'a', 'irc')
  .put(hearth, 'a', [in_(20), in_(12), in_(12)])
  .put(paintHeat, 'a', ZERO)

describe('the suggested mantel', () => {
  it('8 deep over an opening to 30: underside at 42 1/2, the next half inch past 12 in', () => {
    const { breasts, mantelTop } = built(breast.job)
    const size = breasts[0]!.mantel!
    expect([size.length, size.depth, size.underside, size.top].map(inInches)).toEqual([58, 8, 42.5, 50])
    expect(mantelTop).toBe(in_(50))
    expect([size.x, size.beamX, size.beamLength, size.beamDepth].map(inInches)).toEqual([4, 5, 56, 7])
    expect(codes(breast.job)).toEqual([])
  })

  it('never stands too close, whatever the opening, depth and code', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 40 }),
        fc.integer({ min: 4, max: 24 }),
        fc.integer({ min: 3, max: 12 }),
        fc.constantFrom('irc', 'irc-metric', 'nfpa-211', 'canada', 'central-europe', 'england', 'unknown'),
        (high, deep, frieze, code) => {
          const job = breast
            .put(opening, 'a', [in_(16), ZERO, in_(34), in_(high)])
            .put(mantelDepth, 'a', in_(deep))
            .put(mantelFrieze, 'a', in_(frieze))
            .put(clearanceRule, 'a', code as 'irc').job
          expect(codes(job)).not.toContain('S14')
        },
      ),
      { numRuns: 60 },
    )
  })
})

describe('a mantel too close to the fire', () => {
  it('stops beam and top, names the height that passes, and one fix clears it', () => {
    const low = breast.put(mantelUnderside, 'a', in_(34)).job
    const stops = built(low).contribution.messages.filter((m) => m.code === 'S14')
    expect(stops.map((s) => s.short)).toEqual([
      'The mantel’s beam (frieze, ends, soffit) stands out 7 in, 4 in from the opening; allowed there: no wood at all.',
      'The mantel’s top stands out 8 in, 10 in from the opening; allowed there: 1 1/4 in at most.',
    ])
    const answer = stops[0]!.fixes[0]!.answers[0]!
    expect(answer).toEqual({ key: 'a.mantelUnderside', value: in_(42, 1, 2) })
    expect(codes(withAnswer(low, mantelUnderside, 'a', answer.value as never))).toEqual([])
  })

  it('raising it from there never brings the stop back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }), (a, b) => {
        const at = (n: number) => codes(breast.put(mantelUnderside, 'a', inches(30, n, 16)).job).includes('S14')
        const [low, high] = [Math.min(a, b), Math.max(a, b)]
        expect(at(high) && !at(low)).toBe(false)
      }),
    )
  })
})

describe('what nobody has confirmed', () => {
  it('masonry, hearth and code ask once each; a framed breast stops', () => {
    const bare = breast
      .put(realMasonry, 'a', 'not measured' as never)
      .put(hearth, 'a', 'not measured' as never)
      .put(clearanceRule, 'a', 'unknown').job
    expect(codes(bare)).toEqual(['C14', 'C14', 'C14'])
    expect(codes(breast.put(realMasonry, 'a', false).job)).toContain('S15')
  })

  /** IRC R1001.10 (2006 to 2021): 1020 sq in is over 6 sq ft, 20 in in front and 12 at each side. */
  it('a hearth smaller than the code asks is said with what is missing', () => {
    const says = (four: readonly [number, number, number]) =>
      asked(
        breast.put(
          hearth,
          'a',
          four.map((n) => in_(n)),
        ).job,
      ).map((m) => m.short)
    expect(says([16, 12, 12])).toEqual(['The hearth is smaller than the code asks: 16 in in front, 4 in short.'])
    expect(says([20, 8, 12])).toEqual(['The hearth is smaller than the code asks: 8 in at the left, 4 in short.'])
    expect(says([20, 12, 12])).toEqual([])
  })

  it('an appliance without its manual stops; with it the larger of manual and code counts', () => {
    const gas = breast.put(fuel, 'a', 'gas')
    expect(codes(gas.job)).toEqual(['S15', 'S15'])
    const read = gas.put(manualModel, 'a', 'model 4, edition 2').put(manualClearances, 'a', [in_(18), in_(6), in_(10)])
    expect(codes(read.job)).toEqual([])
    expect(built(read.job).breasts[0]!.mantel!.underside).toBe(in_(48))
    expect(codes(read.put(mantelUnderside, 'a', in_(45)).job)).toContain('S14')
  })

  it('parts wait for a fuel or an opening nobody has looked at', () => {
    const { contribution } = built(breast.put(opening, 'a', 'not measured' as never).job)
    expect(contribution.parts.every((p) => p.waitsFor.includes('a.opening'))).toBe(true)
  })
})

describe('its parts', () => {
  it('share one mark, and the layers are coated as one slab', () => {
    const { parts } = built(breast.put(mantelLayers, 'a', 3).job).contribution
    expect(new Set(parts.map((p) => p.mark))).toEqual(new Set(['M-E1']))
    const layers = parts.filter((p) => p.piece === 'top')
    expect(layers.reduce((n, p) => n + p.quantity, 0)).toBe(3)
    expect(layers.reduce((n, p) => n + p.quantity * (p.coat?.faces ?? 0), 0)).toBe(2)
    const size = (piece: string) => {
      const part = parts.find((p) => p.piece === piece)!
      return [part.length, part.width, part.thickness].map(inInches)
    }
    expect(size('top')).toEqual([58, 8, 0.75])
    expect(size('frieze')).toEqual([56, 6, 0.75])
    expect(size('end')).toEqual([6.25, 6, 0.75])
    expect(size('soffit')).toEqual([54.5, 6.25, 0.75])
    expect(size('ledger')).toEqual([54.25, 3.5, 1.5])
    expect(size('block')).toEqual([4.75, 3.5, 1.5])
  })

  it('none without a mantel; too shallow a one stops; too long a one asks', () => {
    expect(built(breast.put(mantel, 'a', false).job).contribution.parts).toEqual([])
    expect(codes(breast.put(mantelDepth, 'a', in_(3)).job)).toContain('S9')
    expect(codes(breast.put(mantelLength, 'a', in_(66)).job)).toContain('C7')
    expect(codes(breast.put(mantelLength, 'a', in_(65)).job)).not.toContain('C7')
  })
})

describe('face and screen', () => {
  it('paints the face without opening and mantel, brick counted 1.2', () => {
    const area = built(breast.put(face, 'a', 'brick').put(mantel, 'a', false).job).breasts[0]!.paintedFace
    expect(area).toBeCloseTo(((66 * 96 - 34 * 30) / 144) * 0.09290304 * 1.2, 9)
    expect(built(breast.put(paintFace, 'a', false).job).breasts[0]!.paintedFace).toBe(0)
  })

  it('keeps the paint off the fire as far as its tin says, within the face; asks while nobody has read it', () => {
    const bare = breast.put(face, 'a', 'smooth').put(mantel, 'a', false)
    const painted = (kept: number) => built(bare.put(paintHeat, 'a', in_(kept)).job).breasts[0]!.paintedFace
    // 4 in at each side and over it: 42 × 34 stays bare; 20 in reaches past both edges of the face: 66 × 50.
    expect(painted(4)).toBeCloseTo(((66 * 96 - 42 * 34) / 144) * 0.09290304, 9)
    expect(painted(20)).toBeCloseTo(((66 * 96 - 66 * 50) / 144) * 0.09290304, 9)
    expect(codes(withAnswer(bare.job, paintHeat, 'a', undefined))).toEqual(['C17'])
    // Round the opening 2 × (34 + 30), both edges 2 × 96.
    expect(built(bare.job).breasts[0]!.masking[0]).toContain('320 in')
  })

  const screen = breast
    .put(tv, 'a', true)
    .put(tvPlace, 'a', [in_(9), in_(54), in_(48), in_(27)])
    .put(tvHeat, 'a', in_(20))
  it('asks about a screen past the edge, too low over the mantel, or too near the fire', () => {
    expect(codes(screen.job)).toEqual([])
    expect(codes(screen.put(tvPlace, 'a', [in_(1), in_(54), in_(48), in_(27)]).job)).toEqual(['C8'])
    expect(codes(screen.put(tvPlace, 'a', [in_(9), in_(52), in_(48), in_(27)]).job)).toEqual(['C8'])
    expect(codes(screen.put(tvHeat, 'a', in_(30)).job)).toEqual(['C8'])
    expect(codes(screen.put(tvHeat, 'a', 'not measured' as never).job)).toEqual(['C8'])
  })

  it('takes the cable through every layer of the top, before the ledger; asks where there is no room', () => {
    const deep = screen.put(mantelDepth, 'a', in_(9)).put(cable, 'a', 'through-mantel')
    const top = built(deep.job).contribution.parts.find((p) => p.piece === 'top')!
    expect(top.cutOuts.map((c) => [c.z, c.width].map(inInches))).toEqual([[2.5, 2.375]])
    expect(top.waitsFor).toEqual([])
    const unplaced = built(deep.put(tvPlace, 'a', NOT_MEASURED as never).job).contribution.parts
    const waiting = unplaced.filter((p) => p.waitsFor.includes('a.tvPlace'))
    expect(waiting.map((p) => p.id)).toEqual(['a/mantel/top', 'a/mantel/end-cable'])
    expect(codes(screen.put(mantelDepth, 'a', in_(6)).put(cable, 'a', 'through-mantel').job)).toContain('C8')
  })
})
