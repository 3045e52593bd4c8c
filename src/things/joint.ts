import type { Length } from '../units/length.ts'
import type { QuestionKey } from './field.ts'
import type { BayId } from './place.ts'

/** How a joint is closed; the kinds live in `kinds/joint`. */
export type JointKindId = 'fillet' | 'caulk' | 'backed-caulk' | 'open' | 'colour-line'

/** One meeting of new work with old, or of two colours. */
export interface Joint {
  /** Stable: `a/shelf-2/left-over`. */
  readonly id: string
  readonly number: number
  readonly bay: BayId
  /** In words: `shelf 2, left, over`. */
  readonly where: string
  readonly length: Length
  readonly gap1: Length
  readonly gap2: Length
  /** Which ends the two gaps are: `foot`, `top` or `front`, `back` or `left`, `right`. */
  readonly ends: readonly [string, string]
  /** Colour of the caulk and of the paint over it, and whether two colours meet (then it is taped). */
  readonly colour: 'built-in' | 'wall'
  readonly twoColours: boolean
  readonly kind: JointKindId
  readonly passes: number
  /** Tape length, 0 when none. */
  readonly tape: Length
  /** Backer rod to buy for it, 0 when none. */
  readonly rod: Length
  /** Litres of caulk, all passes, waste included. */
  readonly caulk: number
  readonly waitsFor: readonly QuestionKey[]
}

/** What a step hands in; kind, passes, tape, volume and number are worked out by the joints step. */
export type JointDraft = Pick<
  Joint,
  'id' | 'bay' | 'where' | 'length' | 'gap1' | 'gap2' | 'ends' | 'colour' | 'twoColours' | 'waitsFor'
> & {
  /** Left open on purpose (kick plate to floor). */
  readonly leftOpen?: boolean
}
