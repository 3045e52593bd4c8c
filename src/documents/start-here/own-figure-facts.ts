import { type Block, fact, heading } from '../block.ts'
import { type OwnFigureLine, ownFigureWords } from '../own-figures.ts'

/** Figures of the shop's own that this job is worked out with, so that nobody works by the published ones. */
export function ownFigureFacts(own: readonly OwnFigureLine[], most: number): readonly Block[] {
  if (own.length === 0) return []
  const brief = own.slice(most).map(({ says, yours }) => `${says} ${yours}`)
  return [
    heading('Figures of our own, not the published ones'),
    ...own.slice(0, most).map((line) => fact('own', ownFigureWords(line))),
    ...(brief.length === 0 ? [] : [fact('own', `${brief.join('; ')}.`)]),
  ]
}
