import type { Message } from '../things/message.ts'
import type { Purchase } from '../things/supplies.ts'
import type { DatedTask } from '../things/task.ts'
import type { Hours } from '../units/hours.ts'
import type { Money } from '../units/money.ts'
import type { Built } from './built.ts'
import type { PlanContext } from './context.ts'

/** One printed line of the costing; totals are sums of printed lines. */
export interface CostLine {
  readonly id: string
  readonly says: string
  readonly quantity: number
  readonly unit: string
  readonly each: Money
  readonly amount: Money
}

export interface Price {
  readonly labour: readonly CostLine[]
  readonly materials: readonly CostLine[]
  readonly boughtIn: readonly CostLine[]
  readonly sundries: Money
  readonly handling: Money
  readonly travel: Money
  readonly direct: Money
  readonly overhead: Money
  readonly contingency: Money
  readonly cost: Money
  readonly profit: Money
  readonly discount: Money
  readonly beforeTax: Money
  readonly tax: Money
  readonly total: Money
  readonly rates: {
    readonly sundries: number
    readonly handling: number
    readonly overhead: number
    readonly contingency: number
    readonly profit: number
    readonly profitKind: 'markup' | 'margin'
    readonly tax: number
    readonly hour: Money
  }
  readonly stages: readonly { readonly percent: number; readonly says: string; readonly amount: Money }[]
  readonly hours: Hours
  readonly messages: readonly Message[]
}

export function price(
  _context: PlanContext,
  _built: Built,
  _purchases: readonly Purchase[],
  _tasks: readonly DatedTask[],
): Price {
  const zero = 0 as Money
  return {
    labour: [],
    materials: [],
    boughtIn: [],
    sundries: zero,
    handling: zero,
    travel: zero,
    direct: zero,
    overhead: zero,
    contingency: zero,
    cost: zero,
    profit: zero,
    discount: zero,
    beforeTax: zero,
    tax: zero,
    total: zero,
    rates: {
      sundries: 0,
      handling: 0,
      overhead: 0,
      contingency: 0,
      profit: 0,
      profitKind: 'markup',
      tax: 0,
      hour: zero,
    },
    stages: [],
    hours: 0 as Hours,
    messages: [],
  }
}
