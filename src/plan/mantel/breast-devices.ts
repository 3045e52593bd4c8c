import { type FaceRectangle, rightOf, separationOf, topOf } from '../../geometry/face-rectangle.ts'
import { type BreastDeviceRow, breastDevices } from '../../job/chapters/wall-devices.ts'
import { questionKey } from '../../things/field.ts'
import { type Fix, type Message, messageKind, raise } from '../../things/message.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { DEVICES } from '../devices/device-kinds.ts'
import type { TradeCall } from '../devices/device-opening.ts'
import type { BreastWall } from '../survey/survey.ts'
import type { Firebox } from './firebox.ts'
import { legPieces } from './mantel-legs.ts'
import { beamPieces, type MantelSize } from './mantel-size.ts'

export const breastDeviceCovered = messageKind<{ devices: string; move: string }>({
  code: 'S8',
  weight: 'stop',
  source: 'NEC 314.29 (the wiring in a box stays reachable); local code and licensed practice govern',
  says: (v) => ({
    short: `Behind what is built on the breast: ${v.devices}.`,
    why: 'The wiring in a box stays in reach without taking any part of the building off.',
    todo: `Smallest move: ${v.move}; by a licensed electrician, power off and proved dead first. Or move what covers it.`,
  }),
})

export const breastOpeningCovered = messageKind<{ devices: string; trade: string }>({
  code: 'S7',
  weight: 'stop',
  source: 'the appliance’s manual; local code and licensed practice govern',
  says: (v) => ({
    short: `Covered on the breast: ${v.devices}.`,
    why: 'Air inlets, taps and grilles keep their free opening and stay in reach; a fire without its air is dangerous.',
    todo: `Have a ${v.trade} move it, or move what covers it; the free opening stands in the appliance’s manual.`,
  }),
})

interface On {
  readonly fire: Firebox
  readonly mantel: MantelSize | undefined
  readonly screen: FaceRectangle | undefined
}

/** What the devices on a breast's face lead to: calls to a trade for those that move, stops for those that are covered. */
export function breastDevicesOf(
  context: PlanContext,
  wall: BreastWall,
  on: On,
): { readonly trades: readonly TradeCall[]; readonly messages: readonly Message[] } {
  const rows = context.settle.measured(breastDevices, wall.bay, () => ({
    value: [],
    because: 'none, until you have looked',
  })).value
  const covered = rows.filter((row) => row.fate !== 'move' && coversOf(context, on, row).length > 0)
  const needsAir = covered.filter((row) => DEVICES[row.what].kept !== 'extended')
  const electric = covered.filter((row) => DEVICES[row.what].kept === 'extended')
  return {
    trades: rows.filter(({ fate }) => fate === 'move').map((row) => moveCall(context, wall, row)),
    messages: [
      ...openingsCovered(context, wall, rows, needsAir),
      ...pointsCovered(context, wall, on, { rows, electric }),
    ],
  }
}

/** What stands on the face: the mantel's beam and top, its legs, the screen. */
interface Cover {
  readonly what: string
  readonly at: FaceRectangle
}

const coversOn = ({ mantel, screen }: On): readonly Cover[] => [
  ...(mantel === undefined ? [] : beamPieces(mantel)),
  ...(mantel?.legs === undefined ? [] : legPieces(mantel.legs)),
  ...(screen === undefined ? [] : [{ what: SCREEN, at: screen }]),
]
const SCREEN = 'screen'

/** What comes nearer to a device than it may; a point that is left open stays behind a screen, which comes off its bracket. */
const coversOf = (context: PlanContext, on: On, row: BreastDeviceRow): readonly Cover[] =>
  coversOn(on).filter(
    ({ what, at }) =>
      touches(context, row, at) &&
      !(what === SCREEN && row.fate === 'cut-through' && DEVICES[row.what].kept === 'extended'),
  )

function touches({ figures }: PlanContext, device: FaceRectangle, piece: FaceRectangle): boolean {
  const clear = figures.length('shelf.device-clear')
  const { beside, above } = separationOf(device, piece)
  return beside < clear && above < clear
}

function moveCall({ show }: PlanContext, { bay }: BreastWall, row: BreastDeviceRow): TradeCall {
  const kind = DEVICES[row.what]
  const where = `${bay.name}, ${show.withUnit(row.x)} from its left edge, ${show.withUnit(row.z)} above the highest floor point`
  return {
    trade: kind.trade,
    says: `move the ${kind.says} (${where}) clear of mantel and screen; make safe and cap off before strip-out`,
    bay: bay.id,
  }
}

const moved = (wall: BreastWall, rows: readonly BreastDeviceRow[], of: readonly BreastDeviceRow[]): readonly Fix[] => [
  {
    says: 'to be moved, by a licensed trade',
    answers: [
      {
        key: questionKey(wall.bay.id, breastDevices),
        value: rows.map((row): BreastDeviceRow => (of.includes(row) ? { ...row, fate: 'move' } : row)),
      },
    ],
  },
]

function openingsCovered(
  context: PlanContext,
  wall: BreastWall,
  rows: readonly BreastDeviceRow[],
  covered: readonly BreastDeviceRow[],
): readonly Message[] {
  const [first] = covered
  if (first === undefined) return []
  const where = { about: questionKey(wall.bay.id, breastDevices), place: wall.bay.name }
  const values = {
    devices: covered.map((row) => named(context, row)).join(', '),
    trade: [...new Set(covered.map((row) => DEVICES[row.what].trade))].join(' or '),
  }
  return [raise(breastOpeningCovered, { ...where, fixes: moved(wall, rows, covered) }, values)]
}

const named = ({ show }: PlanContext, row: BreastDeviceRow): string =>
  `${DEVICES[row.what].says} at ${show.length(row.x)}, ${show.withUnit(row.z)} up`

function pointsCovered(
  context: PlanContext,
  wall: BreastWall,
  on: On,
  { rows, electric }: { readonly rows: readonly BreastDeviceRow[]; readonly electric: readonly BreastDeviceRow[] },
): readonly Message[] {
  if (electric.length === 0) return []
  const where = { about: questionKey(wall.bay.id, breastDevices), place: wall.bay.name }
  const values = {
    devices: electric
      .map((row) => `${named(context, row)} (${coversOf(context, on, row)[0]?.what ?? 'covered'})`)
      .join(', '),
    move: electric
      .map((row) => `${DEVICES[row.what].says} ${smallestMove(context, wall, on, row) ?? 'off the breast'}`)
      .join(', '),
  }
  return [raise(breastDeviceCovered, { ...where, fixes: moved(wall, rows, electric) }, values)]
}

interface Move {
  readonly says: 'right' | 'left' | 'up' | 'down'
  readonly by: Length
}

/** The shortest way, straight to one side, that brings a device clear of everything on the face and of the opening. */
function smallestMove(context: PlanContext, wall: BreastWall, on: On, row: BreastDeviceRow): string | undefined {
  const { figures, cut, show } = context
  const clear = figures.length('shelf.device-clear')
  const keepOff = [...coversOn(on).map(({ at }) => at), ...(on.fire.opening === undefined ? [] : [on.fire.opening])]
  const ways = keepOff.flatMap((at): readonly Move[] => [
    { says: 'right', by: cut.up(less(sum(rightOf(at), clear), row.x)) },
    { says: 'left', by: cut.up(less(rightOf(row), less(at.x, clear))) },
    { says: 'up', by: cut.up(less(sum(topOf(at), clear), row.z)) },
    { says: 'down', by: cut.up(less(topOf(row), less(at.z, clear))) },
  ])
  const [best] = ways
    .filter(({ by }) => by > 0)
    .filter((move) => {
      const at = shifted(row, move)
      const inside = at.x >= 0 && at.z >= 0 && rightOf(at) <= wall.width && topOf(at) <= wall.lowestCeiling
      return inside && keepOff.every((piece) => !touches(context, at, piece))
    })
    .toSorted((a, b) => a.by - b.by)
  return best === undefined ? undefined : `${best.says} by ${show.withUnit(best.by)}`
}

const shifted = ({ x, z, width, height }: FaceRectangle, { says, by }: Move): FaceRectangle => ({
  x: says === 'right' ? sum(x, by) : says === 'left' ? less(x, by) : x,
  z: says === 'up' ? sum(z, by) : says === 'down' ? less(z, by) : z,
  width,
  height,
})
