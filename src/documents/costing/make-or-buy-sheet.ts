import { breakEvenWords } from '../../plan/make-or-buy/break-even.ts'
import type { MakeOrBuy, Way } from '../../plan/make-or-buy/make-or-buy.ts'
import { showDay } from '../../units/day.ts'
import { showMoney } from '../../units/money.ts'
import type { BookCell, BookSheet } from '../book.ts'
import { moneyCell } from '../live.ts'

/** Making against buying, two lines a thing: money, hours, what both come to, hand-over, price; then where they cost alike. */
export const makeOrBuySheet = (compared: readonly MakeOrBuy[], currency: string): BookSheet => ({
  name: 'Make or buy',
  columns: [
    { head: 'what', width: 12 },
    { head: 'way', width: 10 },
    { head: `money, ${currency}`, width: 12 },
    { head: 'own hours', width: 10 },
    { head: 'all, hours at their worth', width: 14 },
    { head: 'hand-over', width: 12 },
    { head: 'price to the client', width: 13 },
    { head: 'cost alike', width: 62 },
  ],
  rows: compared.flatMap((one) => [
    wayRow(one, 'make', `${breakEvenWords(one.breakEven, currency)}`),
    wayRow(one, 'buy', quoteWords(one, currency)),
  ]),
  frozenColumns: 2,
})

function wayRow(one: MakeOrBuy, way: 'make' | 'buy', says: string): readonly BookCell[] {
  const { money, hours, total, finish, price }: Way = one[way]
  return [
    one.says,
    way === one.now ? `${way} (now)` : way,
    moneyCell(money),
    { value: Math.round(hours * 10) / 10, format: 'figure' },
    moneyCell(total),
    showDay(finish),
    moneyCell(price),
    says,
  ]
}

/** From which quote on making is cheaper; a quote nobody has given is marked. */
function quoteWords({ priceAlike, per, quoteKnown }: MakeOrBuy, currency: string): string {
  const known = quoteKnown === 'invented' ? '; the quote reckoned with is invented' : ''
  return priceAlike === undefined
    ? `making is cheaper at any quote${known}`
    : `buying is cheaper below ${showMoney(priceAlike)} ${currency} a ${per}${known}`
}
