import type { JointKindId } from '../../things/joint.ts'
import type { Length } from '../../units/length.ts'

/** The gap limits and bead sizes a kind of joint works with. */
export interface GapLimits {
  /** Widest gap closed by the fillet alone. */
  readonly filletOnly: Length
  /** Widest gap caulked without backing. */
  readonly caulkMost: Length
  /** Widest gap caulked over backer rod. */
  readonly rodMost: Length
  /** Leg of the small fillet every tooled bead carries. */
  readonly fillet: Length
  readonly beadLeast: Length
  readonly beadMost: Length
}

/** What the rest of the plan asks of a way to close a joint. */
export interface JointKind {
  readonly id: JointKindId
  readonly says: string
  /** Widest gap it closes; undefined when no gap decides (left open, or a line of colour). */
  readonly widest: ((limits: GapLimits) => Length) | undefined
  /** Depth of the bead at a gap; 0 when no bead is laid. */
  readonly depth: (gap: Length, limits: GapLimits) => Length
  /** Tape where two colours meet: plain where a bead seals its edge, sharp-line where paint alone makes the line. */
  readonly tape: 'plain' | 'sharp-line' | 'none'
  readonly backed: boolean
}
