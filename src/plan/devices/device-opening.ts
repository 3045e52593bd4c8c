import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import { type DeviceRow, devices as devicesField } from '../../job/chapters/wall-devices.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { CutOut, PartId } from '../../things/part.ts'
import { type Length, less, size, sum, times } from '../../units/length.ts'
import type { Box } from '../boxes/boxes.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall } from '../survey/survey.ts'
import { DEVICES, type Trade } from './device-kinds.ts'
import { deviceBuried, deviceCovered } from './device-messages.ts'

export interface TradeCall {
  readonly trade: Trade
  readonly says: string
  /** Id of the bay. */
  readonly bay: string
}

/** A device with the space kept round it, on one wall: x along that wall. */
export interface Opening {
  readonly device: DeviceRow
  readonly says: string
  readonly at: FaceRectangle
}

/** What one device leads to. */
export interface DeviceOutcome {
  readonly cutOuts: readonly { readonly part: PartId; readonly cutOut: CutOut }[]
  readonly trades: readonly TradeCall[]
  readonly messages: readonly Message[]
}
export const NO_OUTCOME: DeviceOutcome = { cutOuts: [], trades: [], messages: [] }

/** The device with its clearance on four sides, and its words. */
export function openingOf({ figures, show }: PlanContext, device: DeviceRow): Opening {
  const clear = figures.length('device.clear')
  const across = times(clear, 2)
  return {
    device,
    says: `${DEVICES[device.what].says} at ${show.withUnit(device.x)}`,
    at: {
      x: less(device.x, clear),
      z: less(device.z, clear),
      width: sum(device.width, across),
      height: sum(device.height, across),
    },
  }
}

/** Reasons a device may not stay behind the boxes at all. */
export function coveredOrBuried(
  { show }: PlanContext,
  wall: RunnableWall,
  box: Box,
  { device, says }: Opening,
): readonly Message[] {
  const key = questionKey(wall.bay.id, devicesField)
  const moved = wall.devices.map((d): DeviceRow => (d === device ? { ...d, fate: 'move' } : d))
  const fixes = [{ says: 'it is to be moved, by a licensed trade', answers: [{ key, value: moved }] }]
  const where = { about: key, place: wall.bay.name, fixes }
  const kind = DEVICES[device.what]
  if (device.z < box.run.z0)
    return [raise(deviceBuried, where, { device: says, low: show.withUnit(device.z), foot: show.withUnit(box.run.z0) })]
  return kind.kept === 'opening' && device.fate === 'keep'
    ? [raise(deviceCovered, where, { device: says, trade: kind.trade })]
    : []
}

/** An opening as a cut-out from a part's left and lower edge; near to the cut step, it has its clearance round it. */
export const cutOutFrom = ({ cut }: PlanContext, { device, at }: Opening, left: Length, foot: Length): CutOut => ({
  what: DEVICES[device.what].says,
  x: cut.near(less(at.x, left)),
  z: cut.near(less(at.z, foot)),
  width: at.width,
  height: at.height,
})

/** A kept electrical point is brought to the new face; the wood round it makes the wall combustible, so no set-back is left. */
export function callsFor(
  { show }: PlanContext,
  wall: RunnableWall,
  { device, says }: Opening,
  by: Length,
): readonly TradeCall[] {
  const kind = DEVICES[device.what]
  if (device.fate !== 'keep' || kind.kept !== 'extended') return []
  return [
    {
      trade: kind.trade,
      says: `${wall.bay.name}, ${says}: extend the box to the new face by ${show.withUnit(size(by))} (licensed electrician); power off and proved dead before cutting`,
      bay: wall.bay.id,
    },
  ]
}
