import type { Money } from '../../units/money.ts'

/** One printed line of the costing; totals are sums of printed lines. */
export interface CostLine {
  readonly id: string
  readonly says: string
  readonly quantity: number
  readonly unit: string
  readonly each: Money
  readonly amount: Money
  /** Whether `each` is a made-up price; absent where it is a rate or was answered. */
  readonly known?: 'invented'
}
