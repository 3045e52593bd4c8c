import { carcassThickness, kickSet } from '../../job/chapters/cabinets.ts'
import { baseboard as baseboardField } from '../../job/chapters/wall.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import { raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, over, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { recessWidth, widthAt } from '../survey/outline.ts'
import { floorReading } from '../survey/reading.ts'
import { RUN_WIDTHS } from './alcove-run.ts'
import { plinthTooShallow } from './level-messages.ts'
import { feetMessages, plinthOnOf } from './levellers.ts'
import type { StandingRun } from './levels.ts'
import { plinthHeight } from './run-levels.ts'
import { type Section, sectionsAt } from './run-sections.ts'

const RAIL = { id: 'plinth.rail-length' }

/** What a run and the gaps at its ends take on a flat wall. */
export const flatRoom = formula<{ runWidth: Length; gapLeft: Length; gapRight: Length }, Length>(
  {
    id: 'plinth.flat-room',
    plain: 'run + the gap at each end',
    source: 'geometry',
    from: {
      runWidth: RUN_WIDTHS,
      gapLeft: [{ id: 'runStart' }, { id: 'slot.flat-gap' }],
      gapRight: [{ id: 'runStart' }, { id: 'slot.flat-gap' }],
    },
  },
  (of) => sum(of.runWidth, of.gapLeft, of.gapRight),
)

/** Cross-pieces of a ladder frame: at the pitch, and one more under every box joint. */
export const crossPieces = formula<{ length: Length; pitch: Length; boxes: number }, number>(
  {
    id: 'plinth.cross-pieces',
    plain: '1 + length ÷ pitch, up + box joints',
    source: 'common practice, no source',
    gives: 'count',
    from: { length: RAIL, pitch: { id: 'plinth.cross-pitch' } },
    units: { boxes: 'count' },
  },
  ({ length, pitch, boxes }) => 1 + Math.ceil(length / pitch) + (boxes - 1),
)

/** Height of the frame: it stands on packers. */
const frameHeight = formula<{ plinth: Length; packing: Length }, Length>(
  {
    id: 'plinth.frame-height',
    plain: 'plinth − least packing',
    source: 'common practice, no source',
    from: { plinth: plinthHeight, packing: { id: 'plinth.packing' } },
  },
  ({ plinth, packing }) => less(plinth, packing),
)

const frameDepth = formula<{ depth: Length; setBack: Length; baseboard: Length; cut: CutStep }, Length>(
  {
    id: 'plinth.frame-depth',
    plain: 'box depth − kick set-back − kept baseboard, down to the cut step',
    source: 'common practice, no source',
    from: { depth: { id: 'box.depth' }, setBack: kickSet, baseboard: baseboardField },
  },
  ({ depth, setBack, baseboard, cut }) => cut.down(less(depth, setBack, baseboard)),
)

/** Floor between the walls of a run, less the baseboards kept on them. */
const floorBetween = formula<{ wide: readonly Length[]; baseboard: Length; walledEnds: number }, Length>(
  {
    id: 'plinth.floor-width',
    plain: 'least width at the floor and at the plinth, back and front − kept baseboard at each wall',
    source: 'common practice, no source',
    from: { wide: [recessWidth, flatRoom], baseboard: baseboardField },
    units: { walledEnds: 'count' },
  },
  ({ wide: [first = ZERO, ...others], baseboard, walledEnds }) =>
    less(shortest(first, ...others), times(baseboard, walledEnds)),
)

const wholeFrame = formula<
  { runWidth: Length; ease: Length; floorWidth: Length; floorEase: Length; cut: CutStep },
  Length
>(
  {
    id: 'plinth.frame-length',
    plain: 'run − ease at both ends, at most the floor between kept baseboards − ease, down to the cut step',
    source: 'common practice, no source',
    from: {
      runWidth: RUN_WIDTHS,
      ease: { id: 'plinth.ease' },
      floorWidth: floorBetween,
      floorEase: { id: 'plinth.baseboard-ease' },
    },
  },
  ({ runWidth, ease, floorWidth, floorEase, cut }) =>
    cut.down(shortest(less(runWidth, times(ease, 2)), less(floorWidth, floorEase))),
)

const easedFrame = formula<{ runWidth: Length; ease: Length; cut: CutStep }, Length>(
  {
    id: 'plinth.eased-frame-length',
    plain: 'run − ease at both ends, down to the cut step',
    source: 'common practice, no source',
    from: { runWidth: RUN_WIDTHS, ease: { id: 'plinth.ease' } },
  },
  ({ runWidth, ease, cut }) => cut.down(less(runWidth, times(ease, 2))),
)

/** Length of the rails of one frame: the whole, or between joints under the boxes. */
const railLength = formula<{ from: Length; to: Length; whole: Length; cut: CutStep }, Length>(
  {
    id: 'plinth.rail-length',
    plain: 'its share of the whole frame, down to the cut step',
    source: 'common practice, no source',
    from: { whole: [wholeFrame, easedFrame] },
    units: { from: 'length', to: 'length' },
  },
  ({ from, to, cut }) => cut.down(less(to, from)),
)

const crossLength = formula<{ frameDepth: Length; rail: Length; cut: CutStep }, Length>(
  {
    id: 'plinth.cross-length',
    plain: 'depth of the frame − two rails, down to the cut step',
    source: 'geometry',
    from: { frameDepth, rail: carcassThickness },
  },
  (of) => of.cut.down(less(of.frameDepth, times(of.rail, 2))),
)

/** Levelled ladder frame under a run: two rails and cross-pieces, on packers. A run of several sheets gets several frames. */
export function plinthFrame(context: PlanContext, here: StandingRun): Contribution {
  const { figures, cut } = context
  if (plinthOnOf(context) === 'feet') return { ...NOTHING, messages: feetMessages(context, here) }
  const height = frameHeight({ plinth: here.plinth, packing: figures.length('plinth.packing') })
  if (height <= 0) return NOTHING
  const depth = frameDepth({ depth: here.depth, setBack: here.kickSetBack, baseboard: here.baseboard, cut })
  const rails = times(here.carcass, 2)
  if (depth <= rails) return { ...NOTHING, messages: [tooShallow(context, here, depth, rails)] }
  const length = frameLength(context, here)
  const from = sum(here.run.startX, over(less(here.run.width, length), 2))
  const most = less(figures.length('sheet.length'), times(figures.length('sheet.trim'), 2))
  const sections = sectionsAt({ from, to: sum(from, length) }, jointsOf(here), most)
  return {
    ...NOTHING,
    parts: sections.flatMap((s, i) => frameParts(context, here, { ...s, number: i + 1, depth, height, whole: length })),
  }
}

/** Shorter than the run, and shorter than the floor between kept baseboards. */
function frameLength(context: PlanContext, here: StandingRun): Length {
  const { figures, cut } = context
  const { run } = here
  const ease = figures.length('plinth.ease')
  if (here.baseboard === 0) return easedFrame({ runWidth: run.width, ease, cut })
  const floorEase = figures.length('plinth.baseboard-ease')
  return wholeFrame({ runWidth: run.width, ease, floorWidth: floorWidth(here), floorEase, cut })
}

/** Floor between the kept baseboards, at its narrowest under the frame. */
function floorWidth(here: StandingRun): Length {
  const { run, baseboard } = here
  const { wall } = run
  if (wall.kind === 'flat') {
    const walledEnds = [wall.wallAtLeft, wall.wallAtRight].filter(Boolean).length
    const wide = flatRoom({ runWidth: run.width, gapLeft: run.left.gapFoot, gapRight: run.right.gapFoot })
    return floorBetween({ wide: [wide], baseboard, walledEnds })
  }
  const faceY = sum(here.backGap, less(here.depth, here.kickSetBack))
  const wide = [ZERO, here.plinth].flatMap((z) => [widthAt(wall, z, ZERO), widthAt(wall, z, faceY)])
  return floorBetween({ wide, baseboard, walledEnds: 2 })
}

const jointsOf = (here: StandingRun): readonly Length[] => here.boxes.slice(1).map((box) => box.x)

function tooShallow(context: PlanContext, here: StandingRun, depth: Length, rails: Length) {
  const { show } = context
  const key = questionKey('job', kickSet)
  const limit = longest(ZERO, less(here.depth, here.baseboard, rails))
  const value = context.cut.down(less(here.depth, here.baseboard, rails, context.cut.step))
  const fixes = value < 0 ? [] : [{ says: `kick plate ${show.withUnit(value)} back`, answers: [{ key, value }] }]
  return raise(
    plinthTooShallow,
    { about: key, place: here.run.bay.name, fixes },
    { depth: show.withUnit(depth), least: show.withUnit(rails), setBack: show.withUnit(limit) },
  )
}

interface Frame extends Section {
  readonly number: number
  readonly depth: Length
  readonly height: Length
  /** Length of all frames together. */
  readonly whole: Length
}

type FramePart = Pick<Part, 'length' | 'placement'> & Partial<Pick<Part, 'details' | 'waitsFor'>>

function frameParts(context: PlanContext, here: StandingRun, frame: Frame): readonly Part[] {
  const { run, carcass: t } = here
  const { cut } = context
  const length = railLength({ from: frame.from, to: frame.to, whole: frame.whole, cut })
  const backY = less(sum(here.backGap, less(here.depth, here.kickSetBack)), frame.depth)
  const x = sum(run.wall.originX, frame.from)
  const z = less(here.plinth, frame.height)
  const joints = jointsOf(here).filter((joint) => joint > frame.from && joint < frame.to).length
  const count = crossPieces({ length, pitch: context.figures.length('plinth.cross-pitch'), boxes: joints + 1 })
  const { depth, floor } = run.wall.waits
  const waitsFor = [...run.waitsFor, ...depth]
  const part = (id: string, piece: string, rest: FramePart) =>
    madePart({
      waitsFor,
      ...rest,
      id: `${run.bay.id}/plinth-${frame.number}/${id}`,
      mark: runPartMark(run.bay, 'U', frame.number),
      piece,
      name: `plinth ${piece}`,
      bay: run.bay.id,
      goesTo: `${run.bay.name}, under the boxes`,
      width: frame.height,
      thickness: t,
      material: mdf(t),
      shows: 'nothing',
      from: {
        length: piece === 'cross-piece' ? crossLength : railLength,
        width: frameHeight,
        thickness: carcassThickness,
      },
    })
  const rails = (['back', 'front'] as const).map((side) => {
    const y = side === 'back' ? backY : less(sum(backY, frame.depth), t)
    return part(`rail-${side}`, `${side} rail`, {
      length,
      ...(side === 'front' ? { details: packers(context, here, frame), waitsFor: [...waitsFor, ...floor] } : {}),
      placement: { x, y, z, dx: length, dy: t, dz: frame.height },
    })
  })
  const across = crossLength({ frameDepth: frame.depth, rail: t, cut })
  const pitch = over(less(length, t), count - 1)
  const crosses = Array.from({ length: count }, (_, i) =>
    part(`cross-${i + 1}`, 'cross-piece', {
      length: across,
      details: joints > 0 ? ['one stands under every box joint, the others spread evenly'] : [],
      placement: { x: sum(x, times(pitch, i)), y: sum(backY, t), z, dx: t, dy: across, dz: frame.height },
    }),
  )
  return [...rails, ...crosses]
}

/** Packer under the frame at one place, as high as the floor lies low there. */
export const packerAt = formula<{ packing: Length; drop: Length; cut: CutStep }, Length>(
  {
    id: 'plinth.packer',
    plain: 'least packing + floor drop, to the nearest cut step',
    source: 'common practice, no source',
    from: { packing: { id: 'plinth.packing' }, drop: floorReading },
  },
  ({ packing, drop, cut }) => cut.near(sum(packing, drop)),
)

/** Packers at both ends, to bring the frame's top to the plinth line. */
function packers(context: PlanContext, here: StandingRun, frame: Frame): readonly string[] {
  const { show, cut, figures } = context
  const at = (x: Length) =>
    show.length(
      packerAt({
        packing: figures.length('plinth.packing'),
        drop: floorReading({ edge: here.run.wall.floor, at: x }),
        cut,
      }),
    )
  return [`levelled on packers: ${at(frame.from)} at the left, ${at(frame.to)} at the right`]
}
