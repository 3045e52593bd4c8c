import type { Edge } from '../../geometry/edge.ts'
import { edgeThrough } from '../../geometry/edge-line.ts'
import { baseboard, bow, ceiling, crown, floor, studs, wallKind } from '../../job/chapters/wall.ts'
import { devices } from '../../job/chapters/wall-devices.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, longest, over, shortest, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BayWall, RunWall, WallFixing } from './survey.ts'
import { surveyOutside, unusableSurvey } from './survey-messages.ts'

type Waits = BayWall['waits']

interface CeilingReading extends Pick<BayWall, 'ceiling' | 'lowestCeiling' | 'crown'> {
  readonly waits: Pick<Waits, 'ceiling'>
  readonly messages: readonly Message[]
}

interface RunReading extends Pick<RunWall, 'floor' | 'baseboard' | 'bow' | 'fixing' | 'devices'> {
  readonly waits: Pick<Waits, 'floor' | 'baseboard' | 'devices' | 'fixing'>
  readonly messages: readonly Message[]
}

/** Nothing left to measure. */
export const NO_WAITS: Waits = {
  widths: [],
  depth: [],
  ceiling: [],
  floor: [],
  baseboard: [],
  fixing: [],
  devices: [],
}

/** Ceiling and crown, asked at every kind of bay. Readings are spread evenly from the left end to the right. */
export function ceilingOf(context: PlanContext, bay: NamedBay, width: Length): CeilingReading {
  const { settle, figures } = context
  const heights = settle.measured(ceiling, bay, () => ({
    value: [figures.length('survey.assumed-ceiling')],
    because: 'until it is measured',
  }))
  const [drop = ZERO, projection = ZERO] = settle.measured(crown, bay, () => ({
    value: [ZERO, ZERO],
    because: 'no crown moulding noted',
  })).value
  const lowest = shortest(...first(heights.value))
  return {
    ceiling: spread(heights.value, width),
    lowestCeiling: lowest,
    crown: { drop, projection },
    waits: { ceiling: heights.waitsFor },
    messages: ceilingMessages(context, bay, lowest),
  }
}

const first = (values: readonly Length[]): [Length, ...Length[]] => [values[0] ?? ZERO, ...values.slice(1)]

function spread(values: readonly Length[], width: Length): Edge {
  const gaps = Math.max(1, values.length - 1)
  return values.map((v, i) => ({ at: over(times(width, i), gaps), v }))
}

function ceilingMessages(context: PlanContext, bay: NamedBay, lowest: Length): readonly Message[] {
  const { figures, show } = context
  const least = figures.length('survey.ceiling-least')
  const most = figures.length('survey.ceiling-most')
  if (lowest >= least && lowest <= most) return []
  const values = {
    what: `The ceiling of the ${bay.name}`,
    is: show.withUnit(lowest),
    usual: `${show.length(least)} to ${show.withUnit(most)}`,
  }
  return [raise(surveyOutside, { about: questionKey(bay.id, ceiling), place: bay.name }, values)]
}

/** Floor, baseboard, bow, what holds a screw, and devices: asked where a run may stand. */
export function runWallOf(context: PlanContext, bay: NamedBay, width: Length): RunReading {
  const { settle } = context
  const drops = settle.measured(floor, bay, () => ({
    value: [{ x: ZERO, drop: ZERO }],
    because: 'level, until it is measured',
  }))
  const board = settle.measured(baseboard, bay, () => ({ value: [ZERO, ZERO], because: 'none, until it is measured' }))
  const [hollow = ZERO, proud = ZERO] = settle.measured(bow, bay, () => ({
    value: [ZERO, ZERO],
    because: 'a flat wall',
  })).value
  const found = settle.measured(devices, bay, () => ({ value: [], because: 'none, until somebody has looked' }))
  const held = fixingOf(context, bay, width)
  const [height = ZERO, thickness = ZERO] = board.value
  return {
    floor: floorEdge(drops.value),
    baseboard: { height, thickness },
    bow: { hollow, proud },
    fixing: held.fixing,
    devices: found.value,
    waits: { floor: drops.waitsFor, baseboard: board.waitsFor, devices: found.waitsFor, fixing: held.waitsFor },
    messages: floorMessages(context, bay, drops.value),
  }
}

/** Floor drop over x; of two readings at one place the larger counts. */
function floorEdge(rows: readonly { readonly x: Length; readonly drop: Length }[]): Edge {
  const dropAt = (x: Length) => rows.filter((r) => r.x === x).reduce<Length>((most, r) => longest(most, r.drop), ZERO)
  return edgeThrough(
    rows.map((r) => r.x),
    dropAt,
  )
}

function floorMessages(
  context: PlanContext,
  bay: NamedBay,
  rows: readonly { readonly drop: Length }[],
): readonly Message[] {
  const above = rows.find((r) => r.drop < 0)
  if (above === undefined) return []
  const values = {
    what: `A floor drop of the ${bay.name}`,
    is: context.show.withUnit(above.drop),
    allowed: 'The highest floor point of the whole wall has drop 0; every other point lies below it',
  }
  return [raise(unusableSurvey, { about: questionKey(bay.id, floor), place: bay.name }, values)]
}

function fixingOf(
  context: PlanContext,
  bay: NamedBay,
  width: Length,
): { readonly fixing: WallFixing; readonly waitsFor: readonly QuestionKey[] } {
  const { settle } = context
  const kind = settle.measured(wallKind, bay, () => ({ value: 'studs' as const, because: 'until it is known' }))
  if (kind.value !== 'studs') return { fixing: { kind: kind.value }, waitsFor: kind.waitsFor }
  const pitch = context.figures.length('survey.assumed-stud-pitch')
  const centres = settle.measured(studs, bay, () => ({
    value: everyPitch(pitch, width),
    because: `every ${context.show.withUnit(pitch)}, until they are found`,
  }))
  return { fixing: { kind: 'studs', centres: centres.value }, waitsFor: [...kind.waitsFor, ...centres.waitsFor] }
}

const everyPitch = (pitch: Length, width: Length): readonly Length[] =>
  Array.from({ length: Math.max(1, Math.floor(width / pitch)) }, (_, i) => times(pitch, i + 1 / 2))
