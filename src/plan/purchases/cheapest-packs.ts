/** A container size with its price. */
export interface PackSize {
  readonly size: number
  readonly price: number
}

/** How many of each size, in the order the sizes are given. */
export type PackCounts = readonly number[]

/** A need a hair over a pack is that pack: litres are sums of machine numbers. */
const HAIR = 1e-9

/**
 * The cheapest set of containers that covers the need; of equally cheap ones the one with the least left over.
 * Every count of the larger sizes is tried; the first size then fills up what is missing. Sizes above 0; a need of 0 takes none.
 */
export function cheapestPacks(need: number, sizes: readonly PackSize[]): PackCounts {
  const best = sizes.length === 0 || need <= HAIR ? undefined : cover(need, sizes)
  return best?.counts ?? sizes.map(() => 0)
}

interface Cover {
  readonly counts: readonly number[]
  readonly price: number
  readonly content: number
}

function cover(need: number, sizes: readonly PackSize[]): Cover {
  const [first, ...rest] = sizes
  if (first === undefined) return { counts: [], price: need > HAIR ? Number.POSITIVE_INFINITY : 0, content: 0 }
  const most = Math.max(0, Math.ceil((need - HAIR) / first.size))
  if (rest.length === 0) return { counts: [most], price: most * first.price, content: most * first.size }
  return Array.from({ length: most + 1 }, (_, count) => {
    const others = cover(need - count * first.size, rest)
    return {
      counts: [count, ...others.counts],
      price: count * first.price + others.price,
      content: count * first.size + others.content,
    }
  }).reduce((best, c) => (c.price < best.price || (c.price === best.price && c.content < best.content) ? c : best))
}
