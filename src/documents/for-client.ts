import { clientName, siteAddress, yourBusiness } from '../job/chapters/job.ts'
import { quoteNumber, validDays } from '../job/chapters/price.ts'
import type { Plan } from '../plan/plan.ts'
import type { ChapterId } from '../things/field.ts'
import type { Show } from '../things/show.ts'
import type { Day } from '../units/day.ts'
import { CLIENT_PRICE, type ClientPrice } from './audience-fields.ts'
import { type Accepted, acceptedConfirms } from './confirms.ts'
import { type Dangers, dangersOf } from './dangers.ts'
import { textAnswer, titleOf, usedValue } from './job-words.ts'
import { only } from './only.ts'
import { type ScopeLine, scopeOf } from './scope.ts'

/** The client's quote: what they get, what it costs with tax, when; not how the price came about. */
export interface ForClient {
  readonly title: string
  readonly business: string | undefined
  readonly client: string | undefined
  readonly siteAddress: string | undefined
  readonly quoteNumber: string | undefined
  readonly validDays: number
  readonly show: Show
  readonly scope: readonly ScopeLine[]
  readonly bought: readonly string[]
  readonly price: ClientPrice
  readonly workshopFrom: Day | undefined
  /** The visit to measure, days before the work in the house. */
  readonly measured: Day | undefined
  readonly siteFrom: Day | undefined
  readonly finish: Day
  readonly accepted: readonly Accepted[]
  readonly dangers: Dangers
  readonly wallColour: string
}

/** Chapters whose confirmations are the client's own choices; what the shop does with its hands is not. */
const CLIENT_CHAPTERS: readonly ChapterId[] = ['wall', 'firebox', 'cabinets', 'shelves', 'mantel', 'finish']

/** Tasks that are visits before the work: to measure, and to look for lead and asbestos. */
const MEASURING = 'A2'
const VISITS: readonly string[] = [MEASURING, 'A7']

/** The client's share of a plan. */
export function forClient(plan: Plan): ForClient {
  const first = (place: 'shop' | 'site') =>
    plan.calendar.tasks.find((t) => t.place === place && t.hours > 0 && !VISITS.includes(t.id))?.start
  return {
    title: titleOf(plan),
    business: textAnswer(plan, yourBusiness),
    client: textAnswer(plan, clientName),
    siteAddress: textAnswer(plan, siteAddress),
    quoteNumber: textAnswer(plan, quoteNumber),
    validDays: usedValue(plan, validDays) ?? 30,
    show: plan.show,
    scope: scopeOf(plan),
    bought: plan.supply.requests.map((request) => request.title),
    price: { ...only(plan.price, CLIENT_PRICE), taxPercent: plan.price.rates.tax },
    workshopFrom: first('shop'),
    measured: plan.calendar.tasks.find((t) => t.id === MEASURING && t.hours > 0)?.start,
    siteFrom: first('site'),
    finish: plan.calendar.finish,
    accepted: acceptedConfirms(plan, CLIENT_CHAPTERS),
    dangers: dangersOf(plan),
    wallColour: plan.coating.colours.wall,
  }
}
