import { topOf } from '../../geometry/face-rectangle.ts'
import { devices } from '../../job/chapters/wall-devices.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { less, sum } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { counterThicknessOf } from '../tops/counter-thickness.ts'
import { cutOutMeetsPart } from './device-messages.ts'
import type { Opening } from './device-opening.ts'

/** A device that starts above the boxes but under the counter's upper face would be covered by the counter's edge. */
export function counterClash(context: PlanContext, plan: BoxPlan, box: Box, opening: Opening): readonly Message[] {
  const thickness = counterThicknessOf(context, [box.run])
  const { run } = box
  if (thickness === undefined) return []
  const upper = sum(run.z1, thickness)
  const { z } = opening.device
  if (z < run.z1 || z >= upper) return []
  const { show, cut, figures } = context
  const web = sum(plan.carcassThickness, figures.length('device.web'))
  const up = show.withUnit(cut.up(less(upper, z)))
  const down = show.withUnit(cut.up(less(topOf(opening.at), less(run.z1, web))))
  return [
    raise(
      cutOutMeetsPart,
      { about: questionKey(run.bay.id, devices), place: run.bay.name },
      {
        device: opening.says,
        part: 'counter',
        missing: show.withUnit(less(upper, z)),
        todo: `Have it moved up by ${up} or more, above the counter, or down by ${down}, into the box, by a licensed trade.`,
      },
    ),
  ]
}
