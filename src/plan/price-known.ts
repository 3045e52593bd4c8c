import type { Figures } from '../figures/figures.ts'

/** How a price of the list is known: the person's own, or made up. */
export const priceKnown = (figures: Figures, id: string): 'invented' | 'yours' =>
  figures.row(id).known === 'yours' ? 'yours' : 'invented'
