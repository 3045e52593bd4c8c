import { shelfHeights } from '../../job/chapters/shelves.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import { type Length, less, size, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { type Opening, openingOf } from '../devices/device-opening.ts'
import type { RunnableWall } from '../survey/survey.ts'
import { shelfMeetsDevice } from './shelf-messages.ts'
import type { Shelf } from './shelves.ts'

/** A bay's shelves and the wall they hang on. */
export interface ShelvesOnWall {
  readonly wall: RunnableWall
  readonly shelves: readonly Shelf[]
}

/** Devices behind or beside a shelf. The fix moves that shelf in every aligned bay to the nearest height clear in all of them. */
export function shelvesOverDevices(
  context: PlanContext,
  bays: readonly ShelvesOnWall[],
  aligned: boolean,
): readonly Message[] {
  return bays.flatMap((bay) =>
    bay.shelves.flatMap((shelf) => {
      const together = aligned ? bays.filter((b) => b.shelves.some((s) => sameLine(s, shelf))) : [bay]
      return keptDevices(context, bay.wall)
        .filter((opening) => covers(context, shelf, shelf.z, opening))
        .map((opening) =>
          raise(
            shelfMeetsDevice,
            {
              about: questionKey(bay.wall.bay.id, shelfHeights),
              place: bay.wall.bay.name,
              part: `${shelf.id}/skin`,
              fixes: fixesFor(context, together, shelf),
            },
            {
              device: opening.says,
              shelf: shelf.number,
              up: context.show.withUnit(clearAbove(context, shelf, opening)),
              down: context.show.withUnit(clearBelow(context, opening)),
            },
          ),
        )
    }),
  )
}

const sameLine = (a: Shelf, b: Shelf): boolean => a.number === b.number && a.z === b.z

const keptDevices = (context: PlanContext, wall: RunnableWall): readonly Opening[] =>
  wall.devices.filter((d) => d.fate !== 'move').map((d) => openingOf(context, d))

/** Whether a shelf with its top at z comes nearer to a device than it may. */
function covers({ figures }: PlanContext, shelf: Shelf, z: Length, { device }: Opening): boolean {
  const clear = figures.length('shelf.device-clear')
  const within =
    device.wall === 'back' ? crosses(device, shelf.x, sum(shelf.x, shelf.backLength)) : device.x < shelf.depth
  return within && device.z < sum(z, clear) && sum(device.z, device.height) > less(z, shelf.thickness, clear)
}

const crosses = (device: { readonly x: Length; readonly width: Length }, from: Length, to: Length): boolean =>
  device.x < to && sum(device.x, device.width) > from

const clearAbove = ({ figures, cut }: PlanContext, shelf: Shelf, { device }: Opening): Length =>
  cut.up(sum(device.z, device.height, figures.length('shelf.device-clear'), shelf.thickness))

const clearBelow = ({ figures, cut }: PlanContext, { device }: Opening): Length =>
  cut.down(less(device.z, figures.length('shelf.device-clear')))

function fixesFor(context: PlanContext, bays: readonly ShelvesOnWall[], shelf: Shelf): readonly Fix[] {
  const lined = bays.flatMap((b) =>
    b.shelves.filter((s) => sameLine(s, shelf)).map((s) => ({ wall: b.wall, shelf: s })),
  )
  const heights = lined
    .flatMap((b) =>
      keptDevices(context, b.wall).flatMap((o) => [clearAbove(context, b.shelf, o), clearBelow(context, o)]),
    )
    .filter((z) => lined.every((b) => keptDevices(context, b.wall).every((o) => !covers(context, b.shelf, z, o))))
    .toSorted((a, b) => size(less(a, shelf.z)) - size(less(b, shelf.z)))
  const [nearest] = heights
  if (nearest === undefined || nearest <= 0) return []
  return [
    {
      says: `shelf ${shelf.number} at ${context.show.withUnit(nearest)}`,
      answers: bays.map((b) => ({
        key: questionKey(b.wall.bay.id, shelfHeights),
        value: b.shelves.map((s) => (sameLine(s, shelf) ? nearest : s.z)),
      })),
    },
  ]
}
