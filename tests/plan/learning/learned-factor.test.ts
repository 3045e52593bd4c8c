import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../../src/figures/figures.ts'
import { jobVariance, learnedFactor, posterior, USUAL_SCATTER } from '../../../src/plan/learning/learned-factor.ts'
import { learnedFigures } from '../../../src/plan/learning/learned-figures.ts'
import { learningMessages } from '../../../src/plan/learning/learning-messages.ts'

const job = (estimated: number, actual: number) => ({ estimated, actual })

describe('worked example (invented, computed by hand): 10 → 12 h and 6 → 9 h', () => {
  const closed = [job(10, 12), job(6, 9)]
  const logs = closed.map((j) => Math.log(j.actual / j.estimated))

  it('x = 0.18232 and 0.40547; σ² = (0.25 + 0.02490) / 5 = 0.05498; v = 0.02106, m = 0.22513', () => {
    expect(logs.map((x) => x.toFixed(5))).toEqual(['0.18232', '0.40547'])
    const variance = jobVariance({ logs, job: 0.25 })
    expect(variance.toFixed(5)).toBe('0.05498')
    const after = posterior({ logs, variance, prior: 0.3 })
    expect(after.variance.toFixed(5)).toBe('0.02106')
    expect(after.mean.toFixed(5)).toBe('0.22513')
  })

  it('factor 1.2525, 80 % range 1.040 to 1.508', () => {
    const learned = learnedFactor(closed)
    expect(learned.factor.toFixed(4)).toBe('1.2525')
    expect(learned.range.map((r) => r.toFixed(3))).toEqual(['1.040', '1.508'])
    expect(learned).toMatchObject({ jobs: 2, clipped: [] })
  })
})

describe('ratios 1.20, 0.95, 1.35 with prior 0.25 and scatter 0.30 (normal-normal result, from memory; computed)', () => {
  const logs = [1.2, 0.95, 1.35].map(Math.log)
  const of = (some: readonly number[]) => posterior({ logs: some, variance: 0.3 ** 2, prior: 0.25 })

  it('mean 0.097101994, variance 3/148, next job’s sd 0.332069677', () => {
    expect(of(logs).mean).toBeCloseTo(0.097_101_994, 8)
    expect(of(logs).variance).toBeCloseTo(3 / 148, 9)
    expect(Math.sqrt(of(logs).variance + 0.09)).toBeCloseTo(0.332_069_677, 8)
    expect(10 * Math.exp(of(logs).mean)).toBeCloseTo(11.019_728, 5)
  })

  it('one job at 1.20 alone pulls to 1.077584, not to 1.20', () =>
    expect(Math.exp(of(logs.slice(0, 1)).mean)).toBeCloseTo(1.077_584, 6))
})

describe('any closed jobs', () => {
  const ratio = fc.double({ min: 0.05, max: 20, noNaN: true })
  const jobs = fc.array(
    ratio.map((r) => job(10, 10 * r)),
    { maxLength: 12 },
  )

  it('none: factor 1 within the prior, not yet yours', () => {
    const learned = learnedFactor([])
    expect(learned).toMatchObject({ jobs: 0, factor: 1, clipped: [] })
    expect(learned.range[1]).toBeCloseTo(Math.exp(1.2816 * USUAL_SCATTER.prior), 12)
  })

  it('the factor lies between 1 and the jobs’ own mean, within its range, and that within the next job’s', () => {
    fc.assert(
      fc.property(jobs, (closed) => {
        const { factor, range, nextJob } = learnedFactor(closed)
        const clip = (x: number) => Math.max(-Math.log(3), Math.min(Math.log(3), x))
        const mean =
          closed.reduce((sum, j) => sum + clip(Math.log(j.actual / j.estimated)), 0) / Math.max(1, closed.length)
        expect(Math.abs(Math.log(factor))).toBeLessThanOrEqual(Math.abs(mean) + 1e-12)
        expect(Math.log(factor) * mean).toBeGreaterThanOrEqual(-1e-12)
        expect(nextJob[0]).toBeLessThanOrEqual(range[0])
        expect(range[0]).toBeLessThanOrEqual(factor)
        expect(factor).toBeLessThanOrEqual(range[1])
        expect(range[1]).toBeLessThanOrEqual(nextJob[1])
      }),
    )
  })

  it('the order of the jobs does not matter, and three more of the same narrow the range', () => {
    fc.assert(
      fc.property(jobs, (closed) => {
        expect(learnedFactor(closed.toReversed()).factor).toBeCloseTo(learnedFactor(closed).factor, 9)
      }),
    )
    const width = (n: number) => {
      const { range } = learnedFactor(Array.from({ length: n }, () => job(10, 12)))
      return range[1] / range[0]
    }
    expect(width(4)).toBeLessThan(width(1))
  })

  it('a job off by more than three times counts as three times and is said', () => {
    const closed = [job(10, 12), job(2, 20)]
    const learned = learnedFactor(closed)
    expect(learned.clipped).toEqual([1])
    expect(learned.factor).toBeCloseTo(learnedFactor([job(10, 12), job(2, 6)]).factor, 12)
    const [said] = learningMessages('Boxes', { closed, learned, about: 'job.dayHours' })
    expect(said?.short).toBe('Boxes: 20 against 2 estimated counted as three times or a third of the estimate.')
    expect(learningMessages('Boxes', { closed: [], learned: learnedFactor([]), about: 'job.dayHours' })).toEqual([])
  })
})

describe('figures corrected by a factor', () => {
  it('the figure named is multiplied, every other stays', () => {
    const usual = figuresIn('inch')
    const learned = learnedFigures(usual, { 'rate.box': 1.25 })
    expect(learned.number('rate.box')).toBeCloseTo(usual.number('rate.box') * 1.25, 12)
    expect(learned.number('rate.sheet')).toBe(usual.number('rate.sheet'))
    expect(learned.length('filler.nominal')).toBe(usual.length('filler.nominal'))
  })
})
