import type { Figures } from '../../figures/figures.ts'
import type { Working } from '../../things/formula.ts'
import type { Standing } from './trace-node.ts'

const PRACTICE = 'common practice, no source'

/** What a number rests on. */
export function standingOf({ figures }: { readonly figures: Figures }, working: Working): Standing {
  if (working.kind === 'question') return questionStanding(working.source)
  if (working.kind === 'figure' && figures.row(working.id).known === 'yours') return 'your setting'
  if (working.source.endsWith(PRACTICE)) return 'practice'
  if (working.kind === 'figure') return 'figure'
  return working.source.startsWith('geometry') || working.source === 'arithmetic' ? 'geometry' : 'rule'
}

/** `answered`, or the origin of the suggestion before its reason. */
function questionStanding(source: string): Standing {
  if (source === 'answered') return 'answered'
  const [origin] = source.split(':')
  if (origin === 'assumed') return 'assumed'
  return origin === 'yours' ? 'your setting' : 'suggested'
}

/** The source as it is printed: a suggestion gives its reason only. */
export const sourceWords = ({ kind, source }: Working): string =>
  kind === 'question' && source !== 'answered' ? source.slice(source.indexOf(':') + 2) : source
