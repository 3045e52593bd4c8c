import { isAboutMoney, valueWordsIn } from '../figures/figure-words.ts'
import { publishedRows } from '../figures/published.ts'
import type { Plan } from '../plan/plan.ts'

/** A figure this job reckons with that is not the published one, with the reason of who set it. */
export interface OwnFigureLine {
  readonly id: string
  readonly says: string
  readonly published: string
  readonly yours: string
  readonly because: string
}

/** Every figure of the person's own that differs from the published one in this job. */
export const ownFigureLines = ({ figures }: Plan): readonly OwnFigureLine[] =>
  figures.own.flatMap((row) => {
    const before = publishedRows().get(row.id)
    if (before === undefined) return []
    const [published, yours] = [valueWordsIn(before, figures.units), valueWordsIn(row, figures.units)]
    return published === yours ? [] : [{ id: row.id, says: row.says, published, yours, because: row.source }]
  })

/** The same without what concerns money: what a helper may see. */
export const helperFigureLines = (plan: Plan): readonly OwnFigureLine[] =>
  ownFigureLines(plan).filter((line) => !isAboutMoney(line))

/** `wall filler, nominal width: 1 1/4 in, published 1 in (your setting: our scribing needs more)`. */
export const ownFigureWords = ({ says, published, yours, because }: OwnFigureLine): string =>
  `${says}: ${yours}, published ${published} (${because})`
