import { carcassThickness, fillerWidth, runLength, runStart } from '../../job/chapters/cabinets.ts'
import { flatLength } from '../../job/chapters/wall.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { carcassThicknessOf } from '../boxes/panel-thickness.ts'
import type { PlanContext } from '../context.ts'
import type { FlatWall } from '../survey/survey.ts'
import { boxCountOf, runEnd, runWaits, sideOf } from './alcove-run.ts'
import { fillerNominalOf, fitOf } from './run-fit.ts'
import type { RunLevel } from './run-levels.ts'
import type { Fit, Run } from './slot.ts'

/** An end takes a gable, a filler or a caulked fit. */
const ENDS = [carcassThickness, fillerWidth, { id: 'filler.nominal' }, { id: 'caulk.fit' }]

/** What a flat wall leaves between the two ends of a run. */
const runBetweenEnds = formula<{ wall: Length; left: Length; right: Length; cut: CutStep }, Length>(
  {
    id: 'slot.between-ends',
    plain: 'wall − what each end takes, down to the cut step',
    source: 'common practice, no source',
    from: { wall: flatLength, left: ENDS, right: ENDS },
  },
  ({ wall, left, right, cut }) => cut.down(less(wall, left, right)),
)

const flatRunWidth = formula<{ runLength: Length; cut: CutStep }, Length>(
  { id: 'slot.flat-run-width', plain: 'length asked for, down to the cut step', source: 'geometry' },
  (of) => of.cut.down(of.runLength),
)

/** What a flat wall leaves beside the right end of a run. */
const flatGap = formula<{ wall: Length; runEnd: Length }, Length>(
  { id: 'slot.flat-gap', plain: 'wall − end of the run', source: 'geometry', from: { wall: flatLength, runEnd } },
  (of) => less(of.wall, of.runEnd),
)

/** A run on a flat wall: its length and start are asked; a free end gets a gable, an end at a wall a fit. */
export function flatRun(context: PlanContext, level: RunLevel, wall: FlatWall): Run {
  const { cut, settle } = context
  const left: Fit = wall.wallAtLeft ? fitOf(context, level, 'left') : 'gable'
  const right: Fit = wall.wallAtRight ? fitOf(context, level, 'right') : 'gable'
  const nominal = fillerNominalOf(context, wall, [left, right].includes('filler') ? 'has a filler' : 'has none')
  const [takenLeft, takenRight] = [taken(context, left, nominal), taken(context, right, nominal)]
  const asked = settle.choice(runLength, wall.bay, () => ({
    value: runBetweenEnds({ wall: wall.width, left: takenLeft, right: takenRight, cut }),
    because: 'the wall less its ends',
  }))
  const width = flatRunWidth({ runLength: asked, cut })
  const startX = settle.choice(runStart, wall.bay, () => ({
    value: takenLeft,
    because: left === 'gable' ? 'the gable stands at the wall’s end' : `a ${left} beside the wall`,
  }))
  const end = runEnd({ start: startX, runWidth: width })
  const gapRight = flatGap({ wall: wall.width, runEnd: end })
  return {
    bay: wall.bay,
    wall,
    kind: level.kind,
    z0: level.z0,
    z1: level.z1,
    boxHeight: level.boxHeight,
    slot: wall.width,
    width,
    startX,
    boxCount: boxCountOf(context, wall, width),
    left: sideOf(left, left === 'gable' ? [ZERO] : [startX]),
    right: sideOf(right, right === 'gable' ? [ZERO] : [gapRight]),
    fillerNominal: nominal,
    waitsFor: runWaits(level),
  }
}

const taken = (context: PlanContext, fit: Fit, nominal: Length): Length => {
  if (fit === 'gable') return carcassThicknessOf(context)
  return fit === 'filler' ? nominal : context.figures.length('caulk.fit')
}

/** End of a flat run with its gable, for the check against the wall's end. */
export const flatRunEnd = (context: PlanContext, run: Run): Length =>
  sum(run.startX, run.width, run.right.fit === 'gable' ? carcassThicknessOf(context) : ZERO)
