import * as z from 'zod'
import type { Length } from '../../units/length.ts'
import { cell, choiceField, countColumn, lengthColumn, tableField, wordColumn } from '../entries.ts'
import { boxKind } from './cabinets.ts'
import { bays } from './wall.ts'

const MOST_BOXES = 48
const PARTITIONS = ['divider', 'fixed-shelf'] as const

/** One partition: the box it is in, upright or level, and where its middle is; no place = spread evenly with the others of its kind. */
export interface PartitionRow {
  readonly box: number
  readonly what: (typeof PARTITIONS)[number]
  readonly at?: Length | undefined
}

export const partitions = tableField<PartitionRow>(
  {
    chapter: 'cabinets',
    section: 'choices',
    each: ['alcove', 'flat'],
    id: 'partitions',
    missing: 'suggest',
    short: 'dividers and shelves',
    asks: (p) => `Which dividers and fixed shelves stand in the boxes of the ${p?.name ?? 'wall'}?`,
    why: 'They halve the span of the loose shelves and stiffen a wide or tall box.',
    help: 'One row each: number of the box from the left, divider or fixed shelf, where its middle is (a divider from the box’s left edge, a shelf from its underside); a dash spreads them evenly. "none" when there are none.',
    when: (look) => (look(boxKind) ?? 'none') !== 'none',
  },
  z.strictObject({
    box: cell.count(1, MOST_BOXES),
    what: cell.word(PARTITIONS),
    at: cell.length.optional(),
  }) as unknown as z.ZodType<PartitionRow>,
  [
    countColumn('box', 'box', 'needed', { least: 1, most: MOST_BOXES, like: '1' }),
    wordColumn('what', 'divider or fixed shelf', PARTITIONS),
    lengthColumn('at', 'middle at', 'or a dash', { inch: '15', metric: '400' }),
  ],
  { least: 0, most: 48 },
)

export const boxInside = choiceField(
  {
    chapter: 'cabinets',
    section: 'choices',
    each: 'job',
    id: 'boxInside',
    short: 'box finish',
    asks: () => 'Are the boxes painted, or made of a prefinished panel?',
    why: 'A prefinished panel is not painted inside; its front edges get a band.',
    when: (look) => look(bays)?.some((bay) => bay.kind !== 'breast') ?? false,
  },
  { painted: 'painted, inside too', prefinished: 'prefinished panel with edge band' },
)

export const BOX_INSIDE_FIELDS = [partitions, boxInside] as const
