import { type Bed, type Block, comparedArea } from './block.ts'
import { type Choice, type Filled, type FillRule, fill, type Split } from './fill.ts'

/** How long the layouts are searched, in whole fillings tried: never in time, so that the same job gives the same sheets. */
export type Effort = 'quick' | 'thorough'
const SHUFFLES: Readonly<Record<Effort, number>> = { quick: 0, thorough: 600 }

const CHOICES: readonly Choice[] = ['short', 'area', 'long']
const SPLITS: readonly Split[] = ['shorter-left', 'across', 'along', 'largest-rest', 'longer-left']
const RULES: readonly FillRule[] = CHOICES.flatMap((choice) => SPLITS.map((split) => ({ choice, split })))

/** Largest first, by several meanings of large. */
const SIZES: readonly ((b: Block) => number)[] = [
  comparedArea,
  (b) => Math.max(b.length, b.width),
  (b) => Math.min(b.length, b.width),
  (b) => b.length + b.width,
  (b) => b.length,
  (b) => b.width,
]

/**
 * Lays blocks on as few sheets as the search finds, then with the largest free rectangle left.
 * Tries every order with every rule; `thorough` goes on with the best order slightly shuffled, a fixed number of times.
 * Stops early only when `least` sheets (a proven bound) are reached. Every block must fit the bed.
 */
export function pack(blocks: readonly Block[], bed: Bed, search: { effort: Effort; least: number }): Filled['sheets'] {
  if (blocks.length === 0) return []
  const orders = SIZES.map((by) => largestFirst(blocks, by))
  const tried = orders.flatMap((order) => RULES.map((rule) => ({ order, rule, filled: fill(order, bed, rule) })))
  let best = tried.reduce((a, b) => (better(b.filled, a.filled) ? b : a))
  const next = numbersFrom(blocks.length)
  for (let n = 0; n < SHUFFLES[search.effort] && best.filled.sheets.length > search.least; n += 1) {
    const order = shuffled(best.order, next)
    const rule = RULES[next(RULES.length)] ?? best.rule
    const filled = fill(order, bed, rule)
    if (!better(best.filled, filled)) best = { order, rule, filled }
  }
  return best.filled.sheets
}

const better = (a: Filled, b: Filled): boolean =>
  a.sheets.length < b.sheets.length || (a.sheets.length === b.sheets.length && a.largestFree > b.largestFree)

const largestFirst = (blocks: readonly Block[], by: (b: Block) => number): readonly Block[] =>
  blocks.toSorted((a, b) => by(b) - by(a) || comparedArea(b) - comparedArea(a) || a.id - b.id)

/** Two to four blocks change places. */
function shuffled(order: readonly Block[], next: (below: number) => number): readonly Block[] {
  const changed = [...order]
  for (let swaps = 1 + next(MOST_SWAPS); swaps > 0; swaps -= 1) {
    const from = next(changed.length)
    const to = next(changed.length)
    const [moved] = changed.splice(from, 1)
    if (moved !== undefined) changed.splice(to, 0, moved)
  }
  return changed
}
const MOST_SWAPS = 4

/** Numbers that look drawn by lot but are always the same: x ← 1664525·x + 1013904223 mod 2³² (Knuth's and Lewis's constants, from memory). */
function numbersFrom(seed: number): (below: number) => number {
  let state = seed
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
}
