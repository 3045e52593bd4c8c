import { type Length, nanometres } from './length.ts'

/** A hair below a mark is the mark: 1 µm, because lines read between two surveyed heights are rounded to 1 nm. */
const HAIR = 1000

const downTo = (step: Length, v: Length): Length => nanometres(step * Math.floor((v + HAIR) / step))
const upTo = (step: Length, v: Length): Length => nanometres(step * Math.ceil((v - HAIR) / step))
/** Counted in halves of the step and only then turned into nanometres: half of 1/64 in is not a whole number of them. */
const downToHalf = (step: Length, v: Length): Length =>
  nanometres(Math.round((step * Math.floor((2 * (v + HAIR)) / step)) / 2))
const upToHalf = (step: Length, v: Length): Length =>
  nanometres(Math.round((step * Math.ceil((2 * (v - HAIR)) / step)) / 2))
const nearTo = (step: Length, v: Length): Length => nanometres(step * Math.floor(v / step + 1 / 2))

/**
 * Rounding to the job's cut step (what the tape shows), and to half of it.
 * - `down`: anything that must enter a fixed opening
 * - `up`: anything left long for trimming on site
 * - `near`: set-out heights and reported gaps
 */
export interface CutStep {
  readonly step: Length
  readonly down: (v: Length) => Length
  readonly up: (v: Length) => Length
  readonly near: (v: Length) => Length
  readonly downHalf: (v: Length) => Length
  readonly upHalf: (v: Length) => Length
}

/** Rounding functions for one cut step. */
export function cutStep(step: Length): CutStep {
  if (step <= 0) throw new RangeError('A cut step is longer than nothing.')
  return {
    step,
    down: (v) => downTo(step, v),
    up: (v) => upTo(step, v),
    near: (v) => nearTo(step, v),
    downHalf: (v) => downToHalf(step, v),
    upHalf: (v) => upToHalf(step, v),
  }
}
