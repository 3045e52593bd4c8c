import * as z from 'zod'
import type { Length } from '../../units/length.ts'
import { cell, lengthColumn, tableField, wordColumn } from '../entries.ts'

export const DEVICE_KINDS = ['outlet', 'switch', 'data', 'grille', 'gas-tap', 'pipe'] as const
export const DEVICE_WALLS = ['back', 'left', 'right'] as const
export const DEVICE_FATES = ['keep', 'cut-through', 'move'] as const
/** A device: its lower left corner (x from the bay's left end, or from the back wall on a return), its size and what becomes of it. */
export interface DeviceRow {
  readonly what: (typeof DEVICE_KINDS)[number]
  readonly wall: (typeof DEVICE_WALLS)[number]
  readonly x: Length
  readonly z: Length
  readonly width: Length
  readonly height: Length
  readonly fate: (typeof DEVICE_FATES)[number]
}
export const devices = tableField<DeviceRow>(
  {
    chapter: 'wall',
    section: 'facts',
    each: ['alcove', 'flat'],
    id: 'devices',
    missing: 'hold',
    short: 'outlets and grilles',
    asks: (p) => `Which outlets, switches, grilles or pipes are in the ${p?.name ?? 'wall'}?`,
    why: 'Each gets a cut-out, or moves; none may vanish behind a box.',
    help: 'One row each: what, which wall, from the left, above the floor, wide, high, what becomes of it. "none" when there are none.',
  },
  z.strictObject({
    what: cell.word(DEVICE_KINDS),
    wall: cell.word(DEVICE_WALLS),
    x: cell.length,
    z: cell.length,
    width: cell.length,
    height: cell.length,
    fate: cell.word(DEVICE_FATES),
  }) as unknown as z.ZodType<DeviceRow>,
  [
    wordColumn('what', 'what', DEVICE_KINDS),
    wordColumn('wall', 'wall', DEVICE_WALLS),
    lengthColumn('x', 'from the left', 'needed', { inch: '9', metric: '230' }),
    lengthColumn('z', 'above floor', 'needed', { inch: '12', metric: '300' }),
    lengthColumn('width', 'wide', 'needed', { inch: '2 3/4', metric: '70' }),
    lengthColumn('height', 'high', 'needed', { inch: '4 1/2', metric: '115' }),
    wordColumn('fate', 'becomes', DEVICE_FATES),
  ],
  { least: 0, most: 24 },
)

/** A device on the face of a breast: x from the breast's left edge. */
export type BreastDeviceRow = Omit<DeviceRow, 'wall'>
export const breastDevices = tableField<BreastDeviceRow>(
  {
    chapter: 'firebox',
    section: 'facts',
    each: ['breast'],
    id: 'breastDevices',
    missing: 'assume',
    short: 'outlets on breast',
    asks: (p) => `Which outlets, switches, grilles or gas taps are on the face of the ${p?.name ?? 'breast'}?`,
    why: 'None may vanish behind a mantel, a leg or a screen.',
    help: 'One row each: what, from the left, above the floor, wide, high, what becomes of it. "cut-through" behind a screen means: it stays, and the screen comes off its bracket to reach it. "none" when there are none; left out: none.',
  },
  z.strictObject({
    what: cell.word(DEVICE_KINDS),
    x: cell.length,
    z: cell.length,
    width: cell.length,
    height: cell.length,
    fate: cell.word(DEVICE_FATES),
  }) as unknown as z.ZodType<BreastDeviceRow>,
  [
    wordColumn('what', 'what', DEVICE_KINDS),
    lengthColumn('x', 'from the left', 'needed', { inch: '9', metric: '230' }),
    lengthColumn('z', 'above floor', 'needed', { inch: '12', metric: '300' }),
    lengthColumn('width', 'wide', 'needed', { inch: '2 3/4', metric: '70' }),
    lengthColumn('height', 'high', 'needed', { inch: '4 1/2', metric: '115' }),
    wordColumn('fate', 'becomes', DEVICE_FATES),
  ],
  { least: 0, most: 12 },
)
