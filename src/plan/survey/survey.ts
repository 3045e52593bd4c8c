import type { Edge } from '../../geometry/edge.ts'
import { floor } from '../../job/chapters/wall.ts'
import type { DeviceRow } from '../../job/chapters/wall-devices.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, shortest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { alcoveWall } from './alcove-survey.ts'
import { breastWall } from './breast-survey.ts'
import { flatWall } from './flat-survey.ts'
import { pointsOutside } from './points-outside.ts'
import { unusableSurvey } from './survey-messages.ts'

/** What all kinds of bay have. */
export interface BayWall {
  readonly bay: NamedBay
  /** x of the bay's own zero in the wall's axes. */
  readonly originX: Length
  /** Width taken up along the wall (at the lowest height measured). */
  readonly width: Length
  /** Ceiling over x. */
  readonly ceiling: Edge
  readonly lowestCeiling: Length
  readonly crown: { readonly drop: Length; readonly projection: Length }
  /** Measurements still to take, by what they feed. A part takes the union of those it rests on. */
  readonly waits: {
    readonly widths: readonly QuestionKey[]
    readonly depth: readonly QuestionKey[]
    readonly ceiling: readonly QuestionKey[]
    readonly floor: readonly QuestionKey[]
    readonly baseboard: readonly QuestionKey[]
    readonly fixing: readonly QuestionKey[]
    readonly devices: readonly QuestionKey[]
  }
}

/** What holds a screw: stud centres from the bay's left end, masonry everywhere, or nothing known. */
export type WallFixing =
  | { readonly kind: 'studs'; readonly centres: readonly Length[] }
  | { readonly kind: 'masonry' }
  | { readonly kind: 'hollow' }

export interface RunWall extends BayWall {
  /** Floor drop below z = 0, over x. */
  readonly floor: Edge
  readonly baseboard: { readonly height: Length; readonly thickness: Length }
  readonly bow: { readonly hollow: Length; readonly proud: Length }
  readonly fixing: WallFixing
  readonly devices: readonly DeviceRow[]
}

/** Two returns and a back. Edges run over z: x of each side at the back wall and at depth `frontDepth`. */
export interface AlcoveWall extends RunWall {
  readonly kind: 'alcove'
  readonly left: { readonly back: Edge; readonly front: Edge }
  readonly right: { readonly back: Edge; readonly front: Edge }
  /** Depth at which the front widths were measured. */
  readonly frontDepth: Length
  /** Depth of each return; undefined = a room wall that goes on. */
  readonly returnLeft: Length | undefined
  readonly returnRight: Length | undefined
  /** The shortest return that exists; undefined when neither does. */
  readonly depth: Length | undefined
}

export interface FlatWall extends RunWall {
  readonly kind: 'flat'
  readonly wallAtLeft: boolean
  readonly wallAtRight: boolean
  /** How far a breast beside this wall stands out (the shallower of two); undefined without one. */
  readonly besideBreast: Length | undefined
}

export interface BreastWall extends BayWall {
  readonly kind: 'breast'
  /** How far it stands out of the alcoves' back wall. */
  readonly projection: Length
}

export type Wall = AlcoveWall | FlatWall | BreastWall
/** A wall a run of boxes or shelves can stand at. */
export type RunnableWall = AlcoveWall | FlatWall

export interface Survey {
  readonly walls: readonly Wall[]
  readonly messages: readonly Message[]
}

/** One bay as its own file reads it; the survey puts it at its place along the wall. */
export interface SurveyedBay<W extends Wall = Wall> {
  readonly wall: W
  readonly messages: readonly Message[]
}

/**
 * The wall as measured, bay by bay from the left. Axes: x right from the wall's left end, y out of the back wall,
 * z up from the highest floor point. What is not measured yet stands at a stated assumption and is waited for.
 */
export function survey(context: PlanContext): Survey {
  const start: { readonly next: Length; readonly bays: readonly SurveyedBay[] } = { next: ZERO, bays: [] }
  const { bays } = context.bays.reduce((done, bay) => {
    const here = within(bay.id, () => surveyedBay(context, bay, done.next))
    return { next: sum(done.next, here.wall.width), bays: [...done.bays, here] }
  }, start)
  const walls = bays.map((b, i) => besideBreasts(b.wall, [bays[i - 1]?.wall, bays[i + 1]?.wall]))
  const runs = walls.filter((w): w is RunnableWall => w.kind !== 'breast')
  return {
    walls,
    messages: [
      ...bays.flatMap((b) => b.messages),
      ...runs.flatMap((wall) => pointsOutside(context, wall)),
      ...noHighestPoint(context, walls),
    ],
  }
}

/** A flat wall beside a breast knows how far that stands out, and waits for its measurement. */
function besideBreasts(wall: Wall, beside: readonly (Wall | undefined)[]): Wall {
  if (wall.kind !== 'flat') return wall
  const breasts = beside.filter((w): w is BreastWall => w?.kind === 'breast')
  const [first, ...others] = breasts.map((b) => b.projection)
  if (first === undefined) return wall
  const depth = [...wall.waits.depth, ...breasts.flatMap((b) => b.waits.depth)]
  return { ...wall, besideBreast: shortest(first, ...others), waits: { ...wall.waits, depth } }
}

function surveyedBay(context: PlanContext, bay: NamedBay, originX: Length): SurveyedBay {
  switch (bay.kind) {
    case 'alcove':
      return alcoveWall(context, bay, originX)
    case 'flat':
      return flatWall(context, bay, originX)
    case 'breast':
      return breastWall(context, bay, originX)
  }
}

/** One point of the wall's floor is the level line's zero; when every drop is measured and none is 0, the line was lost. */
function noHighestPoint(context: PlanContext, walls: readonly Wall[]): readonly Message[] {
  const runs = walls.filter((w): w is RunnableWall => w.kind !== 'breast')
  const [first] = runs
  const drops = runs.flatMap((w) => w.floor.map((k) => k.v))
  const [firstDrop, ...otherDrops] = drops
  if (
    first === undefined ||
    firstDrop === undefined ||
    runs.some((w) => w.waits.floor.length > 0) ||
    drops.some((d) => d <= 0)
  )
    return []
  const values = {
    what: 'The least floor drop of the wall',
    is: context.show.withUnit(shortest(firstDrop, ...otherDrops)),
    allowed: 'Drops are measured from the highest floor point of the whole wall, so one of them is 0',
  }
  return [raise(unusableSurvey, { about: questionKey(first.bay.id, floor), place: 'whole wall' }, values)]
}
