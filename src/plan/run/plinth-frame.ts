import { edgeAt } from '../../geometry/edge.ts'
import { kickSet } from '../../job/chapters/cabinets.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import { raise } from '../../things/message.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, over, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { widthAt } from '../survey/outline.ts'
import { plinthTooShallow } from './level-messages.ts'
import type { StandingRun } from './levels.ts'
import { type Section, sectionsAt } from './run-sections.ts'

/** Cross-pieces of a ladder frame: at the pitch, and one more under every box joint. */
export const crossPieces = formula<{ length: Length; pitch: Length; boxes: number }, number>(
  { id: 'levels.cross-pieces', plain: '1 + length ÷ pitch, up + box joints', source: 'common practice, no source' },
  ({ length, pitch, boxes }) => 1 + Math.ceil(length / pitch) + (boxes - 1),
)

/** Levelled ladder frame under a run: two rails and cross-pieces, on packers. A run of several sheets gets several frames. */
export function plinthFrame(context: PlanContext, here: StandingRun): Contribution {
  const { figures, cut } = context
  const height = less(here.plinth, figures.length('plinth.packing'))
  if (height <= 0) return NOTHING
  const depth = cut.down(less(here.depth, here.kickSetBack, here.baseboard))
  const rails = times(here.carcass, 2)
  if (depth <= rails) return { ...NOTHING, messages: [tooShallow(context, here, depth, rails)] }
  const length = frameLength(context, here)
  const from = sum(here.run.startX, over(less(here.run.width, length), 2))
  const most = less(figures.length('sheet.length'), times(figures.length('sheet.trim'), 2))
  const sections = sectionsAt({ from, to: sum(from, length) }, jointsOf(here), most)
  return {
    ...NOTHING,
    parts: sections.flatMap((s, i) => frameParts(context, here, { ...s, number: i + 1, depth, height })),
  }
}

/** Shorter than the run, and shorter than the floor between kept baseboards. */
function frameLength(context: PlanContext, here: StandingRun): Length {
  const { figures, cut } = context
  const { run } = here
  const free = less(run.width, times(figures.length('plinth.ease'), 2))
  if (here.baseboard === 0) return cut.down(free)
  const between = less(floorWidth(here), figures.length('plinth.baseboard-ease'))
  return cut.down(shortest(free, between))
}

/** Floor between the kept baseboards, at its narrowest under the frame. */
function floorWidth(here: StandingRun): Length {
  const { run, baseboard } = here
  const { wall } = run
  if (wall.kind === 'flat') {
    const ends = [wall.wallAtLeft, wall.wallAtRight].filter(Boolean).length
    return less(sum(run.width, run.left.gapFoot, run.right.gapFoot), times(baseboard, ends))
  }
  const faceY = sum(here.backGap, less(here.depth, here.kickSetBack))
  const atHeight = (z: Length) => shortest(widthAt(wall, z, ZERO), widthAt(wall, z, faceY))
  return less(shortest(atHeight(ZERO), atHeight(here.plinth)), times(baseboard, 2))
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
}

type FramePart = Pick<Part, 'length' | 'placement'> & Partial<Pick<Part, 'details' | 'waitsFor'>>

function frameParts(context: PlanContext, here: StandingRun, frame: Frame): readonly Part[] {
  const { run, carcass: t } = here
  const length = context.cut.down(less(frame.to, frame.from))
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
    })
  const rails = (['back', 'front'] as const).map((side) => {
    const y = side === 'back' ? backY : less(sum(backY, frame.depth), t)
    return part(`rail-${side}`, `${side} rail`, {
      length,
      ...(side === 'front' ? { details: packers(context, here, frame), waitsFor: [...waitsFor, ...floor] } : {}),
      placement: { x, y, z, dx: length, dy: t, dz: frame.height },
    })
  })
  const across = context.cut.down(less(frame.depth, times(t, 2)))
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

/** Packers at both ends, to bring the frame's top to the plinth line. */
function packers(context: PlanContext, here: StandingRun, frame: Frame): readonly string[] {
  const { show, cut, figures } = context
  const at = (x: Length) => show.length(cut.near(sum(figures.length('plinth.packing'), edgeAt(here.run.wall.floor, x))))
  return [`levelled on packers: ${at(frame.from)} at the left, ${at(frame.to)} at the right`]
}
