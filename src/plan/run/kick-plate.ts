import { stationsBetween } from '../../geometry/edge.ts'
import { carcassThickness, kickSet } from '../../job/chapters/cabinets.ts'
import { baseboard as baseboardField, flatLength } from '../../job/chapters/wall.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { formula } from '../../things/formula.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { leftSideAt, recessWidth, widthAt } from '../survey/outline.ts'
import { floorReading } from '../survey/reading.ts'
import type { FlatWall } from '../survey/survey.ts'
import { runEnd } from './alcove-run.ts'
import type { StandingRun } from './levels.ts'
import { plinthHeight } from './run-levels.ts'
import { type Section, sectionsAt } from './run-sections.ts'

/** Height of the kick plate at one place: plinth and floor drop, less its play over the floor. */
export const kickHeight = formula<{ plinth: Length; drop: Length; floorClear: Length; cut: CutStep }, Length>(
  {
    id: 'kick.height-there',
    plain: 'plinth + floor drop − floor clearance, to the nearest cut step',
    source: 'common practice, no source',
    from: { plinth: plinthHeight, drop: floorReading, floorClear: { id: 'kick.floor-clear' } },
  },
  ({ plinth, drop, floorClear, cut }) => cut.near(less(sum(plinth, drop), floorClear)),
)

/** Rough height of the kick plate: what it could need at the lowest floor, with a spare. */
const roughHeight = formula<{ plinth: Length; drops: readonly Length[]; spare: Length; cut: CutStep }, Length>(
  {
    id: 'kick.rough-height',
    plain: 'plinth + largest floor drop + spare, up to the cut step',
    source: 'common practice, no source',
    from: { plinth: plinthHeight, drops: floorReading, spare: { id: 'kick.spare' } },
  },
  ({ plinth, drops, spare, cut }) => cut.up(sum(plinth, longest(ZERO, ...drops), spare)),
)

/** Depth of the plinth's front face. */
const kickFace = formula<{ backGap: Length; depth: Length; setBack: Length }, Length>(
  {
    id: 'kick.face',
    plain: 'gap behind the boxes + box depth − kick set-back',
    source: 'geometry',
    from: { backGap: [{ id: 'box.back-gap' }, { id: 'back.scribe' }], depth: { id: 'box.depth' }, setBack: kickSet },
  },
  ({ backGap, depth, setBack }) => less(sum(backGap, depth), setBack),
)

/** Room for a kick plate between two walls. */
const kickRoom = formula<{ wide: Length; baseboard: Length; walledEnds: number }, Length>(
  {
    id: 'kick.room',
    plain: 'width at the face of the plinth − kept baseboard at each wall',
    source: 'common practice, no source',
    from: { wide: [recessWidth, flatLength, { id: 'kick.flat-span' }], baseboard: baseboardField },
    units: { walledEnds: 'count' },
  },
  ({ wide, baseboard, walledEnds }) => less(wide, times(baseboard, walledEnds)),
)

/** Finished length of one kick plate: of the whole room, or between the joints under the boxes. */
const kickLength = formula<{ from: Length; to: Length; room: Length; cut: CutStep }, Length>(
  {
    id: 'kick.length',
    plain: 'its share of the room at the face of the plinth, down to the cut step',
    source: 'common practice, no source',
    from: { room: kickRoom },
    units: { from: 'length', to: 'length' },
  },
  ({ from, to, cut }) => cut.down(less(to, from)),
)

const roughLength = formula<{ kickLength: Length; leftLong: Length; cut: CutStep }, Length>(
  {
    id: 'kick.rough-length',
    plain: 'finished length + left long, up to the cut step',
    source: 'common practice, no source',
    from: { leftLong: { id: 'trim.long' } },
  },
  (of) => of.cut.up(sum(of.kickLength, of.leftLong)),
)

/** The kick plate of a run: wall to wall or gable to gable, left long and trimmed on site once the boxes stand. */
export function kickPlate(context: PlanContext, here: StandingRun): Contribution {
  const { figures, cut } = context
  if (here.plinth <= figures.length('kick.floor-clear')) return NOTHING
  const span = spanOf(here)
  const usable = less(
    figures.length('sheet.length'),
    times(figures.length('sheet.trim'), 2),
    figures.length('trim.long'),
  )
  const sections = sectionsAt(
    span,
    here.boxes.slice(1).map((b) => b.x),
    usable,
  )
  return {
    parts: sections.map((section, i) => plate(context, here, { ...section, number: i + 1, room: span.room })),
    joints: kickJoints(context, here, span, cut.down(span.room)),
    messages: [],
  }
}

/** From wall or baseboard to wall or baseboard at the plinth's face; from gable to gable at a free end. */
function spanOf(here: StandingRun): Section & { readonly room: Length } {
  const { run, baseboard } = here
  const { wall } = run
  if (wall.kind === 'flat') return flatSpan(here, wall)
  const faceY = faceOf(here)
  const [foot, top] = [widthAt(wall, ZERO, faceY), widthAt(wall, here.plinth, faceY)]
  const z = foot <= top ? ZERO : here.plinth
  const from = sum(leftSideAt(wall, z, faceY), baseboard)
  const room = kickRoom({ wide: shortest(foot, top), baseboard, walledEnds: 2 })
  return { from, to: sum(from, room), room }
}

/** Between the room's walls, or the end of the run where there is none. */
const flatWide = formula<{ left: Length; right: Length }, Length>(
  {
    id: 'kick.flat-span',
    plain: 'from the wall or the start of the run to the wall or its end',
    source: 'geometry',
    from: { left: { id: 'runStart' }, right: [flatLength, { id: 'slot.run-end' }] },
  },
  ({ left, right }) => less(right, left),
)

function flatSpan({ run, baseboard }: StandingRun, wall: FlatWall): Section & { readonly room: Length } {
  const left = wall.wallAtLeft ? ZERO : run.startX
  const right = wall.wallAtRight ? wall.width : runEnd({ start: run.startX, runWidth: run.width })
  const walledEnds = [wall.wallAtLeft, wall.wallAtRight].filter(Boolean).length
  const room = kickRoom({ wide: flatWide({ left, right }), baseboard, walledEnds })
  const from = wall.wallAtLeft ? baseboard : left
  return { from, to: sum(from, room), room }
}

/** Depth of the plinth's front face. */
const faceOf = ({ backGap, depth, kickSetBack }: StandingRun): Length =>
  kickFace({ backGap, depth, setBack: kickSetBack })

interface Plate extends Section {
  readonly number: number
  readonly room: Length
}

function plate(context: PlanContext, here: StandingRun, { number, room, ...section }: Plate): Part {
  const { figures, cut, show } = context
  const { run, carcass: t } = here
  const length = kickLength({ ...section, room, cut })
  const heightAt = (x: Length) => finishedHeight(context, here, x)
  const [left, right] = [heightAt(section.from), heightAt(section.to)]
  const drops = stationsBetween(run.wall.floor, section.from, section.to).map((x) =>
    floorReading({ edge: run.wall.floor, at: x }),
  )
  const spare = figures.length('trim.long')
  return madePart({
    id: `${run.bay.id}/kick-plate-${number}`,
    mark: runPartMark(run.bay, 'P', number),
    name: 'kick plate',
    bay: run.bay.id,
    goesTo: `${run.bay.name}, floor`,
    length,
    width: longest(left, right),
    thickness: t,
    ...(left === right ? {} : { taper: left < right ? `left ${show.length(left)}` : `right ${show.length(right)}` }),
    roughLength: roughLength({ kickLength: length, leftLong: spare, cut }),
    roughWidth: roughHeight({ plinth: here.plinth, drops, spare: figures.length('kick.spare'), cut }),
    leaveLong: `${show.withUnit(spare)} in length, rest at the foot`,
    material: mdf(t),
    shows: 'face',
    details: [
      'its length is about: trimmed to what is measured once the boxes stand',
      `height ${show.length(left)} left, ${show.length(right)} right`,
      ...(here.baseboard > 0 ? ['coped to the kept baseboard where that is moulded'] : []),
    ],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(run.wall.originX, section.from),
      y: faceOf(here),
      z: less(here.plinth, longest(left, right)),
      dx: length,
      dy: t,
      dz: longest(left, right),
    },
    waitsFor: [...run.waitsFor, ...run.wall.waits.depth, ...run.wall.waits.floor],
    from: {
      length: kickLength,
      width: kickHeight,
      thickness: carcassThickness,
      roughLength,
      roughWidth: roughHeight,
    },
  })
}

const finishedHeight = (context: PlanContext, here: StandingRun, x: Length): Length =>
  kickHeight({
    plinth: here.plinth,
    drop: floorReading({ edge: here.run.wall.floor, at: x }),
    floorClear: context.figures.length('kick.floor-clear'),
    cut: context.cut,
  })

/** Height of the joint at one end of the kick plate. */
const kickEndLength = formula<{ plinth: Length; drop: Length; cut: CutStep }, Length>(
  {
    id: 'kick.end-joint',
    plain: 'plinth + floor drop, to the nearest cut step',
    source: 'geometry',
    from: { plinth: plinthHeight, drop: floorReading },
  },
  ({ plinth, drop, cut }) => cut.near(sum(plinth, drop)),
)

function kickJoints(context: PlanContext, here: StandingRun, span: Section, length: Length): readonly JointDraft[] {
  const { figures, cut } = context
  const { run } = here
  const scribed = figures.length('scribe.fit')
  const clear = figures.length('kick.floor-clear')
  const common = { bay: run.bay.id, waitsFor: [...run.waitsFor, ...run.wall.waits.floor] }
  const ends = (['left', 'right'] as const)
    .filter((side) => run[side].fit !== 'gable')
    .map((side): JointDraft => {
      const x = side === 'left' ? span.from : span.to
      return {
        ...common,
        id: `${run.bay.id}/kick-${side}`,
        where: `kick plate, ${side} end`,
        length: kickEndLength({ plinth: here.plinth, drop: floorReading({ edge: run.wall.floor, at: x }), cut }),
        gap1: scribed,
        gap2: scribed,
        ends: ['foot', 'top'],
        colour: 'wall',
        twoColours: true,
      }
    })
  return [
    ...ends,
    {
      ...common,
      id: `${run.bay.id}/kick-floor`,
      where: 'kick plate to floor',
      length,
      gap1: clear,
      gap2: clear,
      ends: ['left', 'right'],
      colour: 'built-in',
      twoColours: false,
      leftOpen: true,
    },
  ]
}
