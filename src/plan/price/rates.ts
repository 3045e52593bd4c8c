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
import { formula } from '../../things/formula.ts'
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

/** The question takes no more. */
const MOST_TRIPS = 200

/** Trips to plan with: one a day on site, and one to fetch. */
export const tripsFor = formula(
  {
    id: 'price.trips',
    plain: 'days with work on site + 1 to fetch; none when nothing is done there',
    source: 'common practice, no source',
    gives: 'count',
    units: { siteDays: 'days' },
  },
  (of: { readonly siteDays: number }): number => (of.siteDays === 0 ? 0 : Math.min(MOST_TRIPS, of.siteDays + 1)),
)

export const travelCost = formula(
  {
    id: 'price.travel',
    plain: 'trips × cost of a trip',
    source: 'arithmetic',
    gives: 'money',
    from: { trips, tripCost },
    units: { trips: 'count' },
  },
  (of: { readonly trips: number; readonly tripCost: Money }): Money => roundMoney(of.trips * of.tripCost),
)

/** Travel to the site and the shops. */
export function travelOf(context: PlanContext, tasks: readonly DatedTask[]): Money {
  const siteDays = new Set(tasks.filter((t) => t.place === 'site').flatMap((t) => [t.start, t.finish])).size
  const count = context.settle.choice(trips, undefined, () => ({
    value: tripsFor({ siteDays }),
    because: `${siteDays} days on site and one trip to fetch`,
    from: tripsFor,
  }))
  const each = context.settle.choice(tripCost, undefined, () => ({
    value: invented(context, 'trip'),
    because: INVENTED,
  }))
  return travelCost({ trips: count, tripCost: each })
}

/** What only the quote prints. */
export function quoteTerms({ settle, figures }: PlanContext): void {
  settle.asked(quoteNumber, undefined)
  settle.choice(validDays, undefined, () => ({
    value: figures.number('money.valid-days'),
    because: 'prices of panels move',
  }))
}
