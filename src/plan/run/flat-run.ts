import { runLength, runStart } from '../../job/chapters/cabinets.ts'
import { type Length, less, sum, ZERO } from '../../units/length.ts'
import { carcassThicknessOf } from '../boxes/panel-thickness.ts'
import type { PlanContext } from '../context.ts'
import type { FlatWall } from '../survey/survey.ts'
import { boxCountOf, runWaits, sideOf } from './alcove-run.ts'
import { fillerNominalOf, fitOf } from './run-fit.ts'
import type { RunLevel } from './run-levels.ts'
import type { Fit, Run } from './slot.ts'

/** A run on a flat wall: its length and start are asked; a free end gets a gable, an end at a wall a fit. */
export function flatRun(context: PlanContext, level: RunLevel, wall: FlatWall): Run {
  const { cut, settle } = context
  const left: Fit = wall.wallAtLeft ? fitOf(context, level, 'left') : 'gable'
  const right: Fit = wall.wallAtRight ? fitOf(context, level, 'right') : 'gable'
  const nominal = fillerNominalOf(context, wall, [left, right].includes('filler') ? 'has a filler' : 'has none')
  const [takenLeft, takenRight] = [taken(context, left, nominal), taken(context, right, nominal)]
  const width = cut.down(
    settle.choice(runLength, wall.bay, () => ({
      value: cut.down(less(wall.width, takenLeft, takenRight)),
      because: 'the wall less its ends',
    })),
  )
  const startX = settle.choice(runStart, wall.bay, () => ({
    value: takenLeft,
    because: left === 'gable' ? 'the gable stands at the wall’s end' : `a ${left} beside the wall`,
  }))
  const gapRight = less(wall.width, startX, width)
  return {
    bay: wall.bay,
    wall,
    kind: level.kind,
    z0: level.z0,
    z1: level.z1,
    boxHeight: less(level.z1, level.z0),
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
