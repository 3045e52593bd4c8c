import type { Message } from '../../things/message.ts'
import type { Purchase } from '../../things/supplies.ts'
import type { DatedTask } from '../../things/task.ts'
import type { Hours } from '../../units/hours.ts'
import { addMoney, type Money } from '../../units/money.ts'
import type { Built } from '../built.ts'
import type { PlanContext } from '../context.ts'
import type { CostLine } from './cost-line.ts'
import { boughtInLines, hoursTogether, labourLines, materialLines } from './lines.ts'
import { priceMessages } from './messages.ts'
import { quoteTerms, type Rates, ratesOf, travelOf } from './rates.ts'
import { type Stage, stagesOf } from './stages.ts'
import { costed, linesTogether, priced } from './totals.ts'

export type { CostLine } from './cost-line.ts'

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
  /** What rounding up to a whole amount added. */
  readonly rounding: Money
  readonly discount: Money
  /** cost + profit + rounding − discount */
  readonly beforeTax: Money
  readonly tax: Money
  readonly total: Money
  readonly rates: Rates
  readonly stages: readonly Stage[]
  readonly hours: Hours
  readonly messages: readonly Message[]
}

/** Whole cents throughout: each line is rounded once, half up, and every total is the sum of its printed lines. */
export function price(
  context: PlanContext,
  built: Built,
  purchases: readonly Purchase[],
  tasks: readonly DatedTask[],
): Price {
  const rates = ratesOf(context)
  quoteTerms(context)
  const labour = labourLines(tasks, rates.hour)
  const materials = materialLines(purchases)
  const boughtIn = boughtInLines(purchases, built.supply.delivery)
  const travel = travelOf(context, tasks)
  const cost = costed({ ...linesTogether({ labour, materials, boughtIn }), travel, rates })
  const asked = priced({ cost: cost.cost, rates })
  return {
    labour,
    materials,
    boughtIn,
    travel,
    ...cost,
    ...asked,
    rates,
    stages: stagesOf(context, asked.total),
    hours: hoursTogether({ spent: tasks.map((t) => t.hours) }),
    messages: priceMessages({
      listPrice: addMoney(asked.beforeTax, asked.discount),
      direct: cost.direct,
      discount: asked.discount,
    }),
  }
}
