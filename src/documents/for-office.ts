import { clientContact, clientName, privateNote, siteAddress } from '../job/chapters/job.ts'
import type { CalendarPlan } from '../plan/calendar/calendar.ts'
import type { Plan } from '../plan/plan.ts'
import type { Show } from '../things/show.ts'
import { OFFICE_PRICE, OFFICE_PURCHASE, type OfficePrice, type OfficePurchase } from './audience-fields.ts'
import { textAnswer, titleOf } from './job-words.ts'
import { only } from './only.ts'
import { type OwnFigureLine, ownFigureLines } from './own-figures.ts'

/** The office's own papers: money, the client, the private note. */
export interface ForOffice {
  readonly title: string
  readonly client: string | undefined
  readonly contact: string | undefined
  readonly siteAddress: string | undefined
  readonly privateNote: string | undefined
  readonly show: Show
  readonly purchases: readonly OfficePurchase[]
  readonly orderBy: CalendarPlan['orderBy']
  readonly price: OfficePrice
  readonly ownFigures: readonly OwnFigureLine[]
}

/** The office's share of a plan. */
export function forOffice(plan: Plan): ForOffice {
  return {
    title: titleOf(plan),
    client: textAnswer(plan, clientName),
    contact: textAnswer(plan, clientContact),
    siteAddress: textAnswer(plan, siteAddress),
    privateNote: textAnswer(plan, privateNote),
    show: plan.show,
    purchases: plan.purchases.map((purchase): OfficePurchase => only(purchase, OFFICE_PURCHASE)),
    orderBy: plan.calendar.orderBy,
    price: only(plan.price, OFFICE_PRICE),
    ownFigures: ownFigureLines(plan),
  }
}
