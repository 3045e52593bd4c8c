import type { JointDraft } from '../../things/joint.ts'
import type { BodyShape } from '../shelves/body-shape.ts'

/** Gaps of a board's end to its wall, at the front and at the back corner. */
export const endJointGaps = (body: BodyShape): Pick<JointDraft, 'gap1' | 'gap2'> => ({
  gap1: body.gapFront,
  gap2: body.gapBack,
})
