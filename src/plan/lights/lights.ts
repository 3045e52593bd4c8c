import * as chapter from '../../job/chapters/lights.ts'
import { type Message, raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import type { Length } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { TradeCall } from '../devices/device-opening.ts'
import type { ShelfPlan } from '../shelves/shelves.ts'
import type { RunnableWall, Survey } from '../survey/survey.ts'
import { backHole, boxLight, sideHoles } from './box-light.ts'
import { type Drivers, driversOf } from './drivers.ts'
import type { Light, LightMake, LightWork } from './light.ts'
import { driverOutside, mainsByElectrician } from './light-messages.ts'
import { aboutLights } from './profile-work.ts'
import { type PlannedLight, shelfLight } from './shelf-light.ts'

export interface LightPlan {
  readonly lights: readonly Light[]
  readonly drivers: readonly Drivers[]
  readonly mount: LightMake['mount']
  /** Calls to the electrician for the mains side. */
  readonly trades: readonly TradeCall[]
  /** All parts, with the grooves and cable holes of the lights in them. */
  readonly parts: readonly Part[]
  readonly messages: readonly Message[]
}

/** What lights may be set into. */
export interface Unlit {
  readonly survey: Pick<Survey, 'walls'>
  readonly boxes: BoxPlan
  readonly shelves: ShelfPlan
  readonly parts: readonly Part[]
}

/** Strip lights under shelves and in boxes: where they lie, their cable's way, drivers, and what that does to the parts. */
export function lights(context: PlanContext, unlit: Unlit): LightPlan {
  const wanted = context.settle.choice(chapter.lights, undefined, () => ({
    value: 'none' as const,
    because: 'nobody asked for any',
  }))
  if (wanted === 'none')
    return { lights: [], drivers: [], mount: 'surface', trades: [], parts: unlit.parts, messages: [] }
  const make = makeOf(context, unlit, wanted)
  const bays = unlit.survey.walls
    .filter((w): w is RunnableWall => w.kind !== 'breast')
    .map((wall) => bayOf(context, make, { ...unlit, wall, wanted }))
  const lit = bays.flatMap((b) => b.lights)
  const drivers = bays.flatMap((b) => b.drivers)
  const work = bays.flatMap((b) => b.work)
  return {
    lights: lit,
    drivers,
    mount: make.mount,
    trades: drivers.map(callFor),
    parts: unlit.parts.map((part) => withLight(part, work)),
    messages: [...bays.flatMap((b) => b.messages), ...driverMessages(drivers)],
  }
}

type Wanted = 'shelves' | 'boxes' | 'both'

/** A groove is suggested only where the thinnest panel keeps enough wood over it. */
function makeOf({ settle, figures, show }: PlanContext, unlit: Unlit, wanted: Wanted): LightMake {
  const [width = figures.length('lights.profile-width'), depth = figures.length('lights.profile-depth')] =
    settle.choice(chapter.lightProfile, undefined, () => ({
      value: [figures.length('lights.profile-width'), figures.length('lights.profile-depth')],
      origin: 'assumed',
      because: 'a usual profile: check against the sheet',
    }))
  const least = figures.length('lights.skin-least')
  const thinnest = thinnestHost(unlit, wanted)
  const fits = thinnest === undefined || thinnest - depth >= least
  return {
    width,
    depth,
    mount: settle.choice(chapter.lightMount, undefined, () =>
      fits
        ? { value: 'groove' as const, because: 'lies flush, and the panel is thick enough' }
        : { value: 'surface' as const, because: `a groove would leave less than ${show.withUnit(least)} of the panel` },
    ),
    place: settle.choice(chapter.lightPlace, undefined, () => ({
      value: 'front' as const,
      because: 'lights what stands there, and nobody sees the strip',
    })),
    watts: settle.choice(chapter.lightWatts, undefined, () => ({
      value: figures.number('lights.watts'),
      origin: 'assumed',
      because: 'a usual white strip: check against the sheet',
    })),
    driver: settle.choice(chapter.lightDriver, undefined, () =>
      unlit.boxes.boxes.length > 0
        ? { value: 'box' as const, because: 'reached by opening a door' }
        : { value: 'elsewhere' as const, because: 'there is no box for it' },
    ),
  }
}

function thinnestHost({ parts, boxes, shelves }: Unlit, wanted: Wanted): Length | undefined {
  const shelfMarks = new Set(shelves.shelves.map((s) => s.mark))
  const under = wanted === 'boxes' ? [] : parts.filter((p) => shelfMarks.has(p.mark)).map((p) => p.thickness)
  const inside = wanted === 'shelves' || boxes.boxes.length === 0 ? [] : [boxes.carcassThickness]
  return [...under, ...inside].toSorted((a, b) => a - b)[0]
}

interface BayToLight extends Unlit {
  readonly wall: RunnableWall
  readonly wanted: Wanted
}

interface LitBay {
  readonly lights: readonly Light[]
  readonly drivers: readonly Drivers[]
  readonly work: readonly LightWork[]
  readonly messages: readonly Message[]
}

function bayOf(context: PlanContext, make: LightMake, on: BayToLight): LitBay {
  const { wall, wanted, parts } = on
  const boxes = on.boxes.boxes.filter((b) => b.run.bay.id === wall.bay.id)
  const shelves = on.shelves.shelves.filter((s) => s.bay.id === wall.bay.id)
  const driverBox = make.driver === 'box' ? boxes[0] : undefined
  const planned: readonly PlannedLight[] = [
    ...(wanted === 'boxes' ? [] : shelves.map((shelf) => shelfLight(context, make, { shelf, wall, parts, driverBox }))),
    ...(wanted === 'shelves' ? [] : boxes.map((box) => boxLight(context, make, { box, parts, driverBox }))),
  ].filter((p) => p !== undefined)
  if (planned.length === 0) return { lights: [], drivers: [], work: [], messages: [] }
  const lit = planned.map((p) => p.light)
  const holes = cableHoles(context, on, { boxes, driverBox, fromAbove: shelves.length > 0 && wanted !== 'boxes' })
  return {
    lights: lit,
    drivers: [driversOf(context, make, { bay: wall.bay, lights: lit, box: driverBox })],
    work: [...planned.flatMap((p) => p.work), ...holes.work],
    messages: [...planned.flatMap((p) => p.messages), ...holes.messages],
  }
}

/** Through the driver box's back where cables come down the wall, and from box to box where boxes are lit. */
function cableHoles(
  context: PlanContext,
  { boxes: plan, parts, wanted }: BayToLight,
  at: { readonly boxes: readonly Box[]; readonly driverBox: Box | undefined; readonly fromAbove: boolean },
): Pick<LitBay, 'work' | 'messages'> {
  const through = wanted === 'shelves' ? [] : sideHoles(context, at.boxes, parts)
  if (!at.fromAbove || at.driverBox === undefined) return { work: through, messages: [] }
  const down = backHole(context, { box: at.driverBox, carcass: plan.carcassThickness, parts })
  return { work: [...through, ...down.work], messages: down.messages }
}

function withLight(part: Part, work: readonly LightWork[]): Part {
  const own = work.filter((w) => w.part === part.id)
  if (own.length === 0) return part
  return {
    ...part,
    cutOuts: [...part.cutOuts, ...own.flatMap((w) => w.cutOuts)],
    details: [...part.details, ...own.flatMap((w) => w.details)],
    waitsFor: [...new Set([...part.waitsFor, ...own.flatMap((w) => w.waitsFor)])],
  }
}

const driverPlace = ({ box, bay }: Drivers): string =>
  box === undefined ? `${bay.name}, within reach` : `${bay.name}, in box ${box.number}`

const callFor = (drivers: Drivers): TradeCall => ({
  trade: 'electrician',
  says: `${driverPlace(drivers)}: a switched point for the light driver (${drivers.count} × ${drivers.watts} W), reachable without taking anything apart; power off and proved dead`,
  bay: drivers.bay.id,
})

const wattsOf = (drivers: readonly Drivers[]): string => `${drivers.reduce((w, d) => w + d.watts * d.count, 0)} W`

function driverMessages(drivers: readonly Drivers[]): readonly Message[] {
  if (drivers.length === 0) return []
  const outside = drivers.filter((d) => d.box === undefined)
  const where = (some: readonly Drivers[]) => some.map((d) => d.bay.name).join(', ')
  return [
    ...(outside.length === 0
      ? []
      : [raise(driverOutside, aboutLights('lights'), { where: where(outside), watts: wattsOf(outside) })]),
    raise(mainsByElectrician, aboutLights('lights'), {
      where: drivers.map(driverPlace).join('; '),
      watts: wattsOf(drivers),
    }),
  ]
}
