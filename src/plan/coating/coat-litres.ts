import { formula } from '../../things/formula.ts'
import { litres, type Volume } from '../../units/volume.ts'
import { areaInAll } from './coated-area.ts'

/** 1 µm over 1 m² is 1/1000 l. */
const MICRONS_PER_LITRE_AND_SQUARE_METRE = 1000

/**
 * Litres of one product from its wet film: area × coats × wet µm / 1000 / transfer, + residue once per product.
 * Area in m² of one coat; transfer is the share of paint that stays on the piece; residue in litres.
 */
export const filmLitres = formula(
  {
    id: 'coating.litres',
    plain: 'area × coats × wet film in µm / 1000 / transfer + residue',
    source: 'wet film; transfer by Products Finishing, A primer on transfer efficiency, low end',
    gives: 'litres',
    from: {
      area: areaInAll,
      transfer: [{ id: 'transfer.hand' }, { id: 'transfer.hvlp' }, { id: 'transfer.airless' }],
      residue: [{ id: 'residue.hand' }, { id: 'residue.spray' }],
    },
    units: { area: 'area', coats: 'count', wetFilm: 'number', transfer: 'number', residue: 'litres' },
  },
  (given: {
    readonly area: number
    readonly coats: number
    readonly wetFilm: number
    readonly transfer: number
    readonly residue: number
  }): Volume =>
    litres(
      (given.area * given.coats * given.wetFilm) / MICRONS_PER_LITRE_AND_SQUARE_METRE / given.transfer + given.residue,
    ),
)

/** Litres by coverage: area × coats / m² a litre covers. For walls by hand. */
export const coverageLitres = formula(
  {
    id: 'coating.coverage',
    plain: 'area × coats / area a litre covers',
    source: 'common practice, no source',
    gives: 'litres',
    from: { coverage: { id: 'wall-paint.coverage' } },
    units: { area: 'area', coats: 'count', coverage: 'number' },
  },
  (given: { readonly area: number; readonly coats: number; readonly coverage: number }): Volume =>
    litres((given.area * given.coats) / given.coverage),
)

/** Area a litre covers at a dry film, m²/l: 1000 × volume solids / dry µm × transfer. Solids and transfer are shares of 1. */
export const spreadingRate = formula(
  {
    id: 'coating.spreading-rate',
    plain: '1000 × volume solids / dry film in µm × transfer',
    source: 'trade data sheets; 1604 sq ft per US gallon at 1 mil is 231 cu in spread 1 mil thick',
    gives: 'number',
  },
  (given: { readonly solids: number; readonly dryMicrons: number; readonly transfer: number }): number =>
    ((MICRONS_PER_LITRE_AND_SQUARE_METRE * given.solids) / given.dryMicrons) * given.transfer,
)

/** Wet film that dries to a dry film, µm: dry × (1 + thinner) / solids; thinner as a share of the paint by volume. */
export const wetFilm = formula(
  {
    id: 'coating.wet-film',
    plain: 'dry film × (1 + share of thinner) / volume solids',
    source: 'trade data sheets',
    gives: 'number',
  },
  (given: { readonly dryMicrons: number; readonly solids: number; readonly thinner: number }): number =>
    (given.dryMicrons * (1 + given.thinner)) / given.solids,
)
