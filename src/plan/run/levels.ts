import { edgeAt, stationsBetween } from '../../geometry/edge.ts'
import { baseboardFate, kick } from '../../job/chapters/cabinets.ts'
import { floor } from '../../job/chapters/wall.ts'
import { type Contribution, merged, NOTHING } from '../../things/contribution.ts'
import { questionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import { type Message, raise } from '../../things/message.ts'
import { type Length, longest, sum, ZERO } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { kickPlate } from './kick-plate.ts'
import { floorFalls, kickRaised, plinthHigh } from './level-messages.ts'
import { plinthFrame } from './plinth-frame.ts'
import { floorFinishOf } from './run-levels.ts'
import type { Run, Slots } from './slot.ts'
import { topFiller } from './top-filler.ts'

/** A run with its boxes, and what the plinth under it is measured by. */
export interface StandingRun {
  readonly run: Run
  /** At least one. */
  readonly boxes: readonly Box[]
  readonly depth: Length
  readonly backGap: Length
  readonly carcass: Length
  readonly plinth: Length
  readonly kickSetBack: Length
  /** Thickness of a kept baseboard; 0 when there is none. */
  readonly baseboard: Length
  readonly crownDrop: Length
  /** Largest floor drop under the run. */
  readonly dropMost: Length
}

/** Plinth frames, kick plates, top fillers of tall runs, and the messages of section "levels". */
export function plinths(context: PlanContext, slots: Slots, boxes: BoxPlan): Contribution {
  const standing = slots.runs.flatMap((run) => standingRun(slots, boxes, run))
  const built = standing.map((here) =>
    within(here.run.bay.id, () =>
      merged(
        plinthFrame(context, here),
        kickPlate(context, here),
        here.run.kind === 'tall' ? topFiller(context, here) : NOTHING,
        { ...NOTHING, messages: fall(context, here) },
      ),
    ),
  )
  return merged({ ...NOTHING, messages: plinthMessages(context, slots) }, ...built)
}

function standingRun(slots: Slots, plan: BoxPlan, run: Run): readonly StandingRun[] {
  const boxes = plan.boxes.filter((box) => box.run.bay.id === run.bay.id)
  const [first] = boxes
  if (first === undefined) return []
  const { levels } = slots
  const { wall } = run
  const stations = stationsBetween(wall.floor, run.startX, sum(run.startX, run.width))
  return [
    {
      run,
      boxes,
      depth: first.depth,
      backGap: first.backGap,
      carcass: plan.carcassThickness,
      plinth: slots.plinth,
      kickSetBack: levels.kickSetBack,
      baseboard: levels.baseboardKept && wall.baseboard.height > 0 ? wall.baseboard.thickness : ZERO,
      crownDrop: levels.crownKept ? wall.crown.drop : ZERO,
      dropMost: longest(ZERO, ...stations.map((x) => edgeAt(wall.floor, x))),
    },
  ]
}

function plinthMessages(context: PlanContext, slots: Slots): readonly Message[] {
  if (slots.runs.length === 0) return []
  const { figures, show, settle } = context
  const high = figures.length('plinth.high')
  const asked = settle.asked(kick, undefined)
  const baseboard = longest(ZERO, ...slots.runs.map((r) => r.wall.baseboard.height))
  const cutBack = [
    { says: 'cut the baseboard back', answers: [{ key: questionKey('job', baseboardFate), value: 'cut' }] },
  ]
  const where = {
    about: questionKey('job', kick),
    place: 'whole wall',
    fixes: slots.levels.baseboardKept ? cutBack : [],
  }
  return [
    ...(slots.plinth > high
      ? [raise(plinthHigh, where, { plinth: show.withUnit(slots.plinth), high: show.withUnit(high) })]
      : []),
    ...(asked !== undefined && sum(asked, floorFinishOf(context)) < slots.plinth
      ? [
          raise(kickRaised, where, {
            asked: show.withUnit(asked),
            plinth: show.withUnit(slots.plinth),
            baseboard: show.withUnit(baseboard),
          }),
        ]
      : []),
  ]
}

function fall(context: PlanContext, { run, dropMost }: StandingRun): readonly Message[] {
  const noted = context.figures.length('floor.drop-noted')
  if (dropMost <= noted) return []
  const { show } = context
  const where = { about: questionKey(run.bay.id, floor), place: run.bay.name }
  return [raise(floorFalls, where, { drop: show.withUnit(dropMost), noted: show.withUnit(noted) })]
}
