import { discount as discountField } from '../../job/chapters/price.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { type Money, minorUnits, showMoney } from '../../units/money.ts'

export const belowDirectCost = messageKind<{
  readonly price: string
  readonly direct: string
  readonly most: string
}>({
  code: 'S18',
  weight: 'stop',
  source: 'arithmetic',
  says: ({ price, direct, most }) => ({
    short: `The price before tax, ${price}, is below the direct cost, ${direct}.`,
    why: 'You would pay for the work yourself: rent, tools and your own time are not even in the direct cost.',
    todo: `The largest discount that keeps the direct cost is ${most}.`,
  }),
})

/** Stops a discount that eats into the direct cost. */
export function priceMessages(sums: {
  readonly listPrice: Money
  readonly direct: Money
  readonly discount: Money
}): readonly Message[] {
  const price = minorUnits(sums.listPrice - sums.discount)
  if (price >= sums.direct) return []
  const most = minorUnits(Math.max(0, sums.listPrice - sums.direct))
  const key = questionKey('job', discountField)
  const fixes = [{ says: `discount ${showMoney(most)}`, answers: [{ key, value: most }] }]
  const values = { price: showMoney(price), direct: showMoney(sums.direct), most: showMoney(most) }
  return [raise(belowDirectCost, { about: key, place: 'price', fixes }, values)]
}
