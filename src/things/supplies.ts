import type { Hours } from '../units/hours.ts'
import type { Money } from '../units/money.ts'

/** Which kind of supplier an item is asked from. */
export type Shop = 'panels' | 'lumber' | 'hardware' | 'coatings' | 'sundries' | 'boxes' | 'fronts' | 'spraying'

/** One thing to buy: the exact need, and the packs it comes in. Coverage and rounding up to packs happen in one place. */
export interface Purchase {
  readonly id: string
  readonly item: string
  /** What it is for, in words. */
  readonly use: string
  readonly shop: Shop
  /** Exact need in `unit`, spare included as said in `spare`. */
  readonly need: number
  readonly unit: string
  readonly packSize: number
  readonly packs: number
  readonly spare: string
  /** Price of one pack; `known` says whether it is invented (shared price list), asked or quoted. */
  readonly priceEach: Money
  readonly priceKnown: 'invented' | 'answered' | 'yours'
  /** Id of the task that first uses it; its start sets the date to order by. */
  readonly firstUsedBy: string
}

export interface Labour {
  readonly hours: Hours
}
