import type { Figures } from '../../figures/figures.ts'
import { risingRule } from './rising-rule.ts'
import { steppedRule } from './stepped-rule.ts'
import type { WoodRule } from './wood-rule.ts'

/** The codes offered for wood near a masonry fireplace, and "not known yet". */
export type MasonryCodeId = 'irc' | 'irc-metric' | 'canada' | 'unknown'

/** The rules a code stands for. Not known yet = every one of them, so that the strictest counts. Add a code = one line here. */
export const MASONRY_CODES: Readonly<Record<MasonryCodeId, (figures: Figures) => readonly WoodRule[]>> = {
  irc: (figures) => [figures.units === 'metric' ? ircMetric(figures) : irc(figures)],
  'irc-metric': (figures) => [ircMetric(figures)],
  canada: (figures) => [canada(figures)],
  unknown: (figures) => [ircMetric(figures), canada(figures)],
}

const irc = (figures: Figures): WoodRule =>
  risingRule(
    {
      id: 'irc',
      says: 'IRC R1001.11: nothing within 6 in, and up to 12 in away no further out than 1/8 in for each inch',
      source: sourceOf(figures, 'clearance.projection'),
    },
    {
      least: figures.length('clearance.least'),
      within: figures.length('clearance.within'),
      outPerDistance: figures.number('clearance.projection'),
    },
  )

/** The printed metric pair, 3 mm for each 25 mm, is a little stricter than 1:8: a metric job takes it. */
const ircMetric = (figures: Figures): WoodRule =>
  risingRule(
    {
      id: 'irc-metric',
      says: 'IRC R1001.11: nothing within 152 mm, and up to 305 mm away no further out than 3 mm for each 25 mm',
      source: sourceOf(figures, 'clearance.projection-metric'),
    },
    {
      least: figures.length('clearance.least'),
      within: figures.length('clearance.within'),
      outPerDistance: figures.number('clearance.projection-metric'),
    },
  )

const canada = (figures: Figures): WoodRule =>
  steppedRule(
    {
      id: 'canada',
      says: 'Canada: nothing within 150 mm, and nothing standing out more than 38 mm within 300 mm',
      source: sourceOf(figures, 'clearance.canada-least'),
    },
    {
      least: figures.length('clearance.canada-least'),
      shallow: figures.length('clearance.canada-shallow'),
      deepLeast: figures.length('clearance.canada-deep-least'),
    },
  )

const sourceOf = (figures: Figures, id: string): string => {
  const row = figures.row(id)
  return row.edition === undefined ? row.source : `${row.source}, ${row.edition}`
}
