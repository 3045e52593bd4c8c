import { thinnestRodSold } from '../../figures/stock-lengths.ts'
import type { GapLimits, JointKind } from '../../kinds/joint/contract.ts'
import { closing, JOINTS } from '../../kinds/joint/list.ts'
import { within } from '../../things/formula.ts'
import type { Joint, JointDraft } from '../../things/joint.ts'
import { type Length, longest, ZERO } from '../../units/length.ts'
import type { UnitSystem } from '../../units/show-length.ts'
import { allPasses, beadSection, beadVolume, jointCaulk, passesFor, rodDiameter } from './bead.ts'
import type { JointRules } from './joint-rules.ts'
import { jointTape } from './joint-totals.ts'

/** A joint with its kind, tape, passes, caulk and backer rod. */
export const closeJoint = (draft: JointDraft, number: number, rules: JointRules, units: UnitSystem): Joint =>
  within(draft.id, () => {
    const { leftOpen, ...joint } = draft
    const kind = kindOf(draft, rules.limits)
    const taped = kind.tape !== 'none' && draft.twoColours
    return {
      ...joint,
      number,
      kind: kind.id,
      tape: taped ? jointTape({ length: draft.length, overlap: rules.overlap }) : ZERO,
      rod: kind.backed ? rodOf(draft, rules, units) : ZERO,
      ...beadOf(draft, kind, rules),
    }
  })

/** No gap between two colours is a line of colour. A gap nothing closes is worked out over backer rod, and is a stop. */
function kindOf(draft: JointDraft, limits: GapLimits): JointKind {
  const wider = longest(draft.gap1, draft.gap2)
  if (draft.leftOpen === true) return JOINTS.open
  if (wider === ZERO && draft.twoColours) return JOINTS['colour-line']
  return closing(wider, limits) ?? JOINTS['backed-caulk']
}

/** The thinnest rod sold that the gap holds. */
const rodOf = ({ gap1, gap2 }: JointDraft, { rodOver }: JointRules, units: UnitSystem): Length =>
  thinnestRodSold(rodDiameter({ gap1, gap2, over: rodOver }), units)

function beadOf(draft: JointDraft, kind: JointKind, rules: JointRules): Pick<Joint, 'passes' | 'caulk'> {
  const { limits, shrinkage, visible, waste } = rules
  if (kind.widest === undefined) return { passes: 0, caulk: 0 }
  const depth = kind.depth(longest(draft.gap1, draft.gap2), limits)
  // A caulk that never stays flush is asked about, as one pass more than anybody wants.
  const passes = passesFor({ depth, visible, shrinkage }) ?? rules.passesMost + 1
  const section = (gap: Length) => beadSection({ gap, depth: kind.depth(gap, limits), fillet: limits.fillet })
  const firstPass = beadVolume({
    length: draft.length,
    sectionOne: section(draft.gap1),
    sectionOther: section(draft.gap2),
    waste,
  })
  return { passes, caulk: jointCaulk({ firstPass, allPasses: allPasses({ passes, shrinkage }) }) }
}
