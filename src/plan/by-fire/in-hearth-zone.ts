import { type FaceRectangle, rightOf, separationOf } from '../../geometry/face-rectangle.ts'
import { boxDepth, boxKind } from '../../job/chapters/cabinets.ts'
import type { HearthZone } from '../../kinds/fuel/hearth-rules.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'
import type { BesideFire } from './beside-fire.ts'
import { runInHearthZone } from './by-fire-messages.ts'
import type { StandingOut } from './standing-out.ts'

/** Boxes, doors, fillers, gables and plinth that stand on the floor within the zone in front of and beside an opening. */
export function inHearthZone(
  context: PlanContext,
  here: BesideFire,
  on: { readonly run: Run; readonly depth: Length; readonly out: readonly StandingOut[] },
): readonly Message[] {
  const { opening, hearth, profiles } = here.fire
  if (opening === undefined || hearth === undefined) return []
  const { show } = context
  const { zone } = hearth
  const inside = on.out.filter((o) => o.part.placement.z < on.run.z1 && reachesZone(opening, zone, o, here.faceY))
  const [nearest] = inside.toSorted((a, b) => besideOf(opening, a) - besideOf(opening, b))
  if (nearest === undefined) return []
  const by = longest(ZERO, ...inside.map((o) => o.seen.standsOut))
  return [
    raise(
      runInHearthZone,
      {
        about: questionKey(on.run.bay.id, boxDepth),
        place: on.run.bay.name,
        part: nearest.part.id,
        fixes: shallower(context, { run: on.run, depth: less(on.depth, by) }),
      },
      {
        front: show.withUnit(zone.front),
        side: show.withUnit(zone.side),
        by: show.withUnit(by),
        part: nearest.seen.what,
        aside: show.withUnit(besideOf(opening, nearest)),
        rule: profiles.map((profile) => profile.hearth.says).join('; '),
      },
    ),
  ]
}

/** Exactly at the zone's edge is outside it. */
function reachesZone(opening: FaceRectangle, zone: HearthZone, { part, seen }: StandingOut, faceY: Length): boolean {
  const before = less(opening.x, zone.side)
  const after = rightOf(opening) + zone.side
  return seen.at.x < after && rightOf(seen.at) > before && less(part.placement.y, faceY) < zone.front
}

const besideOf = (opening: FaceRectangle, { seen }: StandingOut): Length => separationOf(opening, seen.at).beside

/** The nearest that works for boxes too near a fire: a depth that clears it, where a box can be that shallow, or none. */
export function shallower(context: PlanContext, to: { readonly run: Run; readonly depth: Length }): readonly Fix[] {
  const { cut, show, figures } = context
  const { bay } = to.run
  const value = cut.down(to.depth)
  const none = { says: 'no boxes here', answers: [{ key: questionKey(bay.id, boxKind), value: 'none' }] }
  if (value < figures.length('box.depth-least')) return [none]
  return [
    { says: `boxes ${show.withUnit(value)} deep`, answers: [{ key: questionKey(bay.id, boxDepth), value }] },
    none,
  ]
}
