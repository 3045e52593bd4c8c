import { wallColour } from '../../job/chapters/finish.ts'
import { breastSize, flatLength, widths } from '../../job/chapters/wall.ts'
import type { GapLimits, JointKind } from '../../kinds/joint/contract.ts'
import { closing, JOINTS } from '../../kinds/joint/list.ts'
import { questionKey } from '../../things/field.ts'
import type { Joint, JointDraft } from '../../things/joint.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { inMetres, type Length, less, longest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { allPasses, beadSection, beadVolume, passesFor, rodDiameter } from './bead.ts'
import { gapTooWide, manyPasses, tapeTooLong } from './joint-messages.ts'

export interface JointPlan {
  readonly joints: readonly Joint[]
  /** Litres of caulk by colour, whole job, all passes, waste included. */
  readonly caulk: Readonly<Record<'built-in' | 'wall', number>>
  /** Metres of plain masking tape, and of sharp-line tape where paint alone makes the line; waste included. */
  readonly tape: number
  readonly sharpLineTape: number
  /** Backer rod: diameter in mm to buy for the widest backed gap, and metres; waste not included. */
  readonly rod: { readonly diameter: number; readonly metres: number } | undefined
  /** Passes of the joint that takes most. */
  readonly passes: number
  readonly messages: readonly Message[]
}

/** Kind, passes, tape and caulk of every joint; numbers them bay by bay. */
export function joints(context: PlanContext, drafts: readonly JointDraft[]): JointPlan {
  const rules = rulesOf(context)
  const closed = bayByBay(context, drafts).map((draft, at) => jointOf(draft, at + 1, rules))
  const caulkOf = (colour: Joint['colour']) =>
    closed.filter((joint) => joint.colour === colour).reduce((litres, joint) => litres + joint.caulk, 0)
  const metresOf = (tape: JointKind['tape']) =>
    closed.filter((joint) => JOINTS[joint.kind].tape === tape).reduce((m, joint) => m + inMetres(joint.tape), 0) *
    (1 + rules.tapeWaste)
  const passes = closed.reduce((most, joint) => Math.max(most, joint.passes), 0)
  return {
    joints: closed,
    caulk: { 'built-in': caulkOf('built-in'), wall: caulkOf('wall') },
    tape: metresOf('plain'),
    sharpLineTape: metresOf('sharp-line'),
    rod: rodOf(closed, rules),
    passes,
    messages: [
      ...closed.flatMap((joint) => tooWide(joint, rules, context)),
      ...context.bays.flatMap((bay) => passNotes(closed, bay, rules)),
      ...tapeNotes(closed, rules),
    ],
  }
}

interface JointRules {
  readonly limits: GapLimits
  readonly waste: number
  readonly shrinkage: number
  readonly visible: Length
  readonly overlap: Length
  readonly tapeWaste: number
  readonly passesMost: number
  readonly daysOn: number
  readonly rodOver: number
}

const rulesOf = ({ figures }: PlanContext): JointRules => ({
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
  daysOn: figures.number('tape.days-on'),
  rodOver: figures.number('caulk.rod-over'),
})

/** The drafts in the order of the bays along the wall; within a bay as the steps handed them in. */
function bayByBay({ bays }: PlanContext, drafts: readonly JointDraft[]): readonly JointDraft[] {
  const ids = bays.map((bay) => bay.id)
  return [
    ...ids.flatMap((id) => drafts.filter((draft) => draft.bay === id)),
    ...drafts.filter((draft) => !ids.includes(draft.bay)),
  ]
}

function jointOf(draft: JointDraft, number: number, rules: JointRules): Joint {
  const { leftOpen, ...joint } = draft
  const wider = longest(draft.gap1, draft.gap2)
  const kind = kindOf(draft, wider, rules.limits)
  const taped = kind.tape !== 'none' && draft.twoColours
  return {
    ...joint,
    number,
    kind: kind.id,
    tape: taped ? sum(draft.length, times(rules.overlap, 2)) : ZERO,
    ...beadOf(draft, kind, rules),
  }
}

/** No gap between two colours is a line of colour. A gap nothing closes is worked out over backer rod, and is a stop. */
function kindOf(draft: JointDraft, wider: Length, limits: GapLimits): JointKind {
  if (draft.leftOpen === true) return JOINTS.open
  if (wider === ZERO && draft.twoColours) return JOINTS['colour-line']
  return closing(wider, limits) ?? JOINTS['backed-caulk']
}

function beadOf(draft: JointDraft, kind: JointKind, rules: JointRules): Pick<Joint, 'passes' | 'caulk'> {
  const { limits, shrinkage, visible, waste } = rules
  if (kind.widest === undefined) return { passes: 0, caulk: 0 }
  const depth = kind.depth(longest(draft.gap1, draft.gap2), limits)
  // A caulk that never stays flush is asked about, as one pass more than anybody wants.
  const passes = passesFor({ depth, visible, shrinkage }) ?? rules.passesMost + 1
  const section = (gap: Length) => beadSection({ gap, kind, limits })
  const first = beadVolume({ length: draft.length, sections: [section(draft.gap1), section(draft.gap2)], waste })
  return { passes, caulk: first * allPasses({ passes, shrinkage }) }
}

function rodOf(closed: readonly Joint[], { rodOver }: JointRules): JointPlan['rod'] {
  const backed = closed.filter((joint) => JOINTS[joint.kind].backed)
  if (backed.length === 0) return undefined
  return {
    diameter: Math.max(...backed.map(({ gap1, gap2 }) => rodDiameter({ gap1, gap2, over: rodOver }))),
    metres: backed.reduce((metres, joint) => metres + inMetres(joint.length), 0),
  }
}

function tooWide(joint: Joint, rules: JointRules, { show, bays }: PlanContext): readonly Message[] {
  const wider = longest(joint.gap1, joint.gap2)
  const most = rules.limits.rodMost
  const bay = bays.find((b) => b.id === joint.bay)
  if (joint.kind === 'open' || wider <= most || bay === undefined) return []
  const values = {
    where: joint.where,
    gap: show.withUnit(wider),
    most: show.withUnit(most),
    over: show.withUnit(less(wider, most)),
  }
  return [raise(gapTooWide, { about: questionKey(bay.id, MEASURED[bay.kind]), place: joint.where }, values)]
}

/** One question a bay: its joints come from one measurement. */
function passNotes(closed: readonly Joint[], bay: NamedBay, rules: JointRules): readonly Message[] {
  const many = closed.filter(
    (joint) =>
      joint.bay === bay.id &&
      joint.passes > rules.passesMost &&
      longest(joint.gap1, joint.gap2) <= rules.limits.rodMost,
  )
  if (many.length === 0) return []
  const passes = Math.max(...many.map((joint) => joint.passes))
  const joints = many.length === 1 ? 'One joint takes' : `${many.length} joints take up to`
  const where = many.map((joint) => joint.where).join('; ')
  return [
    raise(
      manyPasses,
      { about: questionKey(bay.id, MEASURED[bay.kind]), place: bay.name },
      { joints, where, passes, most: rules.passesMost },
    ),
  ]
}

/** The measurement the gap comes from. */
const MEASURED = { alcove: widths, flat: flatLength, breast: breastSize } as const

/** Each pass dries overnight on the tape; the paint goes over it the day after the last. */
function tapeNotes(closed: readonly Joint[], { daysOn }: JointRules): readonly Message[] {
  const days = closed.filter((joint) => joint.tape > 0).reduce((most, joint) => Math.max(most, joint.passes), 0)
  if (days <= daysOn) return []
  return [raise(tapeTooLong, { about: questionKey('job', wallColour), place: 'joints' }, { days, most: daysOn })]
}
