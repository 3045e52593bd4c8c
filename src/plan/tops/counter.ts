import { counterThickness } from '../../job/chapters/cabinets.ts'
import { bow as bowField } from '../../job/chapters/wall.ts'
import type { Contribution } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, size, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { leafReach } from '../boxes/box-depth.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { boxTopLine } from '../run/run-levels.ts'
import type { Run, RunSide } from '../run/slot.ts'
import { type BodyShape, bodyLength, squareBody } from '../shelves/body-shape.ts'
import { tapered } from '../shelves/taper.ts'
import { counterBody, counterDepth, mostCounter } from './counter-body.ts'
import { type CounterPiece, counterPieces, pieceBack, pieceFront, pieceRough } from './counter-pieces.ts'
import { endJointGaps } from './end-joint.ts'

/** The boxes of one base run and what lies on them. */
export interface CounterOn {
  readonly run: Run
  readonly boxes: readonly Box[]
  readonly thickness: Length
  readonly gable: Length
}

/** Depth of the board a counter is cut from: its back edge is scribed to the wall's bow. */
const roughCounter = formula<{ depth: Length; scribe: Length; hollow: Length; proud: Length; cut: CutStep }, Length>(
  {
    id: 'counter.rough-depth',
    plain: 'depth + spare for scribing + the larger of hollow and hump of the back wall, up to the cut step',
    source: 'common practice, no source',
    from: { scribe: { id: 'back.scribe' }, hollow: bowField, proud: bowField },
  },
  ({ depth, scribe, hollow, proud, cut }) => cut.up(sum(depth, scribe, longest(hollow, proud))),
)

/** The counter of a run: parts in as few lengths as can be, and its joints to the walls. */
export function counterOf(context: PlanContext, on: CounterOn): Contribution & { readonly body: BodyShape } {
  const body = bodyOf(context, on)
  const { bow } = on.run.wall
  const { figures, cut } = context
  const roughDepth = roughCounter({ depth: body.depth, scribe: figures.length('back.scribe'), ...bow, cut })
  const boxJoints = on.boxes.slice(1).map((b) => b.x)
  const pieces = counterPieces(context, { body, thickness: on.thickness, roughDepth, boxJoints })
  return {
    body,
    parts: pieces.map((piece, i) => counterPart(context, on, { body, roughDepth, piece, number: i + 1 })),
    joints: counterJoints(context, on, body),
    messages: [],
  }
}

/** A device behind it moves the boxes, and with them the joints between its lengths. */
const waitsOf = ({ run }: CounterOn): readonly QuestionKey[] => [
  ...run.waitsFor,
  ...run.wall.waits.depth,
  ...run.wall.waits.devices,
]

function bodyOf(context: PlanContext, { run, boxes, thickness, gable }: CounterOn): BodyShape {
  const { figures, cut } = context
  const [box] = boxes
  const { wall } = run
  const depth = counterDepth({
    box: box?.depth ?? figures.length('box.depth-flat'),
    leafReach: leafReach(context),
    overhang: figures.length('counter.overhang'),
    backGap: box?.backGap ?? figures.length('back.scribe'),
    most:
      wall.kind === 'alcove' && wall.depth !== undefined
        ? mostCounter({ returnDepth: wall.depth, clear: figures.length('counter.wall-clear') })
        : undefined,
    cut,
  })
  if (wall.kind === 'flat') return flatBody(context, run, gable, depth)
  const to = counterTop({ boxTop: run.z1, thickness })
  const recess = { wall, from: run.z1, to, depth, play: figures.length('shelf.play'), cut }
  return counterBody(recess, wall.lowestCeiling)
}

/** Height of the counter's upper face over the level line's zero. */
export const counterTop = formula<{ boxTop: Length; thickness: Length }, Length>(
  {
    id: 'counter.top',
    plain: 'top of the boxes + counter',
    source: 'geometry',
    from: { boxTop: boxTopLine, thickness: counterThickness },
  },
  ({ boxTop, thickness }) => sum(boxTop, thickness),
)

/** On a flat wall: over the run and its gables, with its overhang at each free end. */
const flatCounter = formula<{ from: Length; to: Length }, Length>(
  {
    id: 'counter.flat-length',
    plain: 'from the wall, or past the gable by the overhang, to the same at the other end',
    source: 'common practice, no source',
    units: { from: 'length', to: 'length' },
  },
  ({ from, to }) => less(to, from),
)

/** On a flat wall it reaches the wall where the run does, and overhangs each free end; no play. */
function flatBody({ figures }: PlanContext, run: Run, gable: Length, depth: Length): BodyShape {
  const overhang = figures.length('counter.overhang')
  const beyond = ({ fit }: RunSide) => (fit === 'gable' ? sum(gable, overhang) : overhang)
  const atWall = ({ fit }: RunSide) => fit === 'filler' || fit === 'caulk'
  const x = atWall(run.left) ? ZERO : less(run.startX, beyond(run.left))
  const end = atWall(run.right) ? run.wall.width : sum(run.startX, run.width, beyond(run.right))
  return squareBody({ x, length: flatCounter({ from: x, to: end }), depth })
}

interface Laid {
  readonly body: BodyShape
  readonly roughDepth: Length
  readonly piece: CounterPiece
  readonly number: number
}

function counterPart(context: PlanContext, on: CounterOn, { body, roughDepth, piece, number }: Laid): Part {
  const { run, thickness } = on
  const { show } = context
  const length = tapered(context, piece)
  return madePart({
    id: `${run.bay.id}/counter-${number}`,
    mark: runPartMark(run.bay, 'T', number),
    name: 'counter',
    bay: run.bay.id,
    goesTo: `${run.bay.name}, on the boxes`,
    ...length,
    width: body.depth,
    thickness,
    roughLength: piece.roughLength,
    roughWidth: roughDepth,
    leaveLong:
      piece.joinsLeft && piece.joinsRight ? 'back edge, scribed on site' : 'ends and back edge, scribed on site',
    material: mdf(thickness),
    shows: 'top, front edge and free ends',
    details: [
      ...endOffsets(context, body),
      ...(piece.joinsLeft || piece.joinsRight
        ? [
            `Joined ${piece.joinsOver === 'box joints' ? 'over the joint between boxes' : 'on the box'}: three connectors and glue; joint ${piece.joinsLeft ? 'at its left' : 'at its right'}${piece.joinsLeft && piece.joinsRight ? ' and right' : ''} end.`,
          ]
        : []),
      `Screwed from below in slotted holes, two rows a box, ${show.withUnit(context.figures.length('screw.top-pitch'))} apart at most.`,
    ],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(run.wall.originX, body.x, piece.from),
      y: ZERO,
      z: run.z1,
      dx: length.length,
      dy: body.depth,
      dz: thickness,
    },
    waitsFor: waitsOf(on),
    from: {
      length: [pieceBack, pieceFront, bodyLength, flatCounter],
      width: counterDepth,
      thickness: counterThickness,
      roughLength: pieceRough,
      roughWidth: roughCounter,
    },
  })
}

/** How far each end runs off square over the depth, in the words a carpenter sets out by. */
export function endOffsets({ show }: PlanContext, body: BodyShape): readonly string[] {
  const words = (offset: Length) =>
    offset === 0 ? 'square' : `${show.withUnit(size(offset))} to the ${offset < 0 ? 'left' : 'right'}`
  if (body.offsetLeft === 0 && body.offsetRight === 0) return ['Both ends are square.']
  return [
    `Over ${show.withUnit(body.depth)} of depth the left end runs ${words(body.offsetLeft)}, the right end ${words(body.offsetRight)}, from the back corner to the front.`,
  ]
}

function counterJoints({ figures }: PlanContext, on: CounterOn, body: BodyShape): readonly JointDraft[] {
  const { run } = on
  const scribed = figures.length('scribe.fit')
  const joint = (
    id: string,
    where: string,
    rest: Pick<JointDraft, 'length' | 'gap1' | 'gap2' | 'ends'>,
  ): JointDraft => ({
    id: `${run.bay.id}/top-${id}`,
    bay: run.bay.id,
    where: `counter, ${where}`,
    ...rest,
    colour: 'wall',
    twoColours: true,
    waitsFor: waitsOf(on),
  })
  const back = { length: body.back, gap1: scribed, gap2: scribed, ends: ['left', 'right'] } as const
  const gaps = run.wall.kind === 'flat' ? { gap1: scribed, gap2: scribed } : endJointGaps(body)
  const end = { length: body.depth, ...gaps, ends: ['front', 'back'] } as const
  const walled = (['left', 'right'] as const).filter(
    (side) => run.wall.kind === 'alcove' || run[side].fit === 'filler' || run[side].fit === 'caulk',
  )
  return [joint('back', 'back', back), ...walled.map((side) => joint(side, `${side} end`, end))]
}
