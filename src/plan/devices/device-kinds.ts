import type { DeviceRow } from '../../job/chapters/wall-devices.ts'

export type Trade = 'electrician' | 'gas fitter' | 'heating fitter'

interface DeviceKind {
  readonly says: string
  /** Who moves or extends it. */
  readonly trade: Trade
  /** Kept behind a panel it is extended to the new face; `opening` = it needs a free opening instead. */
  readonly kept: 'extended' | 'opening' | 'passes through'
}

/** What each kind of device asks of a panel in front of it. */
export const DEVICES: Readonly<Record<DeviceRow['what'], DeviceKind>> = {
  outlet: { says: 'outlet', trade: 'electrician', kept: 'extended' },
  switch: { says: 'switch', trade: 'electrician', kept: 'extended' },
  data: { says: 'data point', trade: 'electrician', kept: 'extended' },
  grille: { says: 'grille', trade: 'heating fitter', kept: 'opening' },
  'gas-tap': { says: 'gas tap', trade: 'gas fitter', kept: 'opening' },
  pipe: { says: 'pipe', trade: 'heating fitter', kept: 'passes through' },
}
