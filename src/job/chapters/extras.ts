import * as z from 'zod'
import { type Length, millimetres } from '../../units/length.ts'
import { cell, countColumn, lengthColumn, tableField, wordColumn } from '../entries.ts'

/** Pieces that a person adds by hand: nothing of the wall or the boxes says their size. */
export const EXTRA_KINDS = ['show-back', 'light-strip', 'cornice', 'cover-strip', 'shelf', 'panel', 'rail'] as const
export const EXTRA_COATS = ['coated', 'bare'] as const

/** One piece of the person's own: finished size as it is cut. */
export interface ExtraRow {
  readonly what: (typeof EXTRA_KINDS)[number]
  readonly length: Length
  readonly width: Length
  readonly thickness: Length
  readonly coat: (typeof EXTRA_COATS)[number]
  readonly count?: number | undefined
}

const HOW_MANY = { least: 1, most: 50, like: '2' } as const
const LONGEST = millimetres(6000)
const THINNEST = millimetres(3)
const THICKEST = millimetres(80)

const between = (least: Length, most: Length): z.ZodType<Length> =>
  z.int().min(least).max(most) as unknown as z.ZodType<Length>

export const extraParts = tableField<ExtraRow>(
  {
    chapter: 'cabinets',
    section: 'choices',
    each: ['alcove', 'breast', 'flat'],
    id: 'extraParts',
    short: 'extra pieces',
    asks: (p) => `Which pieces of your own are cut for the ${p?.name ?? 'wall'} as well?`,
    why: 'They come on the cut list, the sheets, the paint and the price with the rest.',
    help: 'One row each: what, long, wide, thick (finished sizes, as you want them cut), coated or bare, how many; a dash for one. They are cut from the MDF of that thickness. Where they go and how they are fixed is yours. "none" when there are none.',
  },
  z.strictObject({
    what: cell.word(EXTRA_KINDS),
    length: between(THINNEST, LONGEST),
    width: between(THINNEST, LONGEST),
    thickness: between(THINNEST, THICKEST),
    coat: cell.word(EXTRA_COATS),
    count: cell.count(HOW_MANY.least, HOW_MANY.most).optional(),
  }) as unknown as z.ZodType<ExtraRow>,
  [
    wordColumn('what', 'what', EXTRA_KINDS),
    lengthColumn('length', 'long', 'needed', { inch: '36', metric: '900' }),
    lengthColumn('width', 'wide', 'needed', { inch: '2', metric: '50' }),
    lengthColumn('thickness', 'thick', 'needed', { inch: '3/4', metric: '19' }),
    wordColumn('coat', 'coated or bare', EXTRA_COATS),
    countColumn('count', 'how many', 'or a dash', HOW_MANY),
  ],
  { least: 0, most: 24 },
)

export const EXTRA_FIELDS = [extraParts] as const
