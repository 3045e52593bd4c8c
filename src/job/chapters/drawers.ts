import * as z from 'zod'
import type { Length } from '../../units/length.ts'
import { cell, lengthColumn, tableField, wordColumn } from '../entries.ts'
import { boxKind } from './cabinets.ts'
import { doors } from './hardware.ts'

/** As many boxes as a run may have. */
const MOST_BOXES = 24
const BOX_NUMBERS = Array.from({ length: MOST_BOXES }, (_, i) => String(i + 1)) as [string, ...string[]]

/** One drawer: the box it is in, and how high its front is; no height = an equal share of what the others leave. */
export interface DrawerRow {
  readonly box: string
  readonly height?: Length | undefined
}

export const drawers = tableField<DrawerRow>(
  {
    chapter: 'hardware',
    section: 'choices',
    each: ['alcove', 'flat'],
    id: 'drawers',
    short: 'drawers',
    asks: (p) => `Which boxes in the ${p?.name ?? 'wall'} get drawers, from the top one down?`,
    why: 'A box with drawers has no loose shelves; each front gets its own height.',
    help: 'One row a drawer: number of the box from the left, height of its front; a dash shares the height equally. Heights for all drawers of a box that leave room: doors take the rest. "none" when there are none.',
    when: (look) => (look(boxKind) ?? 'none') !== 'none' && look(doors) !== 'no',
  },
  z.strictObject({
    box: cell.word(BOX_NUMBERS),
    height: cell.length.optional(),
  }) as unknown as z.ZodType<DrawerRow>,
  [
    wordColumn('box', 'box', BOX_NUMBERS),
    lengthColumn('height', 'front height', 'or a dash', { inch: '6', metric: '150' }),
  ],
  { least: 0, most: 48 },
)
