import { legDepth, legWidth, mantelLegs } from '../../job/chapters/mantel.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, longest, over, shortest, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { piecesTooClose, type TooClose, woodTooClose } from './clearance.ts'
import type { Firebox } from './firebox.ts'
import { mostText } from './mantel-checks.ts'
import { bothLegs, inZone, legId, legPieces, type MantelLegs, widestLeg } from './mantel-legs.ts'
import { legInHearthZone, legNotBuildable } from './mantel-messages.ts'
import type { MantelSize } from './mantel-size.ts'

/** What is wrong with the legs of a mantel: too near the fire, on the floor within the hearth zone, or not buildable. */
export function legMessages(
  context: PlanContext,
  wall: BreastWall,
  fire: Firebox,
  size: MantelSize,
): readonly Message[] {
  const { legs } = size
  if (legs === undefined) return []
  return [
    ...tooClose(context, wall, fire, { size, legs }),
    ...offHearth(context, wall, fire, legs),
    ...notBuildable(context, wall, size, legs),
  ]
}

interface WithLegs {
  readonly size: MantelSize
  readonly legs: MantelLegs
}

/** One message for both legs, by the one that is allowed least: what clears it clears the other. */
function tooClose(context: PlanContext, { bay }: BreastWall, fire: Firebox, on: WithLegs): readonly Message[] {
  const { show } = context
  if (fire.opening === undefined) return []
  const [worst] = piecesTooClose(fire.opening, legPieces(on.legs), fire.rules).toSorted(
    (a, b) => allowed(a) - allowed(b),
  )
  if (worst === undefined) return []
  const fixes = [...shallowerLegs(context, bay, on.size, worst), ...narrowerLegs(context, bay, fire, on), noLegs(bay)]
  return [
    raise(
      woodTooClose,
      {
        about: questionKey(bay.id, legDepth),
        place: bay.name,
        part: `${legId(bay.id, worst.piece.what.startsWith('left') ? 'left' : 'right')}/front`,
        fixes,
      },
      {
        piece: `mantel’s ${worst.piece.what}`,
        out: show.withUnit(worst.piece.standsOut),
        distance: show.withUnit(worst.distance),
        most: mostText(context, worst),
        rule: worst.rule.says,
        nearest: `${sentence(fixes)}. The local code and the manual may ask for more.`,
      },
    ),
  ]
}

const allowed = ({ mostOut }: TooClose): Length => (mostOut === 'none' ? ZERO : mostOut)

const sentence = (fixes: readonly Fix[]): string => {
  const text = fixes.map(({ says }) => says).join(', or ')
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}

function shallowerLegs(
  { cut, show }: PlanContext,
  bay: BreastWall['bay'],
  { panel }: MantelSize,
  close: TooClose,
): readonly Fix[] {
  const value = cut.down(allowed(close))
  return value < panel
    ? []
    : [{ says: `legs ${show.withUnit(value)} out`, answers: [{ key: questionKey(bay.id, legDepth), value }] }]
}

/** A leg's outer edge stays under the end of the frieze: a narrower one stands further from the opening. */
function narrowerLegs(
  context: PlanContext,
  bay: BreastWall['bay'],
  fire: Firebox,
  { size, legs }: WithLegs,
): readonly Fix[] {
  const value = widestLeg(context, fire, size, { most: legs.width, standsOut: legs.standsOut })
  return value === undefined || value < times(size.panel, 2)
    ? []
    : [
        {
          says: `legs ${context.show.withUnit(value)} wide`,
          answers: [{ key: questionKey(bay.id, legWidth), value }],
        },
      ]
}

const noLegs = (bay: BreastWall['bay']): Fix => ({
  says: 'no legs',
  answers: [{ key: questionKey(bay.id, mantelLegs), value: false }],
})

function offHearth({ show }: PlanContext, { bay }: BreastWall, fire: Firebox, legs: MantelLegs): readonly Message[] {
  const { hearth } = fire
  const found = bothLegs(legs).filter((leg) => inZone(fire, leg))
  const [first] = found
  if (hearth === undefined || first === undefined) return []
  const side = longest(ZERO, ...found.map(({ offHearth: off }) => off.side))
  const front = longest(ZERO, ...found.map(({ offHearth: off }) => off.front))
  const reach = [
    ...(side > 0 ? [`${show.withUnit(side)} to the side`] : []),
    ...(front > 0 ? [`${show.withUnit(front)} to the front`] : []),
  ].join(' and ')
  return [
    raise(
      legInHearthZone,
      {
        about: questionKey(bay.id, legWidth),
        place: bay.name,
        part: `${legId(bay.id, first.side)}/front`,
        fixes: [noLegs(bay)],
      },
      {
        legs: found.map((leg) => `${leg.side} leg`).join(' and the '),
        reach,
        front: show.withUnit(hearth.zone.front),
        side: show.withUnit(hearth.zone.side),
        rule: fire.profiles.map((profile) => profile.hearth.says).join('; '),
      },
    ),
  ]
}

function notBuildable(
  { show, cut }: PlanContext,
  { bay }: BreastWall,
  size: MantelSize,
  legs: MantelLegs,
): readonly Message[] {
  const widest = cut.down(over(size.beamLength, 2))
  const narrowest = times(size.panel, 2)
  const within = (is: Length, least: Length, most: Length): Length => longest(least, shortest(is, most))
  const checks = [
    { field: legDepth, what: 'out', is: legs.standsOut, least: size.panel, most: longest(size.panel, size.beamDepth) },
    { field: legWidth, what: 'wide', is: legs.width, least: shortest(narrowest, widest), most: widest },
  ]
  return checks
    .filter(({ is, least, most }) => is < least || is > most)
    .map(({ field, what, is, least, most }) => {
      const value = within(is, least, most)
      const fix = {
        says: `legs ${show.withUnit(value)} ${what}`,
        answers: [{ key: questionKey(bay.id, field), value }],
      }
      return raise(
        legNotBuildable,
        { about: questionKey(bay.id, field), place: bay.name, fixes: [fix, noLegs(bay)] },
        {
          what,
          is: show.withUnit(is),
          bound: is < least ? `${show.withUnit(least)} is the least` : `${show.withUnit(most)} is the most`,
          todo: `Make them ${show.withUnit(value)} ${what}, or leave them out.`,
        },
      )
    })
}
