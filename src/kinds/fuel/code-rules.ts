import { type CodeProfile, codeProfiles } from '../../figures/code-profiles.ts'
import type { Figures } from '../../figures/figures.ts'
import { OPENING_RULES } from './opening-rules.ts'
import type { WoodRule } from './wood-rule.ts'

/** The answer "not known yet": every profile counts, so that the strictest does. */
export const CODE_NOT_KNOWN = 'unknown'

/** The profiles as options of a question, and "not known yet". */
export const codeOptions = (): Readonly<Record<string, string>> => ({
  ...Object.fromEntries(codeProfiles().map(({ id, says }) => [id, says])),
  [CODE_NOT_KNOWN]: 'not known yet',
})

/** The profiles a job meets: the one chosen, in a metric job with its printed metric figures; all of them until one is known. */
export function profilesOf(code: string, { units }: Pick<Figures, 'units'>): readonly CodeProfile[] {
  const all = codeProfiles()
  const chosen = all.find(({ id }) => id === code)
  if (chosen === undefined) return all
  const metric = units === 'metric' ? all.filter(({ id }) => id === chosen.metricJobs) : []
  return [chosen, ...metric]
}

/** What the profiles ask of wood over and beside the opening; a piece meets every one. */
export const codeRules = (figures: Figures, profiles: readonly CodeProfile[]): readonly WoodRule[] =>
  profiles.map((profile) => OPENING_RULES[profile.opening.rule](figures, profile))
