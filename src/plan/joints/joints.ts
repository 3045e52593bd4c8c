import type { JointKind } from '../../kinds/joint/contract.ts'
import { JOINTS } from '../../kinds/joint/list.ts'
import { within } from '../../things/formula.ts'
import type { Joint, JointDraft } from '../../things/joint.ts'
import type { Message } from '../../things/message.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { closeJoint } from './close-joint.ts'
import { jointMessages } from './joint-checks.ts'
import { type JointRules, jointRules } from './joint-rules.ts'
import { caulkInAll, rodInAll, tapeInAll } from './joint-totals.ts'

export interface JointPlan {
  readonly joints: readonly Joint[]
  /** Litres of caulk by colour, whole job, all passes, waste included. */
  readonly caulk: Readonly<Record<'built-in' | 'wall', number>>
  /** Metres of plain masking tape, and of sharp-line tape where paint alone makes the line; waste included. */
  readonly tape: number
  readonly sharpLineTape: number
  /** Backer rod, thinnest first: the diameter sold, and metres; waste not included. */
  readonly rods: readonly { readonly diameter: Length; readonly metres: number }[]
  /** Passes of the joint that takes most. */
  readonly passes: number
  readonly messages: readonly Message[]
}

/** Kind, passes, tape and caulk of every joint; numbers them bay by bay. */
export function joints(context: PlanContext, drafts: readonly JointDraft[]): JointPlan {
  const rules = jointRules(context)
  const closed = bayByBay(context, drafts).map((draft, at) => closeJoint(draft, at + 1, rules, context.figures.units))
  return {
    joints: closed,
    caulk: { 'built-in': caulkOf(closed, 'built-in'), wall: caulkOf(closed, 'wall') },
    tape: tapeOf(closed, 'plain', rules),
    sharpLineTape: tapeOf(closed, 'sharp-line', rules),
    rods: rodsOf(closed),
    passes: closed.reduce((most, joint) => Math.max(most, joint.passes), 0),
    messages: jointMessages(closed, rules, context),
  }
}

/** The drafts in the order of the bays along the wall; within a bay as the steps handed them in. */
function bayByBay({ bays }: PlanContext, drafts: readonly JointDraft[]): readonly JointDraft[] {
  const ids = bays.map((bay) => bay.id)
  return [
    ...ids.flatMap((id) => drafts.filter((draft) => draft.bay === id)),
    ...drafts.filter((draft) => !ids.includes(draft.bay)),
  ]
}

const caulkOf = (closed: readonly Joint[], colour: Joint['colour']): number =>
  within(`caulk.${colour}`, () =>
    caulkInAll({ litres: closed.filter((joint) => joint.colour === colour).map((joint) => joint.caulk) }),
  )

const PURCHASES: Readonly<Record<JointKind['tape'], string>> = { plain: 'tape', 'sharp-line': 'tape.sharp', none: '' }

const tapeOf = (closed: readonly Joint[], tape: JointKind['tape'], { tapeWaste }: JointRules): number =>
  within(PURCHASES[tape], () =>
    tapeInAll({
      tapes: closed.filter((joint) => JOINTS[joint.kind].tape === tape).map((joint) => joint.tape),
      waste: tapeWaste,
    }),
  )

function rodsOf(closed: readonly Joint[]): JointPlan['rods'] {
  const diameters = [...new Set(closed.map((joint) => joint.rod))].filter((rod) => rod > 0)
  return diameters
    .toSorted((a, b) => a - b)
    .map((diameter, at) => ({
      diameter,
      metres: within(`rod.${at + 1}`, () =>
        rodInAll({ lengths: closed.filter((joint) => joint.rod === diameter).map((joint) => joint.length) }),
      ),
    }))
}
