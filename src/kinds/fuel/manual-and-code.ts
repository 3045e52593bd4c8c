import { codeRules } from './code-rules.ts'
import type { FireFacts } from './contract.ts'
import { manualRule } from './manual-rule.ts'
import type { WoodRule } from './wood-rule.ts'

/** The manual once it is entered, and the code chosen: the larger of the two counts. */
export const manualAndCode = (facts: FireFacts): readonly WoodRule[] => [
  ...manualOnly(facts),
  ...codeRules(facts.figures, facts.profiles),
]

/** The manual alone, for what burns nothing. */
export const manualOnly = (facts: FireFacts): readonly WoodRule[] =>
  facts.manual === undefined ? [] : [manualRule(facts.manual)]
