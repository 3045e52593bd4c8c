import type { CoatingLayer } from '../../figures/coating-table.ts'
import { within } from '../../things/formula.ts'
import type { Part, SurfaceId } from '../../things/part.ts'
import type { Area } from '../../units/area.ts'
import type { Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import { edgeFactorsOf } from '../supply/supply.ts'
import { coverageLitres, filmLitres } from './coat-litres.ts'
import { edgeArea, faceArea, isMdf, totalOf } from './coated-area.ts'
import type { CoatingChoices, Method } from './coating-choices.ts'

/** One product on one surface group: area of a coat, coats, litres with losses. */
export interface CoatingLine {
  readonly surface: SurfaceId
  readonly layer: CoatingLayer['id']
  readonly product: string
  /** What of the surface it covers, in words: `edges of MDF`. */
  readonly on: string
  readonly area: Area
  readonly coats: number
  readonly wetMicrons: number
  /** What stays in tray, pot and hose is counted once for a product, in its first line. */
  readonly litres: Volume
  readonly recoatHoursLeast: number
  readonly recoatHoursMost: number | null
  readonly sandBetween: boolean
}

/** A coat to be put on by its wet film, before its litres are known. */
export interface Film {
  readonly surface: SurfaceId
  readonly layer: CoatingLayer
  readonly area: Area
  readonly on: string
  readonly method: Method
}

/** The built-ins: sealer on the edges of MDF (and once on the hidden faces of free panels), then each layer over all of it. */
export function builtInFilms(
  context: PlanContext,
  { systems, method }: CoatingChoices,
  { painted, area }: { readonly painted: readonly Part[]; readonly area: Area },
): readonly Film[] {
  const layers = systems['built-in']?.layers ?? []
  return layers.flatMap((layer): readonly Film[] =>
    layer.id === 'sealer'
      ? sealerFilms(context, layer, painted)
      : [{ surface: 'built-in', layer, area, on: 'faces and edges', method }],
  )
}

function sealerFilms(context: PlanContext, layer: CoatingLayer, painted: readonly Part[]): readonly Film[] {
  const { mdf } = edgeFactorsOf(context)
  const sealer = { surface: 'built-in', method: 'hand' } as const
  const edges = within('built-in.sealer/edges', () =>
    totalOf(painted.filter(isMdf), ({ length, width, thickness }) =>
      edgeArea({ length, width, thickness, edgeFactor: mdf }),
    ),
  )
  const hidden = within('built-in.sealer/hidden', () =>
    totalOf(
      painted.filter((part) => part.coat?.faces === 1),
      ({ length, width }) => faceArea({ length, width }),
    ),
  )
  return [
    { ...sealer, layer, area: edges, on: 'edges of MDF' },
    { ...sealer, layer: { ...layer, coats: 1 }, area: hidden, on: 'hidden faces' },
  ]
}

/** The masonry face, by hand, roughness counted in its area. */
export const masonryFilms = ({ systems }: CoatingChoices, area: Area): readonly Film[] =>
  (systems.masonry?.layers ?? []).map((layer) => ({
    surface: 'masonry',
    layer,
    area,
    on: 'masonry face',
    method: 'hand',
  }))

/** Litres of every coat that covers anything; what stays in tray and hose once a product, in its first line. */
export function filmLines({ figures }: PlanContext, films: readonly Film[]): readonly CoatingLine[] {
  const due = films.filter((film) => film.area > 0)
  return due.map((film, at) => {
    const { surface, layer, area, on, method } = film
    const opened = due.slice(0, at).some((earlier) => earlier.layer.product === layer.product)
    const litres = within(subjectOf(film), () =>
      filmLitres({
        area,
        coats: layer.coats,
        wetFilm: layer.wetMicrons,
        transfer: figures.number(`transfer.${method}`),
        residue: opened ? 0 : figures.number(RESIDUES[method]),
      }),
    )
    return { ...layerOf(surface, layer), on, area, litres }
  })
}

const RESIDUES: Readonly<Record<Method, string>> = {
  hand: 'residue.hand',
  hvlp: 'residue.spray',
  airless: 'residue.spray',
}

/** The wall round the new work, by hand and coverage. */
export const wallLines = ({ figures }: PlanContext, { systems }: CoatingChoices, area: Area): readonly CoatingLine[] =>
  area <= 0
    ? []
    : (systems.wall?.layers ?? []).map((layer) => ({
        ...layerOf('wall', layer),
        on: 'wall round the new work',
        area,
        litres: within(subjectOf({ surface: 'wall', layer }), () =>
          coverageLitres({ area, coats: layer.coats, coverage: figures.number('wall-paint.coverage') }),
        ),
      }))

/** What a line's numbers are about: the first letters of what is bought for it. */
const subjectOf = ({ surface, layer }: Pick<Film, 'surface' | 'layer'>): string => `${surface}.${layer.id}`

const layerOf = (
  surface: SurfaceId,
  { id, product, coats, wetMicrons, recoatHoursLeast, recoatHoursMost, sandBetween }: CoatingLayer,
) => ({ surface, layer: id, product, coats, wetMicrons, recoatHoursLeast, recoatHoursMost, sandBetween })
