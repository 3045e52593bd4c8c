import { yourBusiness } from '../job/chapters/job.ts'
import type { Plan } from '../plan/plan.ts'
import type { RequestLine } from '../plan/supply/supply.ts'
import type { Day } from '../units/day.ts'
import { SHOP_LINE, SHOP_REQUEST, type ShopRequest } from './audience-fields.ts'
import { type PlainShow, plainShow, textAnswer, titleOf } from './job-words.ts'
import { only } from './only.ts'

/** What one outside shop is sent: its own request, who asks, and the job's name. */
export interface ForShop {
  readonly title: string
  readonly business: string | undefined
  readonly show: PlainShow
  readonly request: ShopRequest
  /** The last day the order may leave; undefined when nothing waits for it. */
  readonly orderBy: Day | undefined
  /** The day its first user begins. */
  readonly neededBy: Day | undefined
}

/** One outside shop's share of a plan, for each thing bought in. */
export const forShops = (plan: Plan): readonly ForShop[] =>
  plan.supply.requests.map((request) => {
    const order = plan.calendar.orderBy.find((o) => o.shop === request.id)
    const user = plan.calendar.tasks.find((task) => task.id === order?.forTask)
    return {
      title: titleOf(plan),
      business: textAnswer(plan, yourBusiness),
      show: plainShow(plan.show),
      request: {
        ...only(request, SHOP_REQUEST),
        lines: request.lines.map((line: RequestLine) => only(line, SHOP_LINE)),
      },
      orderBy: order?.by,
      neededBy: request.neededBy ?? user?.start,
    }
  })
