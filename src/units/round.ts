import { type Length, nanometres } from './length.ts'

/** A hair below a mark is the mark: 1 µm, because lines read between two surveyed heights are rounded to 1 nm. */
const HAIR = 1000

const downTo = (step: Length, v: Length): Length => nanometres(step * Math.floor((v + HAIR) / step))
const upTo = (step: Length, v: Length): Length => nanometres(step * Math.ceil((v - HAIR) / step))
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

/** Rounding functions for one cut step. `step` must be an even number of nanometres so that its half is whole. */
export function cutStep(step: Length): CutStep {
  if (step <= 0) throw new RangeError('A cut step is longer than nothing.')
  const half = nanometres(Math.round(step / 2))
  return {
    step,
    down: (v) => downTo(step, v),
    up: (v) => upTo(step, v),
    near: (v) => nearTo(step, v),
    downHalf: (v) => downTo(half, v),
    upHalf: (v) => upTo(half, v),
  }
}
