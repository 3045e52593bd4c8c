import type { Figures } from '../../figures/figures.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, sum, times } from '../../units/length.ts'
import type { Mass } from '../../units/mass.ts'
import type { CutStep } from '../../units/round.ts'

/** Hinge counts the tables go up to. */
const COUNTS = [2, 3, 4, 5] as const

/**
 * Hinges of one leaf: the larger count by height and by mass; one more on a wide leaf. Undefined beyond the tables.
 */
export const hingeCount = formula<{ height: Length; width: Length; mass: Mass; figures: Figures }, number | undefined>(
  {
    id: 'fronts.hinges',
    plain: 'by height (900, 1600, 2000, 2400 mm) and mass (6, 12, 17, 22 kg): the larger of 2, 3, 4, 5',
    source: 'common practice, no source',
  },
  ({ height, width, mass, figures }) => {
    const enough = COUNTS.find(
      (count) => height <= figures.length(`hinge.height-${count}`) && mass <= figures.number(`hinge.mass-${count}`),
    )
    if (enough === undefined) return undefined
    return width > figures.length('hinge.width-more') ? enough + 1 : enough
  },
)

/** Cup centres from the leaf's lower end: evenly between the two end ones, to the nearest step. */
export const cupCentres = formula<{ height: Length; count: number; fromEnd: Length; cut: CutStep }, readonly Length[]>(
  {
    id: 'fronts.cups',
    plain: 'end distance + i · (leaf height − 2 · end distance) ÷ (hinges − 1), near',
    source: 'common practice, no source',
  },
  ({ height, count, fromEnd, cut }) => {
    const free = less(height, times(fromEnd, 2))
    return Array.from({ length: count }, (_, i) => cut.near(sum(fromEnd, over(times(free, i), count - 1))))
  },
)
