import { formula } from '../../things/formula.ts'

/** One closed job: hours (or money, or sheets) as estimated with the default rate, and as they were. Both above 0. */
export interface Closed {
  readonly estimated: number
  readonly actual: number
}

/** Scatter of ln(actual / estimated): of the trade's factors about 1 (prior), and of one person's jobs about his own. */
export interface Scatter {
  readonly prior: number
  readonly job: number
}

/** Common practice, no source. */
export const USUAL_SCATTER: Scatter = { prior: 0.3, job: 0.25 }

/** What closed jobs teach of one rate. */
export interface Learned {
  /** How many closed jobs it rests on; 0: not yet yours. */
  readonly jobs: number
  readonly factor: number
  /** 80 % range of the factor itself, and of the next job's ratio. */
  readonly range: readonly [least: number, most: number]
  readonly nextJob: readonly [least: number, most: number]
  /** Jobs whose ratio was taken as 3 or a third, by their place in the list. */
  readonly clipped: readonly number[]
}

/** Beyond three times or a third, a job says more about the job than about the rate. */
const MOST_LOG = Math.log(3)
/** The usual scatter counts as much as four jobs. */
const PRIOR_JOBS = 4
/** 90 % point of the normal distribution: an 80 % range leaves a tenth at each end. */
const NORMAL_90 = 1.2816

/** Variance of one job's ln ratio: the usual one, corrected by the scatter of the jobs at hand. */
export const jobVariance = formula(
  {
    id: 'learning.variance',
    plain:
      '(4 × usual scatter² + sum of (ln ratio − their mean)²) / (4 + jobs − 1); usual scatter² for one job or none',
    source: 'normal-normal estimate; scatter is common practice, no source',
    gives: 'number',
    units: { logs: 'number', job: 'number' },
  },
  (of: { readonly logs: readonly number[]; readonly job: number }): number => {
    const n = of.logs.length
    if (n <= 1) return of.job ** 2
    const mean = of.logs.reduce((sum, x) => sum + x, 0) / n
    const squares = of.logs.reduce((sum, x) => sum + (x - mean) ** 2, 0)
    return (PRIOR_JOBS * of.job ** 2 + squares) / (PRIOR_JOBS + n - 1)
  },
)

/** Mean and variance of the ln factor after some jobs: v = 1 / (n / σ² + 1 / prior²), m = v × Σx / σ². */
export const posterior = formula(
  {
    id: 'learning.posterior',
    plain:
      'variance = 1 / (jobs / job variance + 1 / prior scatter²); mean = variance × sum of ln ratios / job variance',
    source: 'normal prior, normal jobs: standard result, from memory',
    gives: 'number',
    units: { logs: 'number', variance: 'number', prior: 'number' },
  },
  (of: {
    readonly logs: readonly number[]
    readonly variance: number
    readonly prior: number
  }): { readonly mean: number; readonly variance: number } => {
    const variance = 1 / (of.logs.length / of.variance + 1 / of.prior ** 2)
    return { variance, mean: (variance * of.logs.reduce((sum, x) => sum + x, 0)) / of.variance }
  },
)

/** The factor by which closed jobs correct a default: of hours, of prices paid, of sheets used. */
export function learnedFactor(closed: readonly Closed[], scatter: Scatter = USUAL_SCATTER): Learned {
  const ratios = closed.map(({ estimated, actual }) => Math.log(actual / estimated))
  const logs = ratios.map((x) => Math.max(-MOST_LOG, Math.min(MOST_LOG, x)))
  const variance = jobVariance({ logs, job: scatter.job })
  const { mean, variance: spread } = posterior({ logs, variance, prior: scatter.prior })
  return {
    jobs: closed.length,
    factor: Math.exp(mean),
    range: rangeOf(mean, spread),
    nextJob: rangeOf(mean, spread + variance),
    clipped: ratios.flatMap((x, i) => (x === logs[i] ? [] : [i])),
  }
}

const rangeOf = (mean: number, variance: number): readonly [number, number] => {
  const half = NORMAL_90 * Math.sqrt(variance)
  return [Math.exp(mean - half), Math.exp(mean + half)]
}
