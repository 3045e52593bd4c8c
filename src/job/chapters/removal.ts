import * as z from 'zod'
import { OLD_FIXINGS, type OldFixingId, REMOVALS, type RemovalId } from '../../kinds/removal/list.ts'
import type { Look } from '../../things/field.ts'
import type { Length } from '../../units/length.ts'
import { cell, countColumn, lengthColumn, numberField, tableField, textField, wordColumn } from '../entries.ts'
import { houseYear, leadTested } from './job.ts'

const at = { chapter: 'wall', section: 'facts' } as const

type Words<K extends string> = readonly [K, ...K[]]
const WHATS = Object.keys(REMOVALS) as unknown as Words<RemovalId>
const FIXINGS = Object.keys(OLD_FIXINGS) as unknown as Words<OldFixingId>
export const OLD_COATS = ['bare', 'painted', 'papered'] as const
export const OLD_HOLDS = ['nothing', 'wire', 'gas', 'pipe'] as const

const YEARS = { least: 1500, most: 2100, like: '1930' } as const
const HOW_MANY = { least: 1, most: 50, like: '1' } as const

/** One old thing that comes off: its outside as seen from the room, how it is held, what is on it and in it. */
export interface RemovalRow {
  readonly what: RemovalId
  readonly length: Length
  readonly height: Length
  readonly depth: Length
  readonly fixing: OldFixingId
  readonly coat: (typeof OLD_COATS)[number]
  readonly holds: (typeof OLD_HOLDS)[number]
  readonly year?: number | undefined
  readonly count?: number | undefined
}

export const removals = tableField<RemovalRow>(
  {
    ...at,
    each: ['alcove', 'breast', 'flat'],
    id: 'removals',
    missing: 'assume',
    short: 'comes off',
    asks: (p) => `What old work comes off the ${p?.name ?? 'wall'} first?`,
    why: 'Hours, waste, making good, and what old paint and boards may hold.',
    help: 'One row each: what, long, high (a floor: front to back), deep, how fixed, what is on it, what is in it, year, how many; a dash for a year that is not known. Baseboard and crown that are cut for the boxes are counted by themselves. "none" when nothing comes off; left out: nothing.',
  },
  z.strictObject({
    what: cell.word(WHATS),
    length: cell.length,
    height: cell.length,
    depth: cell.length,
    fixing: cell.word(FIXINGS),
    coat: cell.word(OLD_COATS),
    holds: cell.word(OLD_HOLDS),
    year: cell.count(YEARS.least, YEARS.most).optional(),
    count: cell.count(HOW_MANY.least, HOW_MANY.most).optional(),
  }) as unknown as z.ZodType<RemovalRow>,
  [
    wordColumn('what', 'what', WHATS),
    lengthColumn('length', 'long', 'needed', { inch: '60', metric: '1500' }),
    lengthColumn('height', 'high', 'needed', { inch: '8', metric: '200' }),
    lengthColumn('depth', 'deep', 'needed', { inch: '7', metric: '180' }),
    wordColumn('fixing', 'fixed', FIXINGS),
    wordColumn('coat', 'on it', OLD_COATS),
    wordColumn('holds', 'in it', OLD_HOLDS),
    countColumn('year', 'year', 'or a dash', YEARS),
    countColumn('count', 'how many', 'or a dash', HOW_MANY),
  ],
  { least: 0, most: 24 },
)

/** Paint of a house of this age may hold lead, and nobody has tested it. */
const oldPaint = (look: Look) =>
  houseYear.when(look, undefined) && leadTested.when(look, undefined) && look(leadTested) !== true

export const leadEarlier = numberField(
  {
    ...at,
    each: 'job',
    id: 'leadEarlier',
    short: 'old paint, 30 days',
    asks: () => 'How much old paint did other work disturb in this room within 30 days?',
    why: 'Jobs in one room within 30 days count together under the lead rule.',
    help: 'Square feet, by anybody. 0 when nothing was disturbed.',
    when: oldPaint,
  },
  'sq ft',
  0,
  10_000,
)
export const leadFirm = textField(
  {
    ...at,
    section: 'choices',
    each: 'job',
    id: 'leadFirm',
    short: 'lead-safe firm',
    asks: () => 'Which certified firm and renovator does the lead-safe work?',
    why: 'Over the limit of minor work old paint is disturbed by a certified renovator only.',
    help: 'Names and certificate numbers, yours if you hold them. Left empty: none.',
    when: oldPaint,
  },
  120,
  false,
)

export const REMOVAL_FIELDS = [removals, leadEarlier, leadFirm] as const
