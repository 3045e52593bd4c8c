import type { JointDraft } from '../../things/joint.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'

/** Where a run of boxes meets its walls, from the boxes' foot to their top. A gable's joint is the gable's. */
export const boxJoints = (context: PlanContext, run: Run): readonly JointDraft[] =>
  (['left', 'right'] as const).flatMap((side) => {
    const { fit, gapFoot, gapTop } = run[side]
    if (fit === 'gable' || fit === 'open') return []
    const scribed = context.figures.length('scribe.fit')
    return [
      {
        id: `${run.bay.id}/box-${side}`,
        bay: run.bay.id,
        where: `${fit === 'filler' ? 'filler' : 'box'}, ${side} wall`,
        length: run.boxHeight,
        gap1: fit === 'filler' ? scribed : gapFoot,
        gap2: fit === 'filler' ? scribed : gapTop,
        ends: ['foot', 'top'],
        // A joint of new work to the wall is painted as wall.
        colour: 'wall',
        twoColours: true,
        waitsFor: run.waitsFor,
      },
    ]
  })
