import type { TradeCall } from '../devices/device-opening.ts'
import type { SupplyRequest } from '../supply/supply.ts'
import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import type { Workload } from './workload.ts'

/** Ids of the orders, for what waits for a delivery. */
export const ORDERS = { panels: 'A4.1', hardware: 'A4.2', coatings: 'A4.3' } as const
/** Ids of the requests to outside shops. */
export const REQUESTS = { boxes: 'A5.1', fronts: 'A5.2', spraying: 'A5.3' } as const
/** Ids of the visits booked with other trades. */
export const BOOKINGS = { electrician: 'A6.1', 'gas fitter': 'A6.2', 'heating fitter': 'A6.3' } as const

/** Acceptance, last measurements, orders, requests and bookings. */
export function officeTasks(load: Workload): readonly TaskDraft[] {
  return [
    accepted,
    measured(load),
    colours(load),
    ...orders(load),
    ...requests(load),
    ...bookings(load),
    oldPaintCheck(load),
  ]
}

const office = { place: 'office', work: 'office' } as const

const accepted: TaskDraft = {
  ...office,
  id: 'A1',
  title: 'Quote accepted, deposit paid',
  after: [],
  needed: true,
  checks: ['Nothing is ordered before the deposit is there.'],
}

function measured(load: Workload): TaskDraft {
  const { built, context, show } = load
  const held = [...new Set(built.parts.filter((p) => p.waitsFor.length > 0).map((p) => p.mark))]
  return {
    id: 'A2',
    title: 'Measure again',
    after: ['A1'],
    needed: context.bays.length > 0,
    efforts: [effort('measure', context.bays.length)],
    place: 'site',
    work: 'office',
    marks: held,
    tools: ['two tapes', 'long level or laser', 'stud finder', 'notebook'],
    setOut: held.length === 0 ? [] : [`On hold until measured: ${held.join(', ')}.`],
    checks: [
      `Second reading of each width within ${show.withUnit(context.figures.length('survey.tolerance'))} of the first.`,
      'Thickness of each panel by the caliper, three places, the largest counts.',
    ],
  }
}

const colours = (load: Workload): TaskDraft => ({
  ...office,
  id: 'A3',
  title: 'Colours and samples agreed',
  after: ['A1'],
  needed: load.built.coating.lines.length > 0,
  efforts: [effort('colours', 1)],
  wait: { workingDays: load.lead('answer'), says: 'the client’s answer' },
  checks: ['Each sample signed with colour, sheen and date.'],
})

const ORDER_SAYS = { panels: 'panels and lumber', hardware: 'hardware and adhesives', coatings: 'coatings' } as const

function orders(load: Workload): readonly TaskDraft[] {
  const needed = {
    panels: load.built.parts.some((p) => p.supply === 'made'),
    hardware: load.built.fixings.lines.length > 0,
    coatings: load.built.coating.lines.length > 0,
  }
  const kinds = (['panels', 'hardware', 'coatings'] as const).filter((k) => needed[k])
  return (['panels', 'hardware', 'coatings'] as const).map((kind) => ({
    ...office,
    id: ORDERS[kind],
    title: `Order ${ORDER_SAYS[kind]}`,
    after: ['A2', 'A3'],
    needed: needed[kind],
    efforts: [effort('order', 1 / Math.max(1, kinds.length))],
    wait: delivery(load, load.lead(kind)),
    checks: ['Everything on the purchase list, from one shop in one order.'],
  }))
}

/** Planned later than the shop promises. */
const delivery = (load: Workload, leadDays: number) => ({
  workingDays: leadDays + load.lead('spare'),
  says: `delivery: ${leadDays} working days and ${load.lead('spare')} to be safe`,
})

const REQUEST_SAYS = { boxes: 'the boxes', fronts: 'the doors', spraying: 'spraying' } as const

const requests = (load: Workload): readonly TaskDraft[] =>
  (['boxes', 'fronts', 'spraying'] as const).map((id) => {
    const request = load.request(id)
    return {
      ...office,
      id: REQUESTS[id],
      title: `Send the request for ${REQUEST_SAYS[id]}`,
      after: ['A2'],
      needed: request !== undefined,
      efforts: [effort('request', 1)],
      marks: marksAsked(request),
      ...(request === undefined || id === 'spraying' ? {} : { wait: delivery(load, request.leadDays) }),
      checks: ['The shop repeats sizes, quantities and date in writing.'],
    }
  })

const marksAsked = (request: SupplyRequest | undefined): readonly string[] => [
  ...new Set((request?.lines ?? []).map((l) => l.mark)),
]

const bookings = (load: Workload): readonly TaskDraft[] =>
  (['electrician', 'gas fitter', 'heating fitter'] as const).map((trade) => {
    const visits = tradeCalls(load)
      .filter((call) => call.trade === trade)
      .map((call) => call.says)
    return {
      ...office,
      id: BOOKINGS[trade],
      title: `Book the ${trade}`,
      after: ['A2'],
      needed: visits.length > 0,
      efforts: [effort('book', 1)],
      wait: { workingDays: load.lead('trade'), says: `the ${trade}’s date` },
      setOut: visits,
      cautions: [CAUTIONS.trade],
    }
  })

/** All that other trades are called for: devices, what is in old pieces, the mains side of lights. */
export const tradeCalls = ({ built }: Workload): readonly TradeCall[] => [
  ...built.stripOut.trades,
  ...built.devices.trades,
  ...built.mantel.trades,
  ...built.lights.trades,
]

function oldPaintCheck(load: Workload): TaskDraft {
  const { trim, pieces, paint } = load.built.stripOut
  const atRisk = paint.disturbs && (paint.mayHoldLead || paint.mayHoldAsbestos)
  return {
    id: 'A7',
    title: 'Lead and asbestos check',
    after: ['A1'],
    needed: load.context.bays.length > 0,
    efforts: atRisk ? [effort('old-paint', 1)] : [],
    place: 'site',
    work: 'office',
    ...(atRisk ? { wait: { workingDays: load.lead('result'), says: 'the result of the sample' } } : {}),
    setOut: [...trim.says, ...pieces.map((p) => p.says)],
    checks: [
      atRisk
        ? 'Before anything is cut, stripped, sanded or drilled: test result in hand, or everything worked as lead paint.'
        : 'Ask again on site: anything old that nobody mentioned?',
    ],
    cautions: [CAUTIONS.lead, CAUTIONS.asbestos],
  }
}
