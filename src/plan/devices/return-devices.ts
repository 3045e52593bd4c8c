import { rightOf, topOf } from '../../geometry/face-rectangle.ts'
import { devices } from '../../job/chapters/wall-devices.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { leftSideAt, rightSideAt } from '../survey/outline.ts'
import type { RunnableWall } from '../survey/survey.ts'
import { counterClash } from './counter-clash.ts'
import { cutOutMeetsPart } from './device-messages.ts'
import {
  callsFor,
  coveredOrBuried,
  cutOutFrom,
  type DeviceOutcome,
  NO_OUTCOME,
  type Opening,
} from './device-opening.ts'

/** A device on a return, beside the outermost box: x counts from the back wall into the room. */
export function returnCutOuts(
  context: PlanContext,
  wall: RunnableWall,
  plan: BoxPlan,
  boxes: readonly Box[],
  opening: Opening,
): DeviceOutcome {
  const side = opening.device.wall === 'left' ? 'left' : 'right'
  const box = side === 'left' ? boxes[0] : boxes.at(-1)
  if (box === undefined || opening.at.x >= sum(box.backGap, box.depth)) return NO_OUTCOME
  if (opening.device.z >= box.run.z1) return { ...NO_OUTCOME, messages: counterClash(context, plan, box, opening) }
  const refused = coveredOrBuried(context, wall, box, opening)
  if (refused.length > 0) return { ...NO_OUTCOME, messages: refused }
  const id = `${box.id}/side-${side}`
  const placed = plan.contribution.parts.find((p) => p.id === id)?.placement
  const rear = placed?.y ?? box.backGap
  return {
    cutOuts: [{ part: id, cutOut: cutOutFrom(context, opening, rear, placed?.z ?? box.run.z0) }],
    trades: callsFor(context, wall, opening, gapToInside(wall, plan, box, opening)),
    messages: edgeClashes(context, plan, box, opening, rear),
  }
}

/** From the return's face to the inner face of the box side, at the middle of the device. */
function gapToInside(wall: RunnableWall, plan: BoxPlan, box: Box, { device, at }: Opening): Length {
  const [z, y] = [device.z, at.x]
  const face =
    device.wall === 'left'
      ? less(box.x, wall.kind === 'alcove' ? leftSideAt(wall, z, y) : box.x)
      : less(wall.kind === 'alcove' ? rightSideAt(wall, z, y) : sum(box.x, box.width), sum(box.x, box.width))
  return sum(face, plan.carcassThickness)
}

/** The cut-out stays clear of back, front edge, bottom and top of the side panel. */
function edgeClashes(
  { figures, show, cut }: PlanContext,
  plan: BoxPlan,
  box: Box,
  opening: Opening,
  rear: Length,
): readonly Message[] {
  const web = figures.length('device.web')
  const keep = sum(plan.carcassThickness, web)
  const { at } = opening
  const found = [
    { part: 'box back', missing: less(sum(rear, web), at.x), move: 'forward' },
    { part: 'front edge', missing: less(rightOf(at), less(sum(box.backGap, box.depth), web)), move: 'back' },
    { part: 'bottom', missing: less(sum(box.run.z0, keep), at.z), move: 'up' },
    { part: 'top', missing: less(topOf(at), less(box.run.z1, keep)), move: 'down' },
  ]
  return found
    .filter((clash) => clash.missing > 0)
    .map((clash) =>
      raise(
        cutOutMeetsPart,
        { about: questionKey(box.run.bay.id, devices), place: `${box.run.bay.name}, box ${box.number}` },
        {
          device: opening.says,
          part: `${clash.part} of box ${box.number}`,
          missing: show.withUnit(clash.missing),
          todo: `Have it moved ${clash.move} by ${show.withUnit(cut.up(clash.missing))}, by a licensed trade.`,
        },
      ),
    )
}
