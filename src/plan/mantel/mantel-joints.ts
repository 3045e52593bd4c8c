import type { QuestionKey } from '../../things/field.ts'
import type { JointDraft } from '../../things/joint.ts'
import type { Length } from '../../units/length.ts'
import type { BreastWall } from '../survey/survey.ts'
import { bothLegs } from './mantel-legs.ts'
import type { MantelSize } from './mantel-size.ts'
import type { BreastFace } from './masonry-face.ts'

/** Where a mantel meets the face: top, underside, both ends, and the two long edges of each leg. */
export function mantelJoints(
  { bay }: BreastWall,
  size: MantelSize,
  face: BreastFace,
  waitsFor: readonly QuestionKey[],
): readonly JointDraft[] {
  const joint = (id: string, where: string, length: Length, ends: JointDraft['ends']): JointDraft => ({
    id: `${bay.id}/mantel/${id}`,
    bay: bay.id,
    where: `mantel, ${where}`,
    length,
    gap1: face.gap,
    gap2: face.gap,
    ends,
    colour: face.rough ? 'built-in' : 'wall',
    twoColours: true,
    waitsFor,
  })
  const legs = size.legs === undefined ? [] : bothLegs(size.legs).filter(({ at }) => at.height > 0)
  return [
    joint('top-wall', 'top to the face', size.length, ['left', 'right']),
    joint('soffit-wall', 'underside to the face', size.beamLength, ['left', 'right']),
    joint('end-left', 'left end', size.frieze, ['foot', 'top']),
    joint('end-right', 'right end', size.frieze, ['foot', 'top']),
    ...legs.flatMap(({ side, at }) =>
      (['outer', 'inner'] as const).map((edge) =>
        joint(`leg-${side}/${edge}`, `${side} leg, ${edge} edge`, at.height, ['foot', 'top']),
      ),
    ),
  ]
}
