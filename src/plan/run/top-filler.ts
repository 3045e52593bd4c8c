import { carcassThickness } from '../../job/chapters/cabinets.ts'
import { crown as crownField } from '../../job/chapters/wall.ts'
import { type Contribution, NOTHING } from '../../things/contribution.ts'
import { formula } from '../../things/formula.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, longest, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { runPartMark } from '../marks.ts'
import { mdf } from '../materials.ts'
import { outlineStations, recessWidth, widthAt } from '../survey/outline.ts'
import { ceilingReading } from '../survey/reading.ts'
import type { StandingRun } from './levels.ts'
import { flatRoom } from './plinth-frame.ts'
import { boxTopLine } from './run-levels.ts'
import type { Run } from './slot.ts'

/** Marks F1 and F2 are the wall fillers at the left and right. */
const TOP_FILLER = 3

/** What is seen in front of the boxes, from wall to wall. */
const FRONTS = [recessWidth, flatRoom]

const heightThere = formula<{ ceiling: Length; crown: Length; boxTop: Length; cut: CutStep }, Length>(
  {
    id: 'top-filler.height',
    plain: 'ceiling there − kept crown − top of the boxes, to the nearest cut step',
    source: 'geometry',
    from: { ceiling: ceilingReading, crown: crownField, boxTop: boxTopLine },
  },
  ({ ceiling, crown, boxTop, cut }) => cut.near(less(ceiling, crown, boxTop)),
)

const fillerLength = formula<{ front: Length; cut: CutStep }, Length>(
  {
    id: 'top-filler.length',
    plain: 'width in front at the top of the boxes, to the nearest cut step',
    source: 'geometry',
    from: { front: FRONTS },
  },
  ({ front, cut }) => cut.near(front),
)

const roughLength = formula<
  { fillerLength: Length; fronts: readonly Length[]; leftLong: Length; cut: CutStep },
  Length
>(
  {
    id: 'top-filler.rough-length',
    plain: 'largest width in front up to the ceiling + left long, up to the cut step',
    source: 'common practice, no source',
    from: { fillerLength, fronts: FRONTS, leftLong: { id: 'top.long' } },
  },
  (of) => of.cut.up(sum(longest(of.fillerLength, ...of.fronts), of.leftLong)),
)

const roughWidth = formula<{ height: Length; scribe: Length; cut: CutStep }, Length>(
  {
    id: 'top-filler.rough-width',
    plain: 'greater height + spare for scribing, up to the cut step',
    source: 'common practice, no source',
    from: { height: heightThere, scribe: { id: 'scribe.spare' } },
  },
  ({ height, scribe, cut }) => cut.up(sum(height, scribe)),
)

/** The strip between a tall run and the ceiling (or a kept crown), scribed to it. */
export function topFiller(context: PlanContext, here: StandingRun): Contribution {
  const { figures, cut, show } = context
  const { run, carcass: t } = here
  const { wall } = run
  const heightAt = (x: Length) =>
    heightThere({ ceiling: ceilingReading({ edge: wall.ceiling, at: x }), crown: here.crownDrop, boxTop: run.z1, cut })
  const [left, right] = [heightAt(run.startX), heightAt(sum(run.startX, run.width))]
  const most = longest(left, right)
  if (most <= 0 || left <= 0 || right <= 0) return NOTHING
  const fronts = frontWidths(run)
  const length = fillerLength({ front: fronts[0] ?? run.width, cut })
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
    roughLength: roughLength({ fillerLength: length, fronts, leftLong: spare.long, cut }),
    roughWidth: roughWidth({ height: most, scribe: spare.high, cut }),
    leaveLong: `${show.withUnit(spare.long)} in length, ${show.withUnit(spare.high)} at the ceiling`,
    material: mdf(t),
    shows: 'face',
    details: crownCut
      ? [
          'the crown is cut square at both ends of the boxes and caulked there; a new one goes over this piece where it was asked for',
        ]
      : [],
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
    from: { length: fillerLength, width: heightThere, thickness: carcassThickness, roughLength, roughWidth },
  })
  return { parts: [part], joints: [ceilingJoint(context, part)], messages: [] }
}

function ceilingJoint({ figures }: PlanContext, { id, bay, length, waitsFor }: Part): JointDraft {
  const scribed = figures.length('scribe.fit')
  return {
    id,
    bay,
    where: 'top filler to ceiling',
    length,
    gap1: scribed,
    gap2: scribed,
    ends: ['left', 'right'],
    colour: 'wall',
    twoColours: true,
    waitsFor,
  }
}

/** Width in front from the boxes' top up to the ceiling; the run itself on a flat wall. */
function frontWidths(run: Run): readonly Length[] {
  const { wall } = run
  if (wall.kind === 'flat')
    return [flatRoom({ runWidth: run.width, gapLeft: run.left.gapTop, gapRight: run.right.gapTop })]
  return outlineStations(wall, run.z1, longest(run.z1, wall.lowestCeiling)).map((z) =>
    widthAt(wall, z, wall.frontDepth),
  )
}
