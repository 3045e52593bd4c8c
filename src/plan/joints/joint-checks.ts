import { breastSize, flatLength, widths } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import type { Joint } from '../../things/joint.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { less, longest } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { gapTooWide, manyPasses } from './joint-messages.ts'
import type { JointRules } from './joint-rules.ts'

/** What closed joints ask of the person: gaps too wide, passes too many. */
export const jointMessages = (
  closed: readonly Joint[],
  rules: JointRules,
  context: PlanContext,
): readonly Message[] => [
  ...closed.flatMap((joint) => tooWide(joint, rules, context)),
  ...context.bays.flatMap((bay) => passNotes(closed, bay, rules)),
]

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
