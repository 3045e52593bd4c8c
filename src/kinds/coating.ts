import * as z from 'zod'
import coatings from '../../shared/coatings.json' with { type: 'json' }

/** One coat kind of a system: sealer, primer or top, with how many coats and how it dries. */
const layer = z.strictObject({
  id: z.enum(['sealer', 'primer', 'top']),
  product: z.string(),
  coats: z.int().min(1).max(5),
  /** Wet film of one coat, µm. */
  wetMicrons: z.number().positive(),
  recoatHoursLeast: z.number().positive(),
  /** null = no upper limit on the sheet. */
  recoatHoursMost: z.number().positive().nullable(),
  sandBetween: z.boolean(),
})
const system = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/),
  says: z.string(),
  family: z.enum(['water-borne', 'solvent-borne', 'isocyanate']),
  surfaces: z.array(z.enum(['built-in', 'masonry', 'wall'])).min(1),
  methods: z.array(z.enum(['hand', 'hvlp', 'airless'])).min(1),
  /** Whether it may be sprayed in the client's house at all. */
  sprayOnSite: z.boolean(),
  layers: z.array(layer).min(1),
  /** Litres of a container, smallest first, in inch and metric markets. */
  packsInch: z.array(z.number().positive()).min(1),
  packsMetric: z.array(z.number().positive()).min(1),
  source: z.string().min(3),
  known: z.enum(['read', 'memory', 'practice']),
})
export type CoatingSystem = z.infer<typeof system>
export type CoatingLayer = z.infer<typeof layer>

const file = z.strictObject({ about: z.string(), systems: z.array(system) })

/** Every coating system by its id, checked at load. Add one = one row of `shared/coatings.json`. */
export const COATINGS: Readonly<Record<string, CoatingSystem>> = Object.fromEntries(
  file.parse(coatings).systems.map((row) => [row.id, row]),
)

/** Systems for one kind of surface, as options of a question. */
export const coatingOptions = (surface: CoatingSystem['surfaces'][number]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.values(COATINGS)
      .filter((c) => c.surfaces.includes(surface))
      .map((c) => [c.id, c.says]),
  )
