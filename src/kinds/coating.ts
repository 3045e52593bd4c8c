import {
  type CoatingFamily,
  type CoatingLayer,
  type CoatingRow,
  coatFigure,
  coatingTable,
} from '../figures/coating-table.ts'
import type { Figures } from '../figures/figures.ts'

type Surface = CoatingRow['surfaces'][number]

/** A coating system with its family, and the numbers this job reckons with. */
export type CoatingSystem = Omit<CoatingRow, 'family'> & { readonly family: CoatingFamily }

/** The systems made for a surface, in the order of `shared/coatings.json`. Add one = one row there. */
export const coatingsFor = (surface: Surface): readonly CoatingRow[] =>
  coatingTable().systems.filter((row) => row.surfaces.includes(surface))

/** The same, as options of a question. */
export const coatingOptions = (surface: Surface): Readonly<Record<string, string>> =>
  Object.fromEntries(coatingsFor(surface).map((row) => [row.id, row.says]))

/** A system as this job reckons with it: its coats, films and hours may be a person's own. */
export function coatingSystem(row: CoatingRow, figures: Figures): CoatingSystem {
  const family = coatingTable().families.find(({ id }) => id === row.family)
  // The table was checked: every system has its family.
  if (family === undefined) throw new Error(`No family ${row.family} in shared/coatings.json.`)
  return { ...row, family, layers: row.layers.map((layer) => layerOf(row, layer, figures)) }
}

function layerOf({ id: system }: CoatingRow, layer: CoatingLayer, figures: Figures): CoatingLayer {
  const read = (what: string) => figures.number(coatFigure(system, layer.id, what))
  const most = read('recoat-most')
  return {
    ...layer,
    coats: read('coats'),
    wetMicrons: read('wet-film'),
    recoatHoursLeast: read('recoat-least'),
    recoatHoursMost: most === 0 ? null : most,
  }
}
