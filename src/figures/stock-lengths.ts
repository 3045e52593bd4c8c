import * as z from 'zod'
import stockLengths from '../../shared/stock-lengths.json' with { type: 'json' }
import type { Length } from '../units/length.ts'
import type { UnitSystem } from '../units/show-length.ts'
import { readFigureLength } from './figures.ts'

const lengths = z.array(z.string()).min(1)
const file = z.strictObject({
  about: z.string(),
  screws: z.strictObject({ known: z.literal('practice'), source: z.string().min(3), inch: lengths, metric: lengths }),
})

/** The longest screw sold that is no longer than `most`; the shortest sold when even that is longer. */
export function longestScrewSold(most: Length, units: UnitSystem): Length {
  const sold = file.parse(stockLengths).screws[units].map(readFigureLength)
  return sold.reduce((best, length) => (length <= most && length > best ? length : best))
}
