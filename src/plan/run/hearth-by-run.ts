import { boxDepth } from '../../job/chapters/cabinets.ts'
import { fuel, opening } from '../../job/chapters/firebox.ts'
import { breastSize } from '../../job/chapters/wall.ts'
import { FUELS } from '../../kinds/fuel/list.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { less, longest, sum, ZERO } from '../../units/length.ts'
import { leafReach } from '../boxes/box-depth.ts'
import type { PlanContext } from '../context.ts'
import { hearthZone } from '../mantel/hearth-zone.ts'
import { runInHearthZone } from './level-messages.ts'
import type { StandingRun } from './levels.ts'

/** Boxes, doors and plinth that stand in front of a breast with a fire, within the zone beside its opening. */
export const hearthZoneMessages = (context: PlanContext, here: StandingRun): readonly Message[] =>
  (['left', 'right'] as const).flatMap((side) => {
    const breast = context.bays[here.run.bay.index + (side === 'left' ? -1 : 1)]
    return breast?.kind === 'breast' ? besideBreast(context, here, side, breast) : []
  })

function besideBreast(
  context: PlanContext,
  here: StandingRun,
  side: 'left' | 'right',
  breast: NamedBay,
): readonly Message[] {
  const { settle, figures, show } = context
  const { run } = here
  const [x = ZERO, , width = ZERO, height = ZERO] = settle.asked(opening, breast) ?? []
  const [breastWidth, projection] = settle.asked(breastSize, breast) ?? []
  const burning = settle.asked(fuel, breast)
  if (burning === undefined || !FUELS[burning].burns || width <= 0) return []
  if (breastWidth === undefined || projection === undefined) return []
  const by = less(sum(here.backGap, here.depth, leafReach(context)), projection)
  const aside =
    side === 'right'
      ? sum(less(run.wall.width, run.startX, run.width), x)
      : sum(run.startX, less(breastWidth, x, width))
  const zone = hearthZone({ width, height, figures })
  if (by <= 0 || longest(aside, ZERO) >= zone.side) return []
  return [
    raise(
      runInHearthZone,
      { about: questionKey(run.bay.id, boxDepth), place: run.bay.name },
      { front: show.withUnit(zone.front), side: show.withUnit(zone.side), by: show.withUnit(by) },
    ),
  ]
}
