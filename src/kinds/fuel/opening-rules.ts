import { type CodeProfile, codeFigure } from '../../figures/code-profiles.ts'
import type { Figures } from '../../figures/figures.ts'
import { nanometres, ZERO } from '../../units/length.ts'
import { risingRule } from './rising-rule.ts'
import { steppedRule } from './stepped-rule.ts'
import type { WoodRule } from './wood-rule.ts'

/** How one shape of rule is read from a profile's figures. */
type RuleOf = (figures: Figures, profile: CodeProfile) => WoodRule

/** What a profile asks of wood over and beside the opening, by the shape of its rule. */
export const OPENING_RULES: Readonly<Record<CodeProfile['opening']['rule'], RuleOf>> = {
  rising: (figures, profile) =>
    risingRule(about(profile), {
      least: figures.length(of(profile, 'least')),
      within: figures.length(of(profile, 'within')),
      outPerDistance: figures.number(of(profile, 'out-per-distance')),
    }),
  stepped: (figures, profile) =>
    steppedRule(about(profile), {
      least: figures.length(of(profile, 'least')),
      shallow: figures.length(of(profile, 'shallow')),
      deepLeast: figures.length(of(profile, 'deep-least')),
    }),
  /** One distance for all wood, however little it stands out. */
  'keep off': (figures, profile) => {
    const least = figures.length(of(profile, 'least'))
    return steppedRule(about(profile), { least, shallow: ZERO, deepLeast: least })
  },
  /** The code names no distance: what lies over the opening, or touches its edge, is still refused. */
  'never over it': (_figures, profile) =>
    steppedRule(about(profile), { least: A_HAIR, shallow: ZERO, deepLeast: A_HAIR }),
}

const A_HAIR = nanometres(1)

const of = (profile: CodeProfile, value: string): string => codeFigure(profile.id, 'opening', value)

const about = ({ id, opening }: CodeProfile): Pick<WoodRule, 'id' | 'says' | 'source'> => ({
  id,
  says: opening.says,
  source: [opening.source, opening.section, opening.edition].filter((text) => text !== undefined).join(', '),
})
