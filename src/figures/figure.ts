import * as z from 'zod'

const provenance = {
  id: z.string().regex(/^[a-z-]+(\.[a-z0-9-]+)+$/),
  says: z.string().min(3),
  source: z.string().min(3),
  edition: z.string().optional(),
  section: z.string().optional(),
  /** read = the words were read · memory = not read again · practice = common practice, no source. */
  known: z.enum(['read', 'memory', 'practice', 'invented']),
  /** Safety rows change only to the safe side. */
  change: z.literal('safe-side').optional(),
}

/** A length that differs by unit system: `"inch": "1 in", "metric": "25 mm"`. */
const lengthPair = z.strictObject({ ...provenance, inch: z.string(), metric: z.string() })
/** One published length for both systems: `"length": "6 in"`. */
const lengthRow = z.strictObject({ ...provenance, length: z.string() })
const numberPair = z.strictObject({ ...provenance, inchValue: z.number(), metricValue: z.number(), unit: z.string() })
const numberRow = z.strictObject({ ...provenance, value: z.number(), unit: z.string() })

/** One figure: value, unit, and where it comes from. */
export type FigureRow =
  | z.infer<typeof lengthPair>
  | z.infer<typeof lengthRow>
  | z.infer<typeof numberPair>
  | z.infer<typeof numberRow>

/** A row of a figure file, checked by the form its value is written in. Throws what is wrong with it. */
export function figureRow(row: object): FigureRow {
  if ('inch' in row) return lengthPair.parse(row)
  if ('length' in row) return lengthRow.parse(row)
  return 'inchValue' in row ? numberPair.parse(row) : numberRow.parse(row)
}
