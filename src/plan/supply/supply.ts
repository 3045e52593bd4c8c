import { builtInColour } from '../../job/chapters/finish.ts'
import {
  boxesWay,
  boxLead,
  boxQuote,
  deliveryCost,
  frontLead,
  frontQuote,
  frontsWay,
  sprayingWay,
  sprayLead,
  sprayQuote,
} from '../../job/chapters/make-or-buy.ts'
import type { SupplyKind } from '../../kinds/supply/contract.ts'
import { SUPPLIES } from '../../kinds/supply/list.ts'
import type { Field } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { Message } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import type { RequestLine } from '../../things/request.ts'
import type { Day } from '../../units/day.ts'
import type { Hours } from '../../units/hours.ts'
import { type Money, minorUnits } from '../../units/money.ts'
import { coatAreaOf, type EdgeFactors } from '../coating/coated-area.ts'
import type { PlanContext } from '../context.ts'
import type { FrontPlan } from '../fronts/fronts.ts'
import { parseMark } from '../marks.ts'
import { priceKnown } from '../price-known.ts'
import { drillingFor, withFrontDetails } from './front-request.ts'
import { areaCounted, ownHoursToBuy, quotedByArea, quotedByPiece } from './quoted.ts'
import { withWholeFronts } from './whole-front.ts'

export type { RequestLine } from '../../things/request.ts'

/** One thing bought in: what is asked for, and what it was quoted at (office only). */
export interface SupplyRequest {
  readonly id: SupplyKind['id']
  readonly title: string
  readonly lines: readonly RequestLine[]
  readonly finish: readonly string[]
  readonly drilling: readonly string[]
  /** Area of one coat, m², edges as they drink; for spraying only. */
  readonly area: number | undefined
  readonly leadDays: number
  readonly quoted: Money
  readonly quoteKnown: 'invented' | 'answered' | 'yours'
  /** Own hours to order, fetch and check it. */
  readonly ownHours: Hours
  readonly neededBy?: Day
}

export interface SupplyPlan {
  /** The parts with who makes each: every part is in exactly one of cut list or one request. */
  readonly parts: readonly Part[]
  readonly requests: readonly SupplyRequest[]
  readonly sprayedOut: boolean
  readonly delivery: Money
  readonly messages: readonly Message[]
}

/** Who makes what: parts that are bought leave the cut list for one request each; the leaf's pieces become one leaf. */
export function supply(context: PlanContext, parts: readonly Part[], fronts: FrontPlan): SupplyPlan {
  const ways = waysOf(context)
  const whole = ways.fronts === 'buy' ? withFrontDetails(context, withWholeFronts(parts, fronts), fronts) : parts
  const supplied = whole.map((part) => ({ ...part, supply: supplierOf(part, ways) }))
  const asked = {
    boxes: supplied.filter((part) => part.supply === 'boxes'),
    fronts: supplied.filter((part) => part.supply === 'fronts'),
    spraying: withWholeFronts(supplied, fronts).filter((part) => part.coat?.surface === 'built-in'),
  }
  const requests = KINDS.filter((id) => ways[id] === 'buy' && asked[id].length > 0).map((id) =>
    requestOf(context, SUPPLIES[id], { parts: asked[id], fronts }),
  )
  return {
    parts: supplied,
    requests,
    sprayedOut: ways.spraying === 'buy',
    delivery: requests.length === 0 ? minorUnits(0) : deliveryOf(context),
    messages: [],
  }
}

const KINDS = ['boxes', 'fronts', 'spraying'] as const
type Ways = Readonly<Record<SupplyKind['id'], 'make' | 'buy'>>

function waysOf({ settle, bays }: PlanContext): Ways {
  const hasRun = bays.some((bay) => bay.kind !== 'breast')
  const way = (field: Field<'make' | 'buy'>, because: string) =>
    settle.choice(field, undefined, () => ({ value: 'make' as const, because }))
  return {
    boxes: hasRun ? way(boxesWay, 'until a quote says otherwise') : 'make',
    fronts: hasRun ? way(frontsWay, 'until a quote says otherwise') : 'make',
    spraying: way(sprayingWay, 'until a quote says otherwise'),
  }
}

function supplierOf(part: Part, ways: Ways): Part['supply'] {
  const mark = parseMark(part.mark)
  const place = { role: mark?.role, ofBox: mark?.box !== undefined, piece: part.piece }
  if (ways.boxes === 'buy' && SUPPLIES.boxes.takes(place)) return 'boxes'
  return ways.fronts === 'buy' && SUPPLIES.fronts.takes(place) ? 'fronts' : 'made'
}

interface Asked {
  readonly parts: readonly Part[]
  readonly fronts: FrontPlan
}

const requestOf = (context: PlanContext, kind: SupplyKind, asked: Asked): SupplyRequest =>
  within(`bought.${kind.id}`, () => requestIn(context, kind, asked))

function requestIn(context: PlanContext, kind: SupplyKind, { parts, fronts }: Asked): SupplyRequest {
  const { figures, settle, show } = context
  const lines = kind.lines(parts, show)
  const pieces = lines.reduce((count, line) => count + line.quantity, 0)
  const area = kind.pricedBy === 'area' ? coatAreaOf(parts, edgeFactorsOf(context)) : undefined
  const { quote, lead } = FIELDS[kind.id]
  const each = settle.choice(quote, undefined, () => ({
    value: minorUnits(figures.number(kind.price)),
    origin: 'assumed',
    because: 'invented price: put in your quote',
  }))
  const leadDays = settle.choice(lead, undefined, () => ({
    value: figures.number(kind.lead),
    because: 'usual lead time: ask the shop',
  }))
  return {
    id: kind.id,
    title: kind.title,
    lines,
    finish: kind.finish(settle.asked(builtInColour, undefined) ?? '', parts),
    drilling: kind.id === 'fronts' ? drillingFor(context, fronts) : [],
    area,
    leadDays,
    quoted:
      area === undefined ? quotedByPiece({ pieces, each }) : quotedByArea({ area: areaCounted(context, area), each }),
    quoteKnown: settle.asked(quote, undefined) === undefined ? priceKnown(figures, kind.price) : 'answered',
    ownHours: ownHoursToBuy({
      once: figures.number('buy.hours-once'),
      each: figures.number('buy.hours-piece'),
      pieces,
    }),
  }
}

const FIELDS = {
  boxes: { quote: boxQuote, lead: boxLead },
  fronts: { quote: frontQuote, lead: frontLead },
  spraying: { quote: sprayQuote, lead: sprayLead },
} as const

/** How much more edges drink than faces. */
export const edgeFactorsOf = ({ figures }: Pick<PlanContext, 'figures'>): EdgeFactors => ({
  mdf: figures.number('edge.factor-mdf'),
  other: figures.number('edge.factor-other'),
})

const deliveryOf = ({ figures, settle }: PlanContext): Money =>
  settle.choice(deliveryCost, undefined, () => ({
    value: minorUnits(figures.number('price.delivery')),
    origin: 'assumed',
    because: 'invented price: put in what the shops ask',
  }))
