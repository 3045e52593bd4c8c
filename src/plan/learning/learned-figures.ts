import type { Figures } from '../../figures/figures.ts'
import { formula } from '../../things/formula.ts'

/** A default figure corrected by closed jobs. */
export const learnedFigure = formula(
  {
    id: 'learning.figure',
    plain: 'default × factor of your own closed jobs',
    source: 'your closed jobs',
    gives: 'number',
    units: { usual: 'number', factor: 'number' },
  },
  (of: { readonly usual: number; readonly factor: number }): number => of.usual * of.factor,
)

/** Figures with some of them corrected by a factor: `rate.box` × 1.25. A job keeps the factors it was begun with. */
export const learnedFigures = (figures: Figures, factors: Readonly<Record<string, number>>): Figures => ({
  ...figures,
  number: (id) => {
    const factor = factors[id]
    const usual = figures.number(id)
    return factor === undefined ? usual : learnedFigure({ usual, factor })
  },
})
