import type { CoatingLayer } from '../../kinds/coating.ts'
import type { Part, SurfaceId } from '../../things/part.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import type { Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import { edgeFactorsOf } from '../supply/supply.ts'
import { coverageLitres, filmLitres } from './coat-litres.ts'
import { edgeArea, isMdf } from './coated-area.ts'
import type { CoatingChoices, Method } from './coating-choices.ts'

/** One product on one surface group: area of a coat, coats, litres with losses. */
export interface CoatingLine {
  readonly surface: SurfaceId
  readonly layer: 'sealer' | 'primer' | 'top'
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

/** The built-ins: sealer on the edges of MDF (and once on the hidden faces of free panels), then each layer over all of it. */
export function builtInLines(
  context: PlanContext,
  { systems, method }: CoatingChoices,
  { painted, area }: { readonly painted: readonly Part[]; readonly area: Area },
): readonly CoatingLine[] {
  const edges = totalOf(painted.filter(isMdf), (part) => edgeArea(part) * edgeFactorsOf(context).mdf)
  const hidden = totalOf(painted, (part) => (part.coat?.faces === 1 ? areaOf(part.length, part.width) : 0))
  const layers = systems['built-in']?.layers ?? []
  return layers
    .flatMap((layer) =>
      layer.id === 'sealer'
        ? [
            filmLine(context, { surface: 'built-in', layer, area: edges, on: 'edges of MDF', method: 'hand' }),
            // The same tin as for the edges: what stays in the tray was counted there.
            withoutResidue(context, {
              surface: 'built-in',
              layer: { ...layer, coats: 1 },
              area: hidden,
              on: 'hidden faces',
              method: 'hand',
            }),
          ]
        : [filmLine(context, { surface: 'built-in', layer, area, on: 'faces and edges', method })],
    )
    .filter((line) => line.area > 0)
}

/** The masonry face, by hand, roughness counted in its area. */
export const masonryLines = (context: PlanContext, { systems }: CoatingChoices, area: Area): readonly CoatingLine[] =>
  area <= 0
    ? []
    : (systems.masonry?.layers ?? []).map((layer) =>
        filmLine(context, { surface: 'masonry', layer, area, on: 'masonry face', method: 'hand' }),
      )

/** The wall round the new work, by hand and coverage. */
export const wallLines = (context: PlanContext, { systems }: CoatingChoices, area: Area): readonly CoatingLine[] =>
  area <= 0
    ? []
    : (systems.wall?.layers ?? []).map((layer) => ({
        ...layerOf('wall', layer),
        on: 'wall round the new work',
        area,
        litres: coverageLitres({
          area,
          coats: layer.coats,
          perLitre: context.figures.number('wall-paint.coverage'),
        }),
      }))

const totalOf = (parts: readonly Part[], area: (part: Part) => number): Area =>
  squareMetres(parts.reduce((total, part) => total + part.quantity * area(part), 0))

interface Film {
  readonly surface: SurfaceId
  readonly layer: CoatingLayer
  readonly area: Area
  readonly on: string
  readonly method: Method
}

const filmLine = (context: PlanContext, film: Film): CoatingLine =>
  lineOf(film, litresOf(context, film, context.figures.number(RESIDUES[film.method])))

const withoutResidue = (context: PlanContext, film: Film): CoatingLine => lineOf(film, litresOf(context, film, 0))

const RESIDUES: Readonly<Record<Method, string>> = {
  hand: 'residue.hand',
  hvlp: 'residue.spray',
  airless: 'residue.spray',
}

const litresOf = ({ figures }: PlanContext, { area, layer, method }: Film, residue: number): Volume =>
  filmLitres({
    area,
    coats: layer.coats,
    wetMicrons: layer.wetMicrons,
    transfer: figures.number(`transfer.${method}`),
    residue,
  })

const lineOf = ({ surface, layer, area, on }: Film, litres: Volume): CoatingLine => ({
  ...layerOf(surface, layer),
  on,
  area,
  litres,
})

const layerOf = (
  surface: SurfaceId,
  { id, product, coats, wetMicrons, recoatHoursLeast, recoatHoursMost, sandBetween }: CoatingLayer,
) => ({ surface, layer: id, product, coats, wetMicrons, recoatHoursLeast, recoatHoursMost, sandBetween })
