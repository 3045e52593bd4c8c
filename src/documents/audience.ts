import { siteNote } from '../job/chapters/install.ts'
import { clientContact, clientName, privateNote, siteAddress, title, yourBusiness } from '../job/chapters/job.ts'
import { quoteNumber, validDays } from '../job/chapters/price.ts'
import { answerOf } from '../job/job.ts'
import type { CalendarPlan } from '../plan/calendar/calendar.ts'
import type { CoatingPlan } from '../plan/coating/coating.ts'
import type { Breast } from '../plan/mantel/mantel.ts'
import type { Plan } from '../plan/plan.ts'
import { lookAt } from '../plan/settle.ts'
import type { RequestLine } from '../plan/supply/supply.ts'
import type { Wall } from '../plan/survey/survey.ts'
import { type ChapterId, type Field, NOT_MEASURED } from '../things/field.ts'
import type { NamedBay } from '../things/place.ts'
import type { Show } from '../things/show.ts'
import type { Day } from '../units/day.ts'
import { ZERO } from '../units/length.ts'
import { type Assumed, assumedOf } from './assumed.ts'
import {
  CLIENT_PRICE,
  type ClientPrice,
  HELPER_BOX,
  HELPER_BREAST,
  HELPER_DRAWER,
  HELPER_JOINT,
  HELPER_LAYOUT,
  HELPER_LEAF,
  HELPER_PART,
  HELPER_SHELF,
  HELPER_STICK,
  HELPER_TASK,
  HELPER_WALL,
  type HelperBox,
  type HelperDrawer,
  type HelperJoint,
  type HelperLayout,
  type HelperLeaf,
  type HelperPart,
  type HelperShelf,
  type HelperStickPlan,
  type HelperTask,
  type HelperWall,
  OFFICE_PRICE,
  OFFICE_PURCHASE,
  type OfficePrice,
  type OfficePurchase,
  SHOP_LINE,
  SHOP_REQUEST,
  type ShopRequest,
} from './audience-fields.ts'
import { type Accepted, acceptedConfirms } from './confirms.ts'
import { type Dangers, dangersOf } from './dangers.ts'
import { withoutHeldSizes } from './install-sequence/held-lines.ts'
import { type MaterialNames, materialNames } from './material-names.ts'
import { type Noted, notesOf } from './notes.ts'
import { only } from './only.ts'
import { type OrderDay, orderDays } from './order-days.ts'
import { helperFigureLines, type OwnFigureLine, ownFigureLines } from './own-figures.ts'
import { type ChangesSince, partChanges } from './part-changes.ts'
import { type ScopeLine, scopeOf } from './scope.ts'
import { type Waiting, waitingFor } from './waiting.ts'

/** How sizes and masses are written; nothing of money. */
export type PlainShow = Omit<Show, 'currency'>

/** All that a helper's papers are made from. Of the client: the site's address. Of money: nothing. */
export interface ForHelper {
  readonly title: string
  readonly siteAddress: string | undefined
  readonly siteNote: string | undefined
  readonly show: PlainShow
  readonly bays: readonly NamedBay[]
  readonly parts: readonly HelperPart[]
  readonly materials: MaterialNames
  readonly layouts: readonly HelperLayout[]
  readonly sticks: readonly HelperStickPlan[]
  readonly walls: readonly HelperWall[]
  readonly boxes: readonly HelperBox[]
  readonly leaves: readonly HelperLeaf[]
  readonly drawers: readonly HelperDrawer[]
  readonly shelves: readonly HelperShelf[]
  readonly breasts: readonly Pick<Breast, (typeof HELPER_BREAST)[number]>[]
  readonly joints: readonly HelperJoint[]
  readonly passes: number
  readonly tasks: readonly HelperTask[]
  readonly twoPeople: ReadonlyMap<string, string>
  readonly colours: { readonly builtIn: string; readonly wall: string }
  readonly chipKit: CoatingPlan['chipKit']
  readonly dangers: Dangers
  readonly waiting: readonly Waiting[]
  readonly orders: readonly OrderDay[]
  readonly notes: readonly Noted[]
  /** Values assumed where nobody measured. */
  readonly assumed: readonly Assumed[]
  readonly accepted: readonly Accepted[]
  /** Figures of the shop's own that this job reckons with instead of the published ones. */
  readonly ownFigures: readonly OwnFigureLine[]
  /** For each packet handed out before: which parts are not what they were then. */
  readonly changes: readonly ChangesSince[]
  readonly finish: Day
}

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

/** Chapters whose messages a helper may read: none of money or of buying. */
const HELPER_CHAPTERS: readonly ChapterId[] = [
  'wall',
  'firebox',
  'cabinets',
  'shelves',
  'mantel',
  'finish',
  'hardware',
  'install',
  'job',
]

/** Chapters whose confirmations are the client's own choices; what the shop does with its hands is not. */
const CLIENT_CHAPTERS: readonly ChapterId[] = ['wall', 'firebox', 'cabinets', 'shelves', 'mantel', 'finish']

/** The helper's share of a plan. */
export function forHelper(plan: Plan): ForHelper {
  const seen = { bays: plan.bays, parts: plan.parts.map(helperPart), ...wallShare(plan) }
  return {
    ...seen,
    title: titleOf(plan),
    siteAddress: textAnswer(plan, siteAddress),
    siteNote: textAnswer(plan, siteNote),
    show: plainShow(plan.show),
    materials: materialNames(plan),
    layouts: plan.panels.layouts.map((layout) => ({
      ...only(layout, HELPER_LAYOUT),
      laid: layout.laid.map((laid) => ({ ...laid, part: helperPart(laid.part) })),
    })),
    sticks: plan.panels.sticks.map((stick) => ({
      ...only(stick, HELPER_STICK),
      bars: stick.bars.map(({ pieces, left }) => ({
        left,
        pieces: pieces.map(({ part, length }) => ({ part: helperPart(part), length })),
      })),
    })),
    joints: plan.joints.joints.map((joint) => only(joint, HELPER_JOINT)),
    passes: plan.joints.passes,
    tasks: plan.calendar.tasks.map((task) => withoutHeldSizes(only(task, HELPER_TASK), seen)),
    twoPeople: plan.fixings.twoPeople,
    colours: { builtIn: plan.coating.colours['built-in'], wall: plan.coating.colours.wall },
    chipKit: plan.coating.chipKit,
    dangers: dangersOf(plan),
    waiting: waitingFor(plan),
    orders: orderDays(plan),
    notes: notesOf(plan, HELPER_CHAPTERS),
    assumed: assumedOf(plan, HELPER_CHAPTERS),
    accepted: acceptedConfirms(plan, HELPER_CHAPTERS),
    ownFigures: helperFigureLines(plan),
    changes: plan.job.issued.map((issue) => ({ revision: issue.revision, parts: partChanges(issue, plan) })),
    finish: plan.calendar.finish,
  }
}

/** What is drawn of the wall. */
const wallShare = (plan: Plan) => ({
  walls: plan.survey.walls.map((wall) => helperWall(wall, plan)),
  boxes: plan.boxes.boxes.map((box): HelperBox => only(box, HELPER_BOX)),
  leaves: plan.fronts.leaves.map((leaf): HelperLeaf => only(leaf, HELPER_LEAF)),
  drawers: plan.fronts.drawers.map((drawer): HelperDrawer => only(drawer, HELPER_DRAWER)),
  shelves: plan.shelves.shelves.map((shelf): HelperShelf => only(shelf, HELPER_SHELF)),
  breasts: plan.mantel.breasts.map((breast) => only(breast, HELPER_BREAST)),
})

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

/** The task that is a visit to measure only. */
const MEASURING = 'A2'

/** The client's share of a plan. */
export function forClient(plan: Plan): ForClient {
  const first = (place: 'shop' | 'site') =>
    plan.calendar.tasks.find((t) => t.place === place && t.hours > 0 && t.id !== MEASURING)?.start
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

const helperWall = (wall: Wall, { slots }: Plan): HelperWall => ({
  ...only(wall, HELPER_WALL),
  crown: slots.levels.crownKept ? wall.crown.drop : ZERO,
  baseboard: wall.kind !== 'breast' && slots.levels.baseboardKept ? wall.baseboard.height : ZERO,
})

const helperPart = (part: Plan['parts'][number]): HelperPart => only(part, HELPER_PART)

/** The same ways of writing, without the currency. */
const plainShow = ({ units, length, withUnit, mass, area, volume }: Show): PlainShow => ({
  units,
  length,
  withUnit,
  mass,
  area,
  volume,
})

const titleOf = (plan: Plan): string => usedValue(plan, title) ?? 'Built-ins'

function textAnswer(plan: Plan, field: Field<string>): string | undefined {
  const answer = answerOf(plan.job, field, 'job')
  const text = answer === NOT_MEASURED ? '' : (answer ?? '').trim()
  return text === '' ? undefined : text
}

const usedValue = <T>(plan: Plan, field: Field<T>): T | undefined => lookAt(plan.job, plan.used, undefined)(field)
