import { edgeAt } from '../../geometry/edge.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { outlineStations, widthAt } from '../survey/outline.ts'
import type { StandingRun } from './levels.ts'
import type { Run } from './slot.ts'

/** Marks F1 and F2 are the wall fillers at the left and right. */
const TOP_FILLER = 3

/** The strip between a tall run and the ceiling (or a kept crown), scribed to it. */
export function topFiller(context: PlanContext, here: StandingRun): Contribution {
  const { figures, cut, show } = context
  const { run, carcass: t } = here
  const { wall } = run
  const heightAt = (x: Length) => cut.near(less(edgeAt(wall.ceiling, x), here.crownDrop, run.z1))
  const [left, right] = [heightAt(run.startX), heightAt(sum(run.startX, run.width))]
  const most = longest(left, right)
  if (most <= 0 || left <= 0 || right <= 0) return NOTHING
  const fronts = frontWidths(run)
  const length = cut.near(fronts[0] ?? run.width)
  const spare = { long: figures.length('top.long'), high: figures.length('scribe.spare') }
  const waitsFor = [...run.waitsFor, ...wall.waits.depth, ...wall.waits.ceiling]
  const crownCut = wall.crown.drop > 0 && here.crownDrop === 0
  const part = madePart({
    id: `${run.bay.id}/top-filler`,
    mark: runPartMark(run.bay, 'F', TOP_FILLER),
    name: 'top filler',
    bay: run.bay.id,
    goesTo: `${run.bay.name}, over the boxes`,
    length,
    width: most,
    thickness: t,
    ...(left === right ? {} : { taper: left < right ? `left ${show.length(left)}` : `right ${show.length(right)}` }),
    roughLength: cut.up(sum(longest(length, ...fronts), spare.long)),
    roughWidth: cut.up(sum(most, spare.high)),
    leaveLong: `${show.withUnit(spare.long)} in length, ${show.withUnit(spare.high)} at the ceiling`,
    material: mdf(t),
    shows: 'face',
    details: crownCut ? ['the crown is cut back here: a new one over the boxes is not in this list'] : [],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(wall.originX, run.startX, run.left.fit === 'gable' ? ZERO : less(ZERO, run.left.gapTop)),
      y: less(sum(here.backGap, here.depth), t),
      z: run.z1,
      dx: length,
      dy: t,
      dz: most,
    },
    waitsFor,
  })
  const scribed = figures.length('scribe.fit')
  const joint = {
    id: `${run.bay.id}/top-filler`,
    bay: run.bay.id,
    where: 'top filler to ceiling',
    length,
    gap1: scribed,
    gap2: scribed,
    ends: ['left', 'right'] as const,
    colour: 'wall' as const,
    twoColours: true,
    waitsFor,
  }
  return { parts: [part], joints: [joint], messages: [] }
}

/** Width in front from the boxes' top up to the ceiling; the run itself on a flat wall. */
function frontWidths(run: Run): readonly Length[] {
  const { wall } = run
  if (wall.kind === 'flat') return [sum(run.width, run.left.gapTop, run.right.gapTop)]
  return outlineStations(wall, run.z1, longest(run.z1, wall.lowestCeiling)).map((z) =>
    widthAt(wall, z, wall.frontDepth),
  )
}
