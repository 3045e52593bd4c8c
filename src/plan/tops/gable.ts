import { carcassThickness } from '../../job/chapters/cabinets.ts'
import type { Contribution } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { CutOut, Part } from '../../things/part.ts'
import { type Length, less, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { leafReach } from '../boxes/box-depth.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { boxTopLine } from '../run/run-levels.ts'
import type { Run } from '../run/slot.ts'
import { floorReading } from '../survey/reading.ts'

/** A free end of a run on a flat wall. */
export interface GableAt {
  readonly run: Run
  readonly box: Box
  readonly side: 'left' | 'right'
  readonly number: number
  readonly thickness: Length
  readonly baseboardKept: boolean
}

const gableHeight = formula<{ boxTop: Length; drop: Length; cut: CutStep }, Length>(
  {
    id: 'gable.height',
    plain: 'top of the boxes + floor drop there, to the nearest cut step',
    source: 'geometry',
    from: { boxTop: boxTopLine, drop: floorReading },
  },
  ({ boxTop, drop, cut }) => cut.near(sum(boxTop, drop)),
)

const gableDepth = formula<{ depth: Length; leafReach: Length }, Length>(
  {
    id: 'gable.depth',
    plain: 'box depth + leaf with its bumper',
    source: 'common practice, no source',
    from: { depth: { id: 'box.depth' } },
  },
  (of) => sum(of.depth, of.leafReach),
)

const roughHeight = formula<{ height: Length; spare: Length; cut: CutStep }, Length>(
  {
    id: 'gable.rough-height',
    plain: 'height + spare at the foot, up to the cut step',
    source: 'common practice, no source',
    from: { spare: { id: 'gable.foot-spare' } },
  },
  ({ height, spare, cut }) => cut.up(sum(height, spare)),
)

const roughDepth = formula<{ depth: Length; spare: Length; cut: CutStep }, Length>(
  {
    id: 'gable.rough-depth',
    plain: 'depth + spare for scribing, up to the cut step',
    source: 'common practice, no source',
    from: { depth: gableDepth, spare: { id: 'scribe.spare' } },
  },
  ({ depth, spare, cut }) => cut.up(sum(depth, spare)),
)

/** The finished panel at a free end: from the floor to the counter, flush with the door faces, scribed to floor and wall. */
export function gableOf(context: PlanContext, at: GableAt): Contribution {
  const { figures, cut } = context
  const { run, box, thickness } = at
  const x = at.side === 'left' ? less(run.startX, thickness) : sum(run.startX, run.width)
  const drop = floorReading({ edge: run.wall.floor, at: x })
  const length = gableHeight({ boxTop: run.z1, drop, cut })
  const width = gableDepth({ depth: box.depth, leafReach: leafReach(context) })
  const waitsFor: readonly QuestionKey[] = [...run.waitsFor, ...run.wall.waits.floor, ...run.wall.waits.depth]
  const part = madePart({
    id: `${run.bay.id}/gable-${at.side}`,
    mark: runPartMark(run.bay, 'G', at.number),
    name: 'gable',
    bay: run.bay.id,
    goesTo: `${run.bay.name}, ${at.side} end of the run`,
    length,
    width,
    thickness,
    roughLength: roughHeight({ height: length, spare: figures.length('gable.foot-spare'), cut }),
    roughWidth: roughDepth({ depth: width, spare: figures.length('scribe.spare'), cut }),
    leaveLong: 'foot scribed to the floor, back edge to the wall',
    material: mdf(thickness),
    shows: 'outer face, front edge',
    details: [
      'Flush with the door faces; the back edge runs on to the wall and is scribed.',
      `Fixed from inside the box: two columns of screws, ${context.show.withUnit(figures.length('screw.top-pitch'))} apart at most.`,
      ...notchWords(context, at),
    ],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(run.wall.originX, x),
      y: box.backGap,
      z: less(ZERO, drop),
      dx: thickness,
      dy: width,
      dz: length,
    },
    waitsFor,
    from: {
      length: gableHeight,
      width: gableDepth,
      thickness: carcassThickness,
      roughLength: roughHeight,
      roughWidth: roughDepth,
    },
  })
  return { parts: [{ ...part, cutOuts: notch(at) }], joints: [wallJoint(context, at, part)], messages: [] }
}

function wallJoint({ figures }: PlanContext, { run, side }: GableAt, { length, waitsFor }: Part): JointDraft {
  const scribed = figures.length('scribe.fit')
  return {
    id: `${run.bay.id}/gable-${side}`,
    bay: run.bay.id,
    where: `gable, ${side} end, to the wall`,
    length,
    gap1: scribed,
    gap2: scribed,
    ends: ['foot', 'top'],
    colour: 'wall',
    twoColours: true,
    waitsFor,
  }
}

const keptBoard = ({ run, baseboardKept }: GableAt) =>
  baseboardKept ? run.wall.baseboard : { height: ZERO, thickness: ZERO }

function notchWords({ show }: PlanContext, at: GableAt): readonly string[] {
  const { height, thickness } = keptBoard(at)
  return height > 0 && thickness > 0
    ? [`Notched at the back foot for the baseboard: ${show.withUnit(thickness)} deep, ${show.withUnit(height)} high.`]
    : []
}

/** The kept baseboard runs on behind it. */
function notch(at: GableAt): readonly CutOut[] {
  const { height, thickness } = keptBoard(at)
  return height > 0 && thickness > 0
    ? [{ what: 'baseboard notch, back foot', x: ZERO, z: ZERO, width: thickness, height }]
    : []
}
