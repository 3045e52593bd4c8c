import { formula } from '../../things/formula.ts'
import { type Length, less, nanometres, over, times } from '../../units/length.ts'

/** Widths of ready-made boxes that fill a slot, and the filler at each side. */
export interface ReadyMade {
  /** In the order they stand, left to right. */
  readonly widths: readonly Length[]
  readonly total: Length
  readonly filler: Length
}

interface SlotToFill {
  readonly slot: Length
  /** Widths that are sold. */
  readonly sold: readonly Length[]
  /** Least and most a filler may be at each side. */
  readonly fillerLeast: Length
  readonly fillerMost: Length
  /** Side at which the wider boxes stand: at the breast. */
  readonly widerAt: 'left' | 'right'
}

/**
 * The set of sold widths with the largest sum that leaves a filler of at least `fillerLeast` at each side and at most `fillerMost`.
 * Equal sums: fewest boxes, then the narrowest spread of widths. Every set is looked at, longest widths first;
 * undefined when none leaves fillers that can be scribed and held.
 */
export function readyMadeBoxes(to: SlotToFill): ReadyMade | undefined {
  const most = less(to.slot, times(to.fillerLeast, 2))
  const sold = [...new Set(to.sold)].filter((width) => width > 0 && width <= most).toSorted((a, b) => b - a)
  const best = bestSet(sold, most)
  if (best === undefined) return undefined
  const total = nanometres(totalOf(best))
  const filler = readyMadeFiller({ slot: to.slot, total })
  if (filler > to.fillerMost) return undefined
  return { widths: to.widerAt === 'left' ? best : best.toReversed(), total, filler }
}

/** What is left at each side of ready-made boxes. */
export const readyMadeFiller = formula(
  {
    id: 'ready-made.filler',
    plain: '(slot − widths of the boxes) / 2',
    source: 'geometry',
    units: { total: 'length' },
  },
  (of: { readonly slot: Length; readonly total: Length }): Length => over(less(of.slot, of.total), 2),
)

const totalOf = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0)

/** The set with the largest sum not above `most`; widths longest first, and they may repeat. */
function bestSet(sold: readonly Length[], most: number): readonly Length[] | undefined {
  const total = largestSum(sold, most)
  const [widest] = sold
  if (widest === undefined || total === 0) return undefined
  for (let count = Math.ceil(total / widest); ; count += 1) {
    const sets = setsOf({ sold, count, total })
    if (sets.length > 0) return sets.reduce((best, set) => (spread(set) < spread(best) ? set : best))
  }
}

/** Largest sum of widths, each as often as one likes, that is not above `most`. */
function largestSum(sold: readonly number[], most: number): number {
  const reached = new Set([0])
  // A set goes on through what is added while it is walked: so every sum of sums is reached.
  for (const sum of reached) for (const width of sold) if (sum + width <= most) reached.add(sum + width)
  return Math.max(...reached)
}

/** Every set of so many widths with exactly that sum, longest widths first in each. */
function setsOf(want: {
  readonly sold: readonly Length[]
  readonly count: number
  readonly total: number
}): readonly (readonly Length[])[] {
  const { sold, count, total } = want
  if (count === 0) return total === 0 ? [[]] : []
  const least = Math.min(...sold)
  return sold.flatMap((width, at) => {
    const rest = { sold: sold.slice(at), count: count - 1, total: total - width }
    const reachable = rest.total >= rest.count * least && rest.total <= rest.count * width
    return reachable ? setsOf(rest).map((set) => [width, ...set]) : []
  })
}

const spread = (widths: readonly number[]): number => Math.max(...widths) - Math.min(...widths)
