import { backFit, boxTop } from '../../job/chapters/cabinets.ts'
import type { Contribution } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { type Length, less, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import { boxMark } from '../marks.ts'
import type { Run, Slots } from '../run/slot.ts'
import { backGapOf, depthOf } from './box-depth.ts'
import { boxJoints } from './box-joints.ts'
import { boxParts } from './box-parts.ts'
import { boxRunMessages } from './box-run-messages.ts'
import { widthsOf } from './box-widths.ts'
import { looseShelvesOf } from './loose-shelf.ts'
import { backThicknessOf, carcassThicknessOf, frontThicknessOf } from './panel-thickness.ts'

/** One box of a run. x is its left outer edge in the bay's own x. */
export interface Box {
  readonly run: Run
  /** 1, 2 … from the left. */
  readonly number: number
  /** `L2` */
  readonly mark: string
  /** `a/box-2` */
  readonly id: string
  readonly x: Length
  readonly width: Length
  readonly height: Length
  readonly depth: Length
  /** Inside width: outer width less both sides, rounded down with the bottom. */
  readonly insideWidth: Length
  readonly insideDepth: Length
  readonly looseShelves: number
  /** Space between the wall and the box back. */
  readonly backGap: Length
  /** Measurements still to take that its sizes rest on. */
  readonly waitsFor: readonly QuestionKey[]
}

/** How all boxes of the job are built. */
export interface BoxMake {
  readonly carcass: Length
  readonly back: Length
  readonly backFit: 'applied' | 'grooved'
  readonly top: 'full' | 'rails'
}

export interface BoxPlan {
  readonly boxes: readonly Box[]
  readonly carcassThickness: Length
  readonly backThickness: Length
  readonly frontThickness: Length
  readonly hasDoors: boolean
  /** Space between the wall and the box back. */
  readonly backGap: ReadonlyMap<string, Length>
  readonly make: BoxMake
  readonly contribution: Contribution
}

/** The boxes of each run, their parts, and the joints at the run's ends. */
export function boxes(context: PlanContext, slots: Slots): BoxPlan {
  const make = boxMakeOf(context)
  const built = slots.runs.map((run) => runOfBoxes(context, run, make))
  const all = built.flatMap((b) => b.boxes)
  return {
    boxes: all,
    carcassThickness: make.carcass,
    backThickness: make.back,
    frontThickness: frontThicknessOf(context),
    hasDoors: hasDoors(context),
    backGap: new Map(slots.runs.map((run) => [run.bay.id, backGapOf(context, run)])),
    make,
    contribution: {
      parts: all.flatMap((box) => boxParts(context, box, make)),
      joints: built.flatMap((b) => (b.boxes.length === 0 ? [] : boxJoints(context, b.run))),
      messages: built.flatMap((b) => boxRunMessages(context, b)),
    },
  }
}

function boxMakeOf(context: PlanContext): BoxMake {
  const { settle } = context
  return {
    carcass: carcassThicknessOf(context),
    back: backThicknessOf(context),
    backFit: settle.choice(backFit, undefined, () => ({ value: 'applied' as const, because: 'no grooves to cut' })),
    top: settle.choice(boxTop, undefined, () => ({
      value: 'full' as const,
      because: 'closes the box also without a counter',
    })),
  }
}

/** The boxes of one run; `wanted` also when they are too narrow or too shallow to be built. */
export interface RunOfBoxes {
  readonly run: Run
  readonly depth: Length
  readonly wanted: readonly Length[]
  readonly askedTotal: Length | undefined
  readonly boxes: readonly Box[]
}

function runOfBoxes(context: PlanContext, run: Run, make: BoxMake): RunOfBoxes {
  const { figures } = context
  const depth = depthOf(context, run)
  const { widths, askedTotal } = widthsOf(context, run)
  const least = figures.length('box.least')
  const buildable = depth >= figures.length('box.depth-least') && widths.every((w) => w >= least)
  const boxes = buildable ? widths.map((_, i) => boxAt(context, run, make, { depth, widths, index: i })) : []
  return { run, depth, wanted: widths, askedTotal, boxes }
}

function boxAt(
  context: PlanContext,
  run: Run,
  make: BoxMake,
  at: { readonly depth: Length; readonly widths: readonly Length[]; readonly index: number },
): Box {
  const width = at.widths[at.index] ?? ZERO
  const number = at.index + 1
  return {
    run,
    number,
    mark: boxMark(run.bay, number),
    id: `${run.bay.id}/box-${number}`,
    x: sum(run.startX, ...at.widths.slice(0, at.index)),
    width,
    height: run.boxHeight,
    depth: at.depth,
    insideWidth: context.cut.down(less(width, times(make.carcass, 2))),
    insideDepth: less(at.depth, make.back, make.backFit === 'grooved' ? make.carcass : ZERO),
    looseShelves: looseShelvesOf(context, run.boxHeight, make.carcass),
    backGap: backGapOf(context, run),
    // A device behind a box is cut out of it, or moves the joint to the next one.
    waitsFor: [...run.waitsFor, ...run.wall.waits.depth, ...run.wall.waits.devices],
  }
}
