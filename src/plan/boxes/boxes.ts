import { backFit, boxHeight, boxTop, tallHeight } from '../../job/chapters/cabinets.ts'
import type { Contribution } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { type Ref, within } from '../../things/formula.ts'
import { type Length, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import { boxMark } from '../marks.ts'
import type { Run, Slots } from '../run/slot.ts'
import { backGapOf, depthOf } from './box-depth.ts'
import { type FixedShelf, insideOf } from './box-inside.ts'
import { boxJoints } from './box-joints.ts'
import { boxParts } from './box-parts.ts'
import { boxRunMessages } from './box-run-messages.ts'
import { compartmentWidths, insideDepth, insideWidth } from './box-sizes.ts'
import { widthsOf } from './box-widths.ts'
import { backThicknessOf, carcassThicknessOf, frontThicknessOf } from './panel-thickness.ts'
import { insideFinished } from './prefinished.ts'

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
  /** Its underside above the highest floor point. */
  readonly z: Length
  readonly width: Length
  readonly height: Length
  /** The formula or question its height came from. */
  readonly heightFrom: Ref
  readonly depth: Length
  /** Inside width: outer width less both sides, rounded down with the bottom. */
  readonly insideWidth: Length
  readonly insideDepth: Length
  /** Left faces of its dividers, from its left outer edge. */
  readonly dividers: readonly Length[]
  /** Widths between its sides and dividers, from the left. */
  readonly compartments: readonly Length[]
  /** Level panels across it, from its underside. */
  readonly fixedShelves: readonly FixedShelf[]
  /** Heights between level panels, from its underside, and the loose shelves in each of them. */
  readonly openings: readonly FixedShelf[]
  readonly loose: readonly number[]
  /** Loose boards in all its openings and compartments. */
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
  const built = slots.runs.map((run) => within(run.bay.id, () => runOfBoxes(context, run, make)))
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
      parts: all.flatMap((box) => within(box.id, () => insideFinished(context, boxParts(context, box, make)))),
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
  readonly make: BoxMake
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
  const boxes = buildable
    ? widths.map((_, i) => within(boxId(run, i + 1), () => boxAt(context, run, make, { depth, widths, index: i })))
    : []
  return { run, make, depth, wanted: widths, askedTotal, boxes }
}

const boxId = (run: Run, number: number): string => `${run.bay.id}/box-${number}`

interface InRun {
  readonly depth: Length
  readonly widths: readonly Length[]
  readonly index: number
}

function boxAt(context: PlanContext, run: Run, make: BoxMake, at: InRun): Box {
  const { cut } = context
  const width = at.widths[at.index] ?? ZERO
  const number = at.index + 1
  const { carcass, back } = make
  const inside = insideOf(context, { run, number, width, height: run.boxHeight, carcass })
  const compartments = compartmentWidths({ boxWidth: width, carcassThickness: carcass, dividers: inside.dividers })
  return {
    run,
    number,
    mark: boxMark(run.bay, number),
    id: boxId(run, number),
    x: sum(run.startX, ...at.widths.slice(0, at.index)),
    z: run.z0,
    width,
    height: run.boxHeight,
    heightFrom: run.kind === 'tall' ? tallHeight : boxHeight,
    depth: at.depth,
    insideWidth: insideWidth({ boxWidth: width, carcassThickness: carcass, cut }),
    insideDepth: insideDepth({
      boxDepth: at.depth,
      backThickness: back,
      behindBack: make.backFit === 'grooved' ? carcass : ZERO,
    }),
    ...inside,
    compartments,
    looseShelves: inside.loose.reduce((n, each) => n + each * compartments.length, 0),
    backGap: backGapOf(context, run),
    // A device behind a box is cut out of it, or moves the joint to the next one.
    waitsFor: [...run.waitsFor, ...run.wall.waits.depth, ...run.wall.waits.devices],
  }
}
