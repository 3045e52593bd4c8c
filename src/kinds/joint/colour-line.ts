import { ZERO } from '../../units/length.ts'
import type { JointKind } from './contract.ts'

/** Two colours meet on one face: no gap and no bead, paint alone makes the line. */
export const colourLine: JointKind = {
  id: 'colour-line',
  says: 'line of colour',
  widest: undefined,
  depth: () => ZERO,
  tape: 'sharp-line',
  backed: false,
}
