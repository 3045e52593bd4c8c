import type { Message } from '../../things/message.ts'
import type { Part, PartId } from '../../things/part.ts'
import type { Mass } from '../../units/mass.ts'
import type { BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { FrontPlan } from '../fronts/fronts.ts'
import type { PanelPlan } from '../panels/panels.ts'
import { feetLines } from '../run/levellers.ts'
import { mouldingLines } from '../run/mouldings.ts'
import type { Survey } from '../survey/survey.ts'
import { boxFixings } from './box-fixings.ts'
import { type Load, liftMessages, loads } from './carrying.ts'
import { type FixingLine, gathered } from './fixing-line.ts'
import { gluing } from './gluing.ts'
import { hardware } from './hardware.ts'
import { boxMasses, partMasses } from './masses.ts'
import { runFixings } from './run-fixings.ts'
import { wallFixings } from './wall-fixings.ts'

export type { FixingLine } from './fixing-line.ts'

export interface FixingPlan {
  readonly lines: readonly FixingLine[]
  /** Mass of each part, all its pieces together. */
  readonly masses: ReadonlyMap<PartId, Mass>
  /** Mass of each box by mark, without leaves and hardware. */
  readonly boxMasses: ReadonlyMap<string, Mass>
  /** Pieces, boxes and sheets, heaviest first. */
  readonly loads: readonly Load[]
  /** Marks that need two people, with the reason in words. */
  readonly twoPeople: ReadonlyMap<string, string>
  readonly messages: readonly Message[]
}

/** What fastens the work: the parts, and the boxes, leaves and sheets they come from. */
export interface ToFix {
  readonly survey: Pick<Survey, 'walls'>
  readonly parts: readonly Part[]
  readonly boxes: BoxPlan
  readonly fronts: FrontPlan
  readonly panels: Pick<PanelPlan, 'layouts'>
}

/** Screws, pins, anchors, hinges, glue; what everything weighs and who lifts it. */
export function fixings(context: PlanContext, work: ToFix): FixingPlan {
  const { survey, parts, boxes, fronts, panels } = work
  const masses = partMasses(context, parts)
  const ofBoxes = boxMasses(boxes.boxes, parts, masses)
  const carried = loads(context, { parts, boxes: boxes.boxes, sheets: panels.layouts, masses, boxMasses: ofBoxes })
  const wall = wallFixings(context, { parts, boxes: boxes.boxes, walls: survey.walls })
  return {
    lines: gathered([
      ...boxFixings(context, { parts, boxes }),
      ...wall.lines,
      ...runFixings(context, { parts, boxes: boxes.boxes }),
      ...hardware(context, { boxes: boxes.boxes, fronts, parts }),
      ...gluing(context, parts),
      ...feetLines(context, boxes.boxes),
      ...mouldingLines(context, { parts, boxes: boxes.boxes }),
    ]),
    masses,
    boxMasses: ofBoxes,
    loads: carried,
    twoPeople: new Map(carried.filter((load) => load.people === 2).map((load) => [load.mark, load.because])),
    messages: [...wall.messages, ...liftMessages(context, carried)],
  }
}
