import { type Figures, figuresIn } from '../figures/figures.ts'
import { baysOf, type Job } from '../job/job.ts'
import { merged } from '../things/contribution.ts'
import type { JointDraft } from '../things/joint.ts'
import type { Message } from '../things/message.ts'
import type { CutOut, Part, PartId } from '../things/part.ts'
import type { NamedBay } from '../things/place.ts'
import type { Show } from '../things/show.ts'
import type { Purchase } from '../things/supplies.ts'
import { boxes } from './boxes/boxes.ts'
import type { Built } from './built.ts'
import { woodByFire } from './by-fire/by-fire.ts'
import { type CalendarPlan, calendar } from './calendar/calendar.ts'
import { carryingIn } from './carrying-in/carrying-in.ts'
import { coating } from './coating/coating.ts'
import type { PlanContext } from './context.ts'
import { devices } from './devices/devices.ts'
import { extras } from './extras/extras.ts'
import { fixings } from './fixings/fixings.ts'
import { fronts } from './fronts/fronts.ts'
import { joints } from './joints/joints.ts'
import { lights } from './lights/lights.ts'
import { readyMadeMessages } from './make-or-buy/ready-made-messages.ts'
import { withCableHoles } from './mantel/cable-holes.ts'
import { mantels } from './mantel/mantel.ts'
import { ownMarked } from './own-suggestions.ts'
import { type Effort, panels } from './panels/panels.ts'
import { type Price, price } from './price/price.ts'
import { purchases } from './purchases/purchases.ts'
import { plinths } from './run/levels.ts'
import { slots } from './run/slot.ts'
import { settings } from './settings.ts'
import { type Settle, settleFrom } from './settle.ts'
import { shelves } from './shelves/shelves.ts'
import { stripOut } from './strip-out/strip-out.ts'
import { supply } from './supply/supply.ts'
import { survey } from './survey/survey.ts'
import { tapeTime } from './tasks/tape-time.ts'
import { tasks } from './tasks/tasks.ts'
import { topsAndEnds } from './tops/tops-and-ends.ts'

/** The whole plan: everything shown or printed is read off it. */
export interface Plan extends Built {
  readonly job: Job
  readonly bays: readonly NamedBay[]
  readonly show: Show
  readonly figures: Figures
  /** What was used for each question: the answer or the suggestion, with its reason. */
  readonly used: Settle['used']
  readonly calendar: CalendarPlan
  readonly purchases: readonly Purchase[]
  readonly price: Price
  /** Stops first, then confirms, then notes; within a weight in the plan's order. */
  readonly messages: readonly Message[]
}

/**
 * The plan of a job: START READING HERE. The steps stand in order; each leans only on those above it.
 * Pure: the same job and effort give the same plan. Never fails on a job the schema accepts, however little is answered.
 */
export function makePlan(job: Job, effort: Effort): Plan {
  const context = contextOf(job)
  const { built, messages } = build(context, effort)
  const { work, dates, messages: ofTape } = worked(context, built)
  const bought = purchases(context, built, work.tasks)
  const money = price(context, built, bought, dates.tasks)
  return {
    ...built,
    job,
    bays: context.bays,
    show: context.show,
    figures: context.figures,
    used: ownMarked(context, (published) => makePlan(published, 'quick').used),
    calendar: dates,
    purchases: bought,
    price: money,
    messages: byWeight([...messages, ...work.messages, ...dates.messages, ...ofTape, ...money.messages]),
  }
}

/** Tasks and their dates; once more with a second taping where the dates leave the first tape on for too long. */
function worked(context: PlanContext, built: Built) {
  const once = tasks(context, built, 'once')
  const dates = calendar(context, once.tasks)
  const { taping, messages } = tapeTime(context, dates.tasks)
  if (taping === 'once') return { work: once, dates, messages }
  const twice = tasks(context, built, taping)
  return { work: twice, dates: calendar(context, twice.tasks), messages }
}

/** What is built, then what that takes: panels, coats, caulk, screws, and the way into the house. */
function build(context: PlanContext, effort: Effort): { readonly built: Built; readonly messages: readonly Message[] } {
  const { standing, drafts, ...stood } = stand(context)
  const { survey: surveyed, boxes: boxed, fronts: front, mantel, shelves: shelf } = standing
  const supplied = supply(context, [...standing.lights.parts, ...standing.extras.parts], front)
  const parts = supplied.parts
  const laid = panels(context, parts, effort)
  const carried = carryingIn(context, { parts, boxes: boxed, shelves: shelf, mantel, panels: laid })
  const jointed = joints(context, drafts)
  const coated = coating(context, {
    survey: surveyed,
    supply: supplied,
    fronts: front,
    mantel,
    joints: jointed.joints,
  })
  const fixed = fixings(context, { survey: surveyed, parts, boxes: boxed, fronts: front, panels: laid })
  return {
    built: {
      ...standing,
      supply: supplied,
      parts,
      panels: laid,
      carryingIn: carried,
      coating: coated,
      joints: jointed,
      fixings: fixed,
    },
    messages: [
      ...stood.messages,
      ...readyMadeMessages(context, supplied, standing.boxes),
      ...[supplied, laid, carried, jointed, coated, fixed].flatMap((step) => step.messages),
    ],
  }
}

/** Everything that stands at the wall, and the joints it makes with it. */
interface Stood {
  readonly standing: Omit<Built, 'supply' | 'parts' | 'panels' | 'carryingIn' | 'coating' | 'joints' | 'fixings'>
  readonly drafts: readonly JointDraft[]
  readonly messages: readonly Message[]
}

/** Step by step: the wall, what comes off it, what stands at it. */
function stand(context: PlanContext): Stood {
  const surveyed = survey(context)
  const slotted = slots(context, surveyed)
  const boxed = boxes(context, slotted)
  const plinth = plinths(context, slotted, boxed)
  const cut = devices(context, surveyed, boxed)
  const front = fronts(context, boxed)
  const tops = topsAndEnds(context, slotted, boxed)
  const mantel = mantels(context, surveyed)
  const shelf = shelves(context, surveyed, tops, mantel)
  const all = merged(
    slotted.contribution,
    plinth,
    ...[boxed, cut, front, tops, mantel, shelf].map((s) => s.contribution),
  )
  const byFire = woodByFire(context, { survey: surveyed, boxes: boxed, mantel, parts: all.parts })
  const wired = withCableHoles(context, { survey: surveyed, mantel, parts: withCutOuts(byFire.parts, cut.cutOuts) })
  const unlit = wired.parts
  const lit = lights(context, { survey: surveyed, boxes: boxed, shelves: shelf, parts: unlit })
  const own = extras(context, surveyed)
  const off = stripOut(context, { survey: surveyed, slots: slotted }, mantel)
  return {
    standing: {
      survey: surveyed,
      slots: slotted,
      boxes: boxed,
      devices: cut,
      fronts: front,
      tops,
      mantel,
      shelves: shelf,
      lights: lit,
      extras: own,
      stripOut: off,
    },
    drafts: all.joints,
    messages: [surveyed, all, byFire, wired, lit, own, off].flatMap((step) => step.messages),
  }
}

/** Reads units, cut step and currency first: every other step shows and rounds in them. */
function contextOf(job: Job): PlanContext {
  const settle = settleFrom(job)
  const { units, cut, show } = settings(settle)
  const figures = figuresIn(units, job.figures)
  return { job, bays: baysOf(job), figures, cut, show, settle }
}

const withCutOuts = (parts: readonly Part[], cutOuts: ReadonlyMap<PartId, readonly CutOut[]>): readonly Part[] =>
  parts.map((part) => ({ ...part, cutOuts: [...part.cutOuts, ...(cutOuts.get(part.id) ?? [])] }))

const WEIGHTS = ['stop', 'confirm', 'note'] as const
const byWeight = (messages: readonly Message[]): readonly Message[] =>
  WEIGHTS.flatMap((weight) => messages.filter((m) => m.weight === weight))
