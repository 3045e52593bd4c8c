import * as z from 'zod'
import coatings from '../../shared/coatings.json' with { type: 'json' }
import { checkedFile } from './checked-file.ts'
import type { FigureRow } from './figure.ts'

const sourced = { source: z.string().min(3), known: z.enum(['read', 'memory', 'practice']) }

/** Where a family may be put on: in the own shop, in the client's house. */
const allowed = z.enum(['any way', 'by hand', 'never'])
const family = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/),
  inShop: allowed,
  onSite: allowed,
  /** Said when it is not put on where it was planned: why, and what to do. */
  why: z.string(),
  todo: z.string(),
  /** The way out offered first. */
  instead: z.enum(['spray shop', 'own shop']),
  ...sourced,
})
export type CoatingFamily = z.infer<typeof family>

/** One coat kind of a system: sealer, primer or top, with how many coats and how it dries. */
const layer = z.strictObject({
  id: z.enum(['sealer', 'primer', 'top']),
  product: z.string(),
  coats: z.int().min(1).max(5),
  /** Wet film of one coat, µm. */
  wetMicrons: z.number().positive(),
  recoatHoursLeast: z.number().positive(),
  /** null = no upper limit known: only the sheet of the tin can name one. */
  recoatHoursMost: z.number().positive().nullable(),
  sandBetween: z.boolean(),
})
export type CoatingLayer = z.infer<typeof layer>

const system = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/),
  says: z.string(),
  family: z.string(),
  surfaces: z.array(z.enum(['built-in', 'masonry', 'wall'])).min(1),
  methods: z.array(z.enum(['hand', 'hvlp', 'airless'])).min(1),
  /** Whether it may be sprayed in the client's house at all. */
  sprayOnSite: z.boolean(),
  layers: z.array(layer).min(1),
  /** Litres of a container, smallest first, in inch and metric markets. */
  packsInch: z.array(z.number().positive()).min(1),
  packsMetric: z.array(z.number().positive()).min(1),
  ...sourced,
})
export type CoatingRow = z.infer<typeof system>

const table = z
  .strictObject({ about: z.string(), families: z.array(family).min(1), systems: z.array(system).min(1) })
  .superRefine(({ families, systems }, context) => {
    systems.forEach((row, at) => {
      if (!families.some(({ id }) => id === row.family))
        context.addIssue({
          code: 'custom',
          path: ['systems', at, 'family'],
          message: `"${row.family}" is none of the families ${families.map(({ id }) => id).join(', ')}.`,
        })
    })
  })

let read: z.infer<typeof table> | undefined

/** `shared/coatings.json`, checked once a process. Throws with file, row and field. */
export function coatingTable(): z.infer<typeof table> {
  read ??= checkedFile('shared/coatings.json', table, coatings)
  return read
}

const MOST_COATS = 5
const MOST_HOURS = 1000

/** The numbers of every coat as figures, so that a person can put in those of their own tin: `coating.water-enamel.top.wet-film`. */
export const coatingRows = (): readonly FigureRow[] =>
  coatingTable().systems.flatMap((row) =>
    row.layers.flatMap((coat): readonly FigureRow[] => {
      const about = { source: row.source, known: row.known }
      const named = (what: string, says: string) => ({
        ...about,
        id: coatFigure(row.id, coat.id, what),
        says: `${coat.product}, ${says}`,
      })
      return [
        { ...named('coats', 'how many coats'), value: coat.coats, unit: 'coat', least: 1, most: MOST_COATS },
        { ...named('wet-film', 'wet film of one coat'), value: coat.wetMicrons, unit: 'µm' },
        { ...named('recoat-least', 'least hours to the next coat'), value: coat.recoatHoursLeast, unit: 'h' },
        {
          ...named('recoat-most', 'most hours to the next coat, 0 where no sheet names one'),
          value: coat.recoatHoursMost ?? 0,
          unit: 'h',
          least: 0,
          most: MOST_HOURS,
        },
      ]
    }),
  )

/** The id of one number of one coat. */
export const coatFigure = (system: string, layer: CoatingLayer['id'], what: string): string =>
  `coating.${system}.${layer}.${what}`
