import type { JointKindId } from '../../things/joint.ts'
import { backedCaulk } from './backed-caulk.ts'
import { caulk } from './caulk.ts'
import { colourLine } from './colour-line.ts'
import type { GapLimits, JointKind } from './contract.ts'
import { fillet } from './fillet.ts'
import { leftOpen } from './left-open.ts'

/** Every way to close a joint, from the narrowest gap up. Add one = one file + one line here. */
export const JOINTS: Readonly<Record<JointKindId, JointKind>> = {
  fillet,
  caulk,
  'backed-caulk': backedCaulk,
  open: leftOpen,
  'colour-line': colourLine,
}

/** The kind that closes a gap: the first whose widest gap is not smaller; undefined when none does. */
export const closing = (gap: number, limits: GapLimits): JointKind | undefined =>
  Object.values(JOINTS).find((kind) => kind.widest !== undefined && gap <= kind.widest(limits))
