import defaults from '../../shared/figures/defaults.json' with { type: 'json' }
import numbers from '../../shared/figures/numbers.json' with { type: 'json' }
import prices from '../../shared/figures/prices.json' with { type: 'json' }
import rates from '../../shared/figures/rates.json' with { type: 'json' }
import hardware from '../../shared/hardware.json' with { type: 'json' }
import { type FigureRow, figureRow } from './figure.ts'

const FILES: readonly { readonly rows: readonly object[] }[] = [defaults, hardware, numbers, rates, prices]

/** All rows of `shared/figures`, checked. Throws when a row lacks its source, or an id stands twice. */
export function publishedRows(): ReadonlyMap<string, FigureRow> {
  const rows = new Map<string, FigureRow>()
  for (const row of FILES.flatMap((file) => file.rows.map(figureRow))) {
    if (rows.has(row.id)) throw new Error(`The figure ${row.id} stands twice in shared/figures.`)
    rows.set(row.id, row)
  }
  return rows
}
