import { ZERO } from '../../units/length.ts'
import type { JointKind } from './contract.ts'

/** Not closed, on purpose: a kick plate clears the floor. */
export const leftOpen: JointKind = {
  id: 'open',
  says: 'left open',
  widest: undefined,
  depth: () => ZERO,
  tape: 'none',
  backed: false,
}
