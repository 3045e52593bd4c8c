import { type FaceRectangle, rightOf } from '../../geometry/face-rectangle.ts'
import { type DeviceRow, devices as devicesField } from '../../job/chapters/wall-devices.ts'
import type { Contribution } from '../../things/contribution.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { CutOut, PartId } from '../../things/part.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall, Survey } from '../survey/survey.ts'
import { counterClash } from './counter-clash.ts'
import { nailerNotes, panelClashes } from './device-checks.ts'
import { DEVICES } from './device-kinds.ts'
import { cutOutMeetsPart } from './device-messages.ts'
import {
  callsFor,
  coveredOrBuried,
  cutOutFrom,
  type DeviceOutcome,
  NO_OUTCOME,
  type Opening,
  openingOf,
  type TradeCall,
} from './device-opening.ts'
import { returnCutOuts } from './return-devices.ts'

export interface DevicePlan {
  /** Cut-outs by the part they go into (box backs, box sides). */
  readonly cutOuts: ReadonlyMap<PartId, readonly CutOut[]>
  /** Devices to be moved or extended by a licensed trade, in words. */
  readonly trades: readonly TradeCall[]
  readonly contribution: Contribution
}

/** Cut-outs for the devices behind and beside the boxes, and the calls to licensed trades. */
export function devices(context: PlanContext, survey: Survey, boxes: BoxPlan): DevicePlan {
  const outcomes = survey.walls.flatMap((wall) =>
    wall.kind === 'breast' ? [] : wall.devices.map((device) => outcomeOf(context, wall, boxes, device)),
  )
  const cutOuts = new Map<PartId, readonly CutOut[]>()
  for (const { part, cutOut } of outcomes.flatMap((o) => o.cutOuts))
    cutOuts.set(part, [...(cutOuts.get(part) ?? []), cutOut])
  return {
    cutOuts,
    trades: outcomes.flatMap((o) => o.trades),
    contribution: { parts: [], joints: [], messages: outcomes.flatMap((o) => o.messages) },
  }
}

function outcomeOf(context: PlanContext, wall: RunnableWall, plan: BoxPlan, device: DeviceRow): DeviceOutcome {
  const kind = DEVICES[device.what]
  if (device.fate === 'move') {
    const where = `${wall.bay.name}, ${context.show.withUnit(device.z)} above the highest floor point`
    const says = `move the ${kind.says} (${where}) clear of the built-ins; make safe and cap off before strip-out`
    return { ...NO_OUTCOME, trades: [{ trade: kind.trade, says, bay: wall.bay.id }] }
  }
  const opening = openingOf(context, device)
  const here = plan.boxes.filter((b) => b.run.bay.id === wall.bay.id)
  return device.wall === 'back'
    ? behindRun(context, wall, plan, here, opening)
    : returnCutOuts(context, wall, plan, here, opening)
}

function behindRun(
  context: PlanContext,
  wall: RunnableWall,
  plan: BoxPlan,
  boxes: readonly Box[],
  opening: Opening,
): DeviceOutcome {
  const [first] = boxes
  const last = boxes.at(-1)
  if (first === undefined || last === undefined) return NO_OUTCOME
  if (opening.device.z >= first.run.z1) {
    // In an alcove the counter runs from wall to wall; on a flat wall it ends with its boxes.
    const over = wall.kind === 'alcove' || overlaps(opening.at, first.x, less(sum(last.x, last.width), first.x))
    return over ? { ...NO_OUTCOME, messages: counterClash(context, plan, first, opening) } : NO_OUTCOME
  }
  const refused = coveredOrBuried(context, wall, first, opening)
  const behind = boxes.filter((b) => overlaps(opening.at, b.x, b.width))
  if (behind.length === 0) return { ...NO_OUTCOME, messages: behindFiller(context, wall, [first, last], opening) }
  if (refused.length > 0) return { ...NO_OUTCOME, messages: refused }
  const [box] = behind.toSorted((a, b) => share(opening.at, b) - share(opening.at, a))
  if (box === undefined) return NO_OUTCOME
  return {
    cutOuts: [backCutOut(context, plan, box, opening)],
    trades: callsFor(context, wall, opening, sum(box.backGap, innerFaceOfBack(plan))),
    messages: [...panelClashes(context, plan, box, opening), ...nailerNotes(context, plan, box, opening)],
  }
}

/** From the rear of the box to the face of its back: a grooved back stands one panel forward. */
const innerFaceOfBack = (plan: BoxPlan): Length =>
  plan.make.backFit === 'grooved' ? sum(plan.backThickness, plan.carcassThickness) : plan.backThickness

const overlaps = (at: FaceRectangle, x: Length, width: Length): boolean => at.x < sum(x, width) && rightOf(at) > x

const share = (at: FaceRectangle, box: Box): number => Math.min(rightOf(at), box.x + box.width) - Math.max(at.x, box.x)

/** In an alcove a device beside the boxes lies behind a filler or gable; on a flat wall it lies on free wall. */
function behindFiller(
  { show, cut }: PlanContext,
  wall: RunnableWall,
  [first, last]: readonly [Box, Box],
  opening: Opening,
): readonly Message[] {
  const side = opening.at.x < first.x ? 'left' : 'right'
  const { fit } = first.run[side]
  if (fit === 'open' || (fit === 'gable' && wall.kind === 'flat')) return []
  const inBox = side === 'left' ? less(first.x, opening.at.x) : less(rightOf(opening.at), sum(last.x, last.width))
  return [
    raise(
      cutOutMeetsPart,
      { about: questionKey(wall.bay.id, devicesField), place: wall.bay.name },
      {
        device: opening.says,
        part: `${side} ${fit === 'caulk' ? 'gap' : fit} beside the boxes`,
        missing: show.withUnit(inBox),
        todo: `Have it moved ${side === 'left' ? 'right' : 'left'} by ${show.withUnit(cut.up(inBox))} or more, behind a box, by a licensed trade.`,
      },
    ),
  ]
}

function backCutOut(context: PlanContext, plan: BoxPlan, box: Box, opening: Opening) {
  const id = `${box.id}/back`
  const placed = plan.contribution.parts.find((p) => p.id === id)?.placement
  const left = placed === undefined ? box.x : less(placed.x, box.run.wall.originX)
  return { part: id, cutOut: cutOutFrom(context, opening, left, placed?.z ?? box.run.z0) }
}
