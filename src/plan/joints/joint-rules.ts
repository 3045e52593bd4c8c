import type { GapLimits } from '../../kinds/joint/contract.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'

/** The figures every joint of a job is closed by. */
export interface JointRules {
  readonly limits: GapLimits
  readonly waste: number
  readonly shrinkage: number
  readonly visible: Length
  readonly overlap: Length
  readonly tapeWaste: number
  readonly passesMost: number
  readonly rodOver: number
}

export const jointRules = ({ figures }: PlanContext): JointRules => ({
  limits: {
    filletOnly: figures.length('bead.fillet-only'),
    caulkMost: figures.length('caulk.most'),
    rodMost: figures.length('rod.most'),
    fillet: figures.length('bead.fillet'),
    beadLeast: figures.length('bead.least'),
    beadMost: figures.length('bead.most'),
  },
  waste: figures.number('caulk.waste'),
  shrinkage: figures.number('caulk.shrinkage'),
  visible: figures.length('bead.visible'),
  overlap: figures.length('tape.overlap'),
  tapeWaste: figures.number('tape.waste'),
  passesMost: figures.number('caulk.passes-most'),
  rodOver: figures.number('caulk.rod-over'),
})
