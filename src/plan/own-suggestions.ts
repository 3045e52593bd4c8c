import type { Figures } from '../figures/figures.ts'
import type { Settle, Suggestion } from './settle.ts'

/** The same reader of answers: what it suggests out of a figure of the person's own says so, with their reason. */
export function withOwnSuggestions(settle: Settle, figures: Figures): Settle {
  if (figures.own.length === 0) return settle
  const marked =
    <T>(suggest: () => Suggestion<T>) =>
    (): Suggestion<T> => {
      const { result, own } = figures.ownReadBy(suggest)
      return own === undefined ? result : { ...result, origin: 'yours', because: `${result.because} (${own.source})` }
    }
  return {
    used: settle.used,
    asked: settle.asked,
    choice: (field, bay, suggest) => settle.choice(field, bay, marked(suggest)),
    measured: (field, bay, assume) => settle.measured(field, bay, marked(assume)),
  }
}
