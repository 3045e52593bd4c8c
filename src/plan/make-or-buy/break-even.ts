import { formula } from '../../things/formula.ts'
import type { Hours } from '../../units/hours.ts'
import { MINOR_UNITS, type Money, roundMoney } from '../../units/money.ts'

/** What one way takes: money paid out, and own hours. */
export interface Outlay {
  readonly money: Money
  readonly hours: Hours
}

/**
 * Own rate at which making and buying cost alike, and which way wins above it; or why there is none:
 * one way takes neither more money nor more hours, or the hours are equal and the money decides.
 */
export type BreakEven =
  | { readonly kind: 'rate'; readonly rate: Money; readonly above: 'make' | 'buy' }
  | { readonly kind: 'none'; readonly better: 'make' | 'buy' | 'equal' }

/** Rate in money an hour, exact (minor units, not rounded): (buy money − make money) / (make hours − buy hours). */
export const breakEvenRate = formula(
  {
    id: 'make-or-buy.rate',
    plain: '(money to buy − money to make) / (hours to make − hours to buy)',
    source: 'arithmetic',
    gives: 'money',
    units: { buyMoney: 'money', makeMoney: 'money', makeHours: 'hours', buyHours: 'hours' },
  },
  (of: {
    readonly buyMoney: number
    readonly makeMoney: number
    readonly makeHours: number
    readonly buyHours: number
  }): number => (of.buyMoney - of.makeMoney) / (of.makeHours - of.buyHours),
)

/** Where making and buying cost alike. */
export function breakEven(make: Outlay, buy: Outlay): BreakEven {
  const savedMoney = buy.money - make.money
  const savedHours = make.hours - buy.hours
  // One way is at least as good in both: there is nothing to weigh.
  if (savedMoney * savedHours <= 0) return { kind: 'none', better: dominant(savedMoney, savedHours) }
  const rate = breakEvenRate({
    buyMoney: buy.money,
    makeMoney: make.money,
    makeHours: make.hours,
    buyHours: buy.hours,
  })
  return { kind: 'rate', rate: roundMoney(rate), above: savedHours > 0 ? 'buy' : 'make' }
}

/** Buying takes more money, or making more hours: the other way wins; neither: they are equal. */
function dominant(moreToBuy: number, hoursSaved: number): 'make' | 'buy' | 'equal' {
  if (moreToBuy === 0 && hoursSaved === 0) return 'equal'
  return moreToBuy < 0 || hoursSaved > 0 ? 'buy' : 'make'
}

/** All that one way costs a person whose hour is worth so much. */
export const worthOf = formula(
  {
    id: 'make-or-buy.total',
    plain: 'money + hours × what an hour is worth',
    source: 'arithmetic',
    gives: 'money',
    units: { money: 'money', hours: 'hours', hourWorth: 'money' },
  },
  (of: { readonly money: number; readonly hours: number; readonly hourWorth: Money }): Money =>
    roundMoney(of.money + of.hours * of.hourWorth),
)

/** Price of one piece, or of one square foot or metre, at which buying costs what making does. */
export const breakEvenPrice = formula(
  {
    id: 'make-or-buy.price',
    plain: '(all that making costs − what buying costs besides the quote) / how many',
    source: 'arithmetic',
    gives: 'money',
    from: { makeTotal: worthOf },
    units: { makeTotal: 'money', buyFixed: 'money', quantity: 'number' },
  },
  (of: { readonly makeTotal: number; readonly buyFixed: number; readonly quantity: number }): Money =>
    roundMoney((of.makeTotal - of.buyFixed) / of.quantity),
)

/** `28.00 an hour: above it buy, below it make`; or that there is none, and what wins. */
export function breakEvenWords(found: BreakEven, currency: string): string {
  if (found.kind === 'rate') {
    const rate = (found.rate / MINOR_UNITS).toFixed(2)
    const below = found.above === 'buy' ? 'make' : 'buy'
    return `break-even at ${rate} ${currency} an hour: above it ${found.above}, below it ${below}`
  }
  return found.better === 'equal'
    ? 'no break-even: both cost alike; the days decide'
    : `no break-even: ${found.better === 'buy' ? 'buying' : 'making'} wins at every rate`
}
