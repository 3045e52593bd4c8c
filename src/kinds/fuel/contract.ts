import type { CodeProfile } from '../../figures/code-profiles.ts'
import type { Figures } from '../../figures/figures.ts'
import type { ManualFigures } from './manual-rule.ts'
import type { WoodRule } from './wood-rule.ts'

/** What is known about the place, for the rules of a fuel. */
export interface FireFacts {
  readonly figures: Figures
  /** The code chosen; all of them while none is known. */
  readonly profiles: readonly CodeProfile[]
  /** The manual's clearances; undefined = nobody has entered them. */
  readonly manual: ManualFigures | undefined
}

/** What burns in the opening, and what that asks of the wood round it. */
export interface FuelKind {
  readonly id: string
  readonly says: string
  /** The clearances of the masonry rule apply; otherwise the appliance's manual is asked for. */
  readonly governedBy: 'masonry rule' | 'manual' | 'nothing'
  /** Whether there is heat below a screen, and wood in front of or beside the opening is checked. */
  readonly burns: boolean
  /** Whether its smoke rises in a masonry breast, so that the breast's sides grow hot beside wood (IRC R1001.11, R1003.18). */
  readonly heatsMasonry: boolean
  /** How it burns towards the room, for the hearth in front of it; `none` = it needs no hearth. */
  readonly flame: 'open' | 'closed' | 'none'
  /** The rules every piece of wood must pass, all of them. */
  readonly woodRules: (facts: FireFacts) => readonly WoodRule[]
}
