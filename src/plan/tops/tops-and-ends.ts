import { type Contribution, merged } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { Length } from '../../units/length.ts'
import type { Box, BoxPlan } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { Run, Slots } from '../run/slot.ts'
import { counterOf, counterTop } from './counter.ts'
import { counterThicknessOf } from './counter-thickness.ts'
import { fillerParts } from './fillers.ts'
import { gableOf } from './gable.ts'

/** A stretch of wall in the bay's own x. */
export interface Stretch {
  readonly x: Length
  readonly length: Length
}

export interface TopPlan {
  /** Height of the counter's upper face by bay id (box top where there is no counter). */
  readonly counterTop: ReadonlyMap<string, Length>
  /** What the boxes of a bay take up along its wall, with gables and overhang. */
  readonly spans: ReadonlyMap<string, Stretch>
  /** Measurements still to take that those heights and stretches rest on, by bay id. */
  readonly restsOn: ReadonlyMap<string, readonly QuestionKey[]>
  readonly contribution: Contribution
}

/** Counters, gables and wall fillers. */
export function topsAndEnds(context: PlanContext, slots: Slots, boxes: BoxPlan): TopPlan {
  const thickness = counterThicknessOf(context, slots.runs)
  const { baseboardKept } = slots.levels
  const built = slots.runs.map((run) => {
    const here = boxes.boxes.filter((b) => b.run === run)
    return within(run.bay.id, () => topOfRun(context, { run, boxes: here, plan: boxes, baseboardKept }, thickness))
  })
  return {
    counterTop: new Map(built.map((b) => [b.run.bay.id, b.top])),
    spans: new Map(built.map((b) => [b.run.bay.id, b.span])),
    restsOn: new Map(built.map((b) => [b.run.bay.id, b.run.waitsFor])),
    contribution: merged(...built.map((b) => b.contribution)),
  }
}

interface RunTop {
  readonly run: Run
  readonly boxes: readonly Box[]
  readonly plan: BoxPlan
  readonly baseboardKept: boolean
}

function topOfRun(context: PlanContext, on: RunTop, counterPanel: Length | undefined) {
  const { run, boxes } = on
  const thickness = run.kind === 'base' ? counterPanel : undefined
  const bare = { x: run.startX, length: run.width }
  if (boxes.length === 0)
    return {
      run,
      top: thickness === undefined ? run.z1 : counterTop({ boxTop: run.z1, thickness }),
      span: bare,
      contribution: merged(),
    }
  const ends = endsOf(context, on)
  if (thickness === undefined) return { run, top: run.z1, span: bare, contribution: ends }
  const made = counterOf(context, { run, boxes, thickness, gable: on.plan.carcassThickness })
  return {
    run,
    top: counterTop({ boxTop: run.z1, thickness }),
    span: { x: made.body.x, length: made.body.back },
    contribution: merged(made, ends),
  }
}

/** A filler or a gable at each end that asks for one; numbered from the left. */
function endsOf(context: PlanContext, { run, boxes, plan, baseboardKept }: RunTop): Contribution {
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const box = side === 'left' ? boxes[0] : boxes.at(-1)
    return box === undefined ? [] : [{ side, box, fit: run[side].fit }]
  })
  const fillers = sides.filter((s) => s.fit === 'filler')
  const gables = sides.filter((s) => s.fit === 'gable')
  const thickness = plan.carcassThickness
  return merged(
    ...gables.map(({ side, box }, i) => gableOf(context, { run, box, side, number: i + 1, thickness, baseboardKept })),
    ...fillers.map(({ side, box }, i) => ({
      parts: fillerParts(context, { run, box, side, number: i + 1, thickness }),
      joints: [],
      messages: [],
    })),
  )
}
