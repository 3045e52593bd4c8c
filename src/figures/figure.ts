import * as z from 'zod'

const provenance = {
  id: z.string().regex(/^[a-z-]+(\.[a-z0-9-]+)+$/),
  says: z.string().min(3),
  source: z.string().min(3),
  edition: z.string().optional(),
  section: z.string().optional(),
  /** Where the rule holds: `United States`. Absent = nothing ties it to a place. */
  region: z.string().optional(),
  /** read = the words were read · memory = not read again · practice = common practice, no source. */
  known: z.enum(['read', 'memory', 'practice', 'invented', 'yours']),
  /** Safety rows change only to the safe side, … */
  change: z.literal('safe-side').optional(),
  /** … and say which side that is: a larger value, or a smaller one. */
  safe: z.enum(['more', 'less']).optional(),
}
/** A number nobody can name a tenth to ten times of: a share of 1, a percentage. */
const bounds = { least: z.number().optional(), most: z.number().optional() }

/** A length that differs by unit system: `"inch": "1 in", "metric": "25 mm"`. */
const lengthPair = z.strictObject({ ...provenance, inch: z.string(), metric: z.string() })
/** One published length for both systems: `"length": "6 in"`. */
const lengthRow = z.strictObject({ ...provenance, length: z.string() })
const numberPair = z.strictObject({
  ...provenance,
  ...bounds,
  inchValue: z.number(),
  metricValue: z.number(),
  unit: z.string(),
})
const numberRow = z.strictObject({ ...provenance, ...bounds, value: z.number(), unit: z.string() })

/** One figure: value, unit, and where it comes from. */
export type FigureRow =
  | z.infer<typeof lengthPair>
  | z.infer<typeof lengthRow>
  | z.infer<typeof numberPair>
  | z.infer<typeof numberRow>

/** The schema of a row by the form its value is written in. */
export function rowSchema(row: object): z.ZodType<FigureRow> {
  if ('inch' in row) return lengthPair
  if ('length' in row) return lengthRow
  return 'inchValue' in row ? numberPair : numberRow
}

/** The fields a row's value stands in, in the order they are written. */
export type ValueField = 'inch' | 'metric' | 'length' | 'inchValue' | 'metricValue' | 'value'

/** The values of a row by their fields: lengths as they are written, numbers as they are. */
export function valuesOf(row: FigureRow): readonly (readonly [ValueField, string | number])[] {
  if ('inch' in row)
    return [
      ['inch', row.inch],
      ['metric', row.metric],
    ]
  if ('length' in row) return [['length', row.length]]
  if ('inchValue' in row)
    return [
      ['inchValue', row.inchValue],
      ['metricValue', row.metricValue],
    ]
  return [['value', row.value]]
}
