import type { FireFacts } from './contract.ts'
import { manualRule } from './manual-rule.ts'
import { MASONRY_CODES } from './masonry-codes.ts'
import type { WoodRule } from './wood-rule.ts'

/** The manual once it is entered, and the printed code with the stricter figures: the larger of the two counts. */
export const manualAndCode = (facts: FireFacts): readonly WoodRule[] => [
  ...manualOnly(facts),
  ...MASONRY_CODES['irc-metric'](facts.figures),
]

/** The manual alone, for what burns nothing. */
export const manualOnly = (facts: FireFacts): readonly WoodRule[] =>
  facts.manual === undefined ? [] : [manualRule(facts.manual)]
