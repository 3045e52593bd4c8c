import type { CodeProfile } from '../../figures/code-profiles.ts'
import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import { hearth } from '../../job/chapters/firebox.ts'
import type { FuelKind } from '../../kinds/fuel/contract.ts'
import type { HearthZone } from '../../kinds/fuel/hearth-rules.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hearthNotMeasured, hearthTooSmall } from './firebox-messages.ts'
import { hearthZone } from './hearth-zone.ts'

/** The hearth of a fire: the zone the code keeps free of wood, and how far its stone reaches. */
export interface Hearthstone {
  readonly zone: HearthZone
  readonly front: Length
  readonly left: Length
  readonly right: Length
  readonly waitsFor: readonly QuestionKey[]
  readonly messages: readonly Message[]
}

interface On {
  readonly kind: FuelKind
  readonly opening: FaceRectangle | undefined
  readonly profiles: readonly CodeProfile[]
}

/** Reads the hearth where what burns needs one; until it is measured it reaches exactly as far as the code asks. */
export function hearthstoneOf(context: PlanContext, bay: NamedBay, on: On): Hearthstone | undefined {
  const { flame } = on.kind
  if (flame === 'none' || on.opening === undefined) return undefined
  const zone = hearthZone({
    openingWidth: on.opening.width,
    openingHeight: on.opening.height,
    flame,
    profiles: on.profiles,
    figures: context.figures,
  })
  const reach = context.settle.measured(hearth, bay, () => ({
    value: [zone.front, zone.side, zone.side],
    because: 'what the code asks of this opening, until it is measured',
    from: hearthZone,
  }))
  const [front = ZERO, left = ZERO, right = ZERO] = reach.value
  const stone = { zone, front, left, right, waitsFor: reach.waitsFor }
  return { ...stone, messages: hearthMessages(context, bay, { ...stone, profiles: on.profiles }) }
}

type Stone = Omit<Hearthstone, 'messages'> & Pick<On, 'profiles'>

function hearthMessages({ show }: PlanContext, bay: NamedBay, stone: Stone): readonly Message[] {
  const { zone, waitsFor, profiles } = stone
  const where = { about: questionKey(bay.id, hearth), place: bay.name }
  const rule = profiles.map((profile) => profile.hearth.says).join('; ')
  const asked = { front: show.withUnit(zone.front), side: show.withUnit(zone.side), rule }
  if (waitsFor.length > 0) return [raise(hearthNotMeasured, where, asked)]
  const short = shortOf(show.withUnit, stone)
  return short === '' ? [] : [raise(hearthTooSmall, where, { ...asked, short })]
}

/** Where the hearth ends inside the zone, and what is missing there; empty when nothing is. */
const shortOf = (written: (l: Length) => string, { zone, front, left, right }: Stone): string =>
  [
    { says: 'in front', is: front, least: zone.front },
    { says: 'at the left', is: left, least: zone.side },
    { says: 'at the right', is: right, least: zone.side },
  ]
    .filter(({ is, least }) => is < least)
    .map(({ says, is, least }) => `${written(is)} ${says}, ${written(less(least, is))} short`)
    .join('; ')
