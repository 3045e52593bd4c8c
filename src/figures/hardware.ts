import * as z from 'zod'
import hardwareFile from '../../shared/hardware.json' with { type: 'json' }
import type { Length } from '../units/length.ts'
import type { UnitSystem } from '../units/show-length.ts'
import { readFigureLength } from './figure-length.ts'

/** What every row says: the words of its option, what it is bought as, and the figure that is its price. */
const bought = {
  id: z.string().regex(/^[a-z-]+$/),
  says: z.string().min(3),
  item: z.string().min(3),
  price: z.string().startsWith('price.'),
}
const lengths = z.array(z.string()).min(1)
const hinge = z.strictObject(bought)
const arm = z.strictObject({ id: bought.id, says: bought.says })
const slide = z.strictObject({
  ...bought,
  /** What is done to the drawer box for it, one sentence each. */
  joinery: z.array(z.string()),
  lengths: z.strictObject({ known: z.literal('practice'), source: z.string().min(3), inch: lengths, metric: lengths }),
})
const handle = z.strictObject({
  ...bought,
  /** Id of its line among the fixings. */
  line: z.string(),
  holes: z.union([z.literal(0), z.literal(1), z.literal(2)]),
})
const counterFixing = z.strictObject({
  id: bought.id,
  says: bought.says,
  /** Screws at each place. */
  screwsEach: z.int().min(1),
  /** What is bought besides the screws, one at each place. */
  bracket: z.strictObject({ item: bought.item, price: bought.price }).optional(),
})
const file = z.strictObject({
  about: z.string(),
  rows: z.array(z.looseObject({ id: z.string() })),
  hinges: z.array(hinge).min(1),
  hingeArms: z.array(arm).min(1),
  slides: z.array(slide).min(1),
  handles: z.array(handle).min(1),
  shelfPins: z.array(hinge).min(1),
  counterFixings: z.array(counterFixing).min(1),
})

export type HardwareItem = z.infer<typeof hinge>
export type HingeArm = z.infer<typeof arm>
export type Slide = z.infer<typeof slide>
export type CounterFixing = z.infer<typeof counterFixing>
export type Handle = z.infer<typeof handle>

/** The file, checked when it is read: the questions list its rows. */
const read = file.parse(hardwareFile)

/** Kinds of small hardware by id, in the order they are offered. Add one = one row of shared/hardware.json. */
export const HINGES = byId(read.hinges)
export const SLIDES = byId(read.slides)
export const HANDLES = byId(read.handles)
export const SHELF_PINS = byId(read.shelfPins)
export const COUNTER_FIXINGS = byId(read.counterFixings)
/** Arms of a hinge by the overlay they are made for; the figures `hinge-arm.<id>` say from where to where. */
export const HINGE_ARMS: readonly HingeArm[] = read.hingeArms

function byId<T extends { readonly id: string }>(rows: readonly T[]): Readonly<Record<string, T>> {
  return Object.fromEntries(rows.map((row) => [row.id, row]))
}

/** The row with this id; the first of its list where there is none, which a checked answer never needs. */
export function chosenRow<T>(rows: Readonly<Record<string, T>>, id: string): T {
  const row = rows[id] ?? Object.values(rows)[0]
  if (row === undefined) throw new Error(`No row ${id} in shared/hardware.json.`)
  return row
}

/** Lengths a slide is sold in, shortest first. */
export const slideLengths = (slide: Slide, units: UnitSystem): readonly Length[] =>
  slide.lengths[units].map(readFigureLength).toSorted((a, b) => a - b)
