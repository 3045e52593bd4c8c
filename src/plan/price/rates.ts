import {
  contingency,
  discount,
  handling,
  hourRate,
  hourWorth,
  overhead,
  profit,
  profitKind,
  quoteNumber,
  roundTo,
  sundries,
  tax,
  tripCost,
  trips,
  validDays,
} from '../../job/chapters/price.ts'
import type { Field } from '../../things/field.ts'
import type { DatedTask } from '../../things/task.ts'
import { type Money, minorUnits, roundMoney } from '../../units/money.ts'
import type { PlanContext } from '../context.ts'

/** Shares in percent, amounts in whole cents. */
export interface Rates {
  readonly sundries: number
  readonly handling: number
  readonly overhead: number
  readonly contingency: number
  readonly profit: number
  readonly profitKind: 'markup' | 'margin'
  readonly tax: number
  readonly hour: Money
  /** Whole currency the price before tax is rounded up to. */
  readonly roundTo: number
  readonly discount: Money
}

/** The shares and amounts of the price chapter: answered, or the usual ones. */
export function ratesOf(context: PlanContext): Rates {
  const { settle, figures } = context
  const usual = (field: Field<number>, row: string) =>
    settle.choice(field, undefined, () => ({ value: figures.number(`money.${row}`), because: 'usual in the trade' }))
  settle.choice(hourWorth, undefined, () => ({ value: invented(context, 'hour-worth'), because: INVENTED }))
  return {
    sundries: usual(sundries, 'sundries'),
    handling: usual(handling, 'handling'),
    overhead: usual(overhead, 'overhead'),
    contingency: usual(contingency, 'contingency'),
    profit: usual(profit, 'profit'),
    profitKind: settle.choice(profitKind, undefined, () => ({
      value: 'markup' as const,
      because: 'counted on the cost you know',
    })),
    tax: settle.choice(tax, undefined, () => ({ value: 0, because: 'no tax until you name it' })),
    hour: settle.choice(hourRate, undefined, () => ({ value: invented(context, 'hour'), because: INVENTED })),
    roundTo: usual(roundTo, 'round-to'),
    discount: settle.choice(discount, undefined, () => ({ value: minorUnits(0), because: 'none named' })),
  }
}

const INVENTED = 'an invented price: put in yours'
const invented = ({ figures }: PlanContext, id: string): Money => minorUnits(figures.number(`price.${id}`))

/** Trips × cost of a trip. Suggested: one a day on site, and one to fetch. */
export function travelOf(context: PlanContext, tasks: readonly DatedTask[]): Money {
  const days = new Set(tasks.filter((t) => t.place === 'site').flatMap((t) => [t.start, t.finish])).size
  const count = context.settle.choice(trips, undefined, () => ({
    value: Math.min(MOST_TRIPS, days === 0 ? 0 : days + 1),
    because: `${days} days on site and one trip to fetch`,
  }))
  const each = context.settle.choice(tripCost, undefined, () => ({
    value: invented(context, 'trip'),
    because: INVENTED,
  }))
  return roundMoney(count * each)
}
/** The question takes no more. */
const MOST_TRIPS = 200

/** What only the quote prints. */
export function quoteTerms({ settle, figures }: PlanContext): void {
  settle.asked(quoteNumber, undefined)
  settle.choice(validDays, undefined, () => ({
    value: figures.number('money.valid-days'),
    because: 'prices of panels move',
  }))
}
