import { boxesWay, frontsWay, sprayingWay } from '../../job/chapters/make-or-buy.ts'
import { hourWorth } from '../../job/chapters/price.ts'
import { type Job, withAnswer } from '../../job/job.ts'
import { SUPPLIES } from '../../kinds/supply/list.ts'
import type { Day } from '../../units/day.ts'
import { hours } from '../../units/hours.ts'
import { type Money, minorUnits } from '../../units/money.ts'
import { makePlan, type Plan } from '../plan.ts'
import { lookAt } from '../settle.ts'
import { areaCounted } from '../supply/quoted.ts'
import type { SupplyRequest } from '../supply/supply.ts'
import { REQUESTS } from '../tasks/office.ts'
import { type BreakEven, breakEven, breakEvenPrice, type Outlay, worthOf } from './break-even.ts'

/** One way of one thing, by a plan of the whole job made that way. */
export interface Way extends Outlay {
  /** Money and hours, an hour counted at what it is worth. */
  readonly total: Money
  readonly finish: Day
  /** What the client would pay. */
  readonly price: Money
}

/** Making one thing against buying it, everything else of the job as it stands. */
export interface MakeOrBuy {
  readonly id: SupplyRequest['id']
  readonly says: string
  readonly now: 'make' | 'buy'
  readonly make: Way
  readonly buy: Way
  readonly breakEven: BreakEven
  /** Quote for one piece, or one square foot or metre, at which both cost alike; none when even a gift would cost more. */
  readonly priceAlike: Money | undefined
  readonly per: 'piece' | 'square foot' | 'square metre'
  readonly quoteKnown: SupplyRequest['quoteKnown']
  /** Price with it bought − price with it made: the client's option. */
  readonly option: Money
}

const WAYS = { boxes: boxesWay, fronts: frontsWay, spraying: sprayingWay } as const

/**
 * Compares the two ways of everything that can be bought in, each by planning the whole job twice.
 * For papers and the review: it makes up to seven plans, so nothing calls it while a person types.
 */
export function makeOrBuy(job: Job): readonly MakeOrBuy[] {
  const plan = makePlan(job, 'quick')
  return (['boxes', 'fronts', 'spraying'] as const).flatMap((id) => {
    const now = lookAt(job, plan.used, undefined)(WAYS[id])
    if (now === undefined) return []
    const planned = (way: 'make' | 'buy') =>
      way === now ? plan : makePlan(withAnswer(job, WAYS[id], 'job', way), 'quick')
    const [make, buy] = [planned('make'), planned('buy')]
    const request = buy.supply.requests.find((r) => r.id === id)
    return request === undefined ? [] : [compared(request, now, { make, buy })]
  })
}

function compared(
  request: SupplyRequest,
  now: 'make' | 'buy',
  plans: { readonly make: Plan; readonly buy: Plan },
): MakeOrBuy {
  const [make, buy] = [wayOf(plans.make), wayOf(plans.buy)]
  const { figures } = plans.buy
  const pieces = request.lines.reduce((n, line) => n + line.quantity, 0)
  const byPiece = request.area === undefined
  const quantity = byPiece ? pieces : areaCounted(plans.buy, request.area)
  const alike = breakEvenPrice({ makeTotal: make.total, buyFixed: buy.total - request.quoted, quantity })
  return {
    id: request.id,
    says: SUPPLIES[request.id].says,
    now,
    make,
    buy,
    breakEven: breakEven(make, buy),
    priceAlike: alike > 0 ? alike : undefined,
    per: byPiece ? 'piece' : figures.units === 'inch' ? 'square foot' : 'square metre',
    quoteKnown: request.quoteKnown,
    option: minorUnits(buy.price - make.price),
  }
}

/** Money that leaves the shop, and its hours: fetching and checking what is bought counts, the order of it only once. */
function wayOf({ job, used, price, calendar, supply }: Plan): Way {
  const worth = lookAt(job, used, undefined)(hourWorth) ?? minorUnits(0)
  const labour = price.labour.reduce((sum, line) => sum + line.amount, 0)
  const money = minorUnits(price.direct - labour)
  const asking = new Set<string>(Object.values(REQUESTS))
  const ordering = calendar.tasks.filter((t) => asking.has(t.id)).reduce((sum, t) => sum + t.hours, 0)
  const fetching = supply.requests.reduce((sum, request) => sum + request.ownHours, 0)
  const own = hours(price.hours - ordering + fetching)
  return {
    money,
    hours: own,
    total: worthOf({ money, hours: own, hourWorth: worth }),
    finish: calendar.finish,
    price: price.total,
  }
}
