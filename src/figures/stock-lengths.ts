import * as z from 'zod'
import stockLengths from '../../shared/stock-lengths.json' with { type: 'json' }
import type { Length } from '../units/length.ts'
import type { UnitSystem } from '../units/show-length.ts'
import { readFigureLength } from './figure-length.ts'

const lengths = z.array(z.string()).min(1)
const sold = z.strictObject({ known: z.literal('practice'), source: z.string().min(3), inch: lengths, metric: lengths })
const file = z.strictObject({
  about: z.string(),
  screws: sold,
  panels: sold,
  rods: sold,
  boxWidths: sold,
  boxHeights: sold,
  boxDepths: sold,
})

let read: z.infer<typeof file> | undefined
/** The file, checked once a process. */
function stock(): z.infer<typeof file> {
  read ??= file.parse(stockLengths)
  return read
}

/** The longest screw sold that is no longer than `most`; the shortest sold when even that is longer. */
export function longestScrewSold(most: Length, units: UnitSystem): Length {
  const screws = stock().screws[units].map(readFigureLength)
  return screws.reduce((best, length) => (length <= most && length > best ? length : best))
}

/** Outside sizes ready-made boxes are sold in, smallest first. */
export interface BoxesSold {
  readonly widths: readonly Length[]
  readonly heights: readonly Length[]
  readonly depths: readonly Length[]
}

export function boxesSold(units: UnitSystem): BoxesSold {
  const { boxWidths, boxHeights, boxDepths } = stock()
  const read = (row: z.infer<typeof sold>) => row[units].map(readFigureLength)
  return { widths: read(boxWidths), heights: read(boxHeights), depths: read(boxDepths) }
}

/** The thinnest backer rod sold that is no thinner than `least`; the thickest sold when none is. */
export function thinnestRodSold(least: Length, units: UnitSystem): Length {
  const rods = stock().rods[units].map(readFigureLength)
  return rods.reduce((best, rod) => {
    const better = best < least ? rod > best : rod >= least && rod < best
    return better ? rod : best
  })
}

/** A panel made thinner than its name by more than this share is another panel. Common practice, no source. */
const OFF_NAME = 0.12

/** The thickness a panel is asked for by: the nearest sold to what the caliper says, or that itself when none is near. */
export function thicknessSold(measured: Length, units: UnitSystem): Length {
  const panels = stock().panels[units].map(readFigureLength)
  const off = (sold: Length) => Math.abs(sold - measured)
  const nearest = panels.reduce((best, thickness) => (off(thickness) < off(best) ? thickness : best))
  return off(nearest) <= measured * OFF_NAME ? nearest : measured
}
