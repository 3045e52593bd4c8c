import { edgeAt, stationsBetween } from '../../geometry/edge.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { formula } from '../../things/formula.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { leftSideAt, widthAt } from '../survey/outline.ts'
import type { StandingRun } from './levels.ts'
import { type Section, sectionsAt } from './run-sections.ts'

/** Height of the kick plate at one place, before rounding: plinth and floor drop, less its play over the floor. */
export const kickHeight = formula<{ plinth: Length; drop: Length; floorClear: Length }, Length>(
  { id: 'levels.kick-height', plain: 'plinth + floor drop − floor clearance', source: 'common practice, no source' },
  ({ plinth, drop, floorClear }) => less(sum(plinth, drop), floorClear),
)

/** The kick plate of a run: wall to wall or gable to gable, left long and trimmed on site once the boxes stand. */
export function kickPlate(context: PlanContext, here: StandingRun): Contribution {
  const { figures, cut } = context
  if (here.plinth <= figures.length('kick.floor-clear')) return NOTHING
  const span = spanOf(here)
  const length = less(span.to, span.from)
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
    parts: sections.map((section, i) => plate(context, here, section, i + 1)),
    joints: kickJoints(context, here, span, cut.down(length)),
    messages: [],
  }
}

/** From wall or baseboard to wall or baseboard at the plinth's face; from gable to gable at a free end. */
function spanOf(here: StandingRun): Section {
  const { run, baseboard } = here
  const { wall } = run
  if (wall.kind === 'flat')
    return {
      from: wall.wallAtLeft ? baseboard : run.startX,
      to: wall.wallAtRight ? less(wall.width, baseboard) : sum(run.startX, run.width),
    }
  const faceY = faceOf(here)
  const [foot, top] = [widthAt(wall, ZERO, faceY), widthAt(wall, here.plinth, faceY)]
  const z = foot <= top ? ZERO : here.plinth
  const left = leftSideAt(wall, z, faceY)
  return { from: sum(left, baseboard), to: less(sum(left, widthAt(wall, z, faceY)), baseboard) }
}

/** Depth of the plinth's front face. */
const faceOf = (here: StandingRun): Length => less(sum(here.backGap, here.depth), here.kickSetBack)

function plate(context: PlanContext, here: StandingRun, section: Section, number: number): Part {
  const { figures, cut, show } = context
  const { run, carcass: t } = here
  const length = cut.down(less(section.to, section.from))
  const heightAt = (x: Length) => finishedHeight(context, here, x)
  const [left, right] = [heightAt(section.from), heightAt(section.to)]
  const drops = stationsBetween(run.wall.floor, section.from, section.to).map((x) => edgeAt(run.wall.floor, x))
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
    roughLength: cut.up(sum(length, spare)),
    roughWidth: cut.up(sum(here.plinth, longest(ZERO, ...drops), figures.length('kick.spare'))),
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
  })
}

const finishedHeight = (context: PlanContext, here: StandingRun, x: Length): Length =>
  context.cut.near(
    kickHeight({
      plinth: here.plinth,
      drop: edgeAt(here.run.wall.floor, x),
      floorClear: context.figures.length('kick.floor-clear'),
    }),
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
        length: cut.near(sum(here.plinth, edgeAt(run.wall.floor, x))),
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
