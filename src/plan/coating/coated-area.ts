import { formula, within } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'

type Sized = Pick<Part, 'length' | 'width' | 'thickness'>

const EDGE_FACTORS = [{ id: 'edge.factor-mdf' }, { id: 'edge.factor-other' }]

/**
 * Area one coat covers on one piece, m²: faces × length × width + all four edges × edge factor.
 * Finished size, the larger end of a taper. An MDF edge drinks more than its area: that is the factor.
 */
export const coatArea = formula(
  {
    id: 'coating.part-area',
    plain: 'faces × length × width + 2 × (length + width) × thickness × edge factor',
    source: 'common practice, no source',
    gives: 'area',
    from: { edgeFactor: EDGE_FACTORS },
    units: { faces: 'count', edgeFactor: 'number' },
  },
  (given: Sized & { readonly faces: number; readonly edgeFactor: number }): Area =>
    squareMetres(given.faces * areaOf(given.length, given.width) + plainEdges(given) * given.edgeFactor),
)

/** Area of the four edges of one piece as they drink, m². */
export const edgeArea = formula(
  {
    id: 'coating.edge-area',
    plain: '2 × (length + width) × thickness × edge factor',
    source: 'common practice, no source',
    gives: 'area',
    from: { edgeFactor: EDGE_FACTORS },
    units: { edgeFactor: 'number' },
  },
  (given: Sized & { readonly edgeFactor: number }): Area => squareMetres(plainEdges(given) * given.edgeFactor),
)

const plainEdges = ({ length, width, thickness }: Sized): Area =>
  squareMetres(2 * (areaOf(length, thickness) + areaOf(width, thickness)))

/** Area of one face, m². */
export const faceArea = formula(
  { id: 'coating.face-area', plain: 'length × width', source: 'geometry', gives: 'area' },
  ({ length, width }: Pick<Part, 'length' | 'width'>): Area => areaOf(length, width),
)

/** Area of all pieces together, m²: each as often as it is there. */
export const areaInAll = formula(
  {
    id: 'coating.area',
    plain: 'area of each piece × how many of it, all together',
    source: 'geometry',
    gives: 'area',
    units: { areas: 'area', quantities: 'count' },
  },
  ({ areas, quantities }: { readonly areas: readonly Area[]; readonly quantities: readonly number[] }): Area =>
    squareMetres(areas.reduce((total, area, at) => total + area * (quantities[at] ?? 0), 0)),
)

/** How much more the edges of a material drink than its faces. */
export interface EdgeFactors {
  readonly mdf: number
  readonly other: number
}

export const isMdf = (part: Pick<Part, 'material'>): boolean => part.material.startsWith('mdf')

/** Area of one coat on all pieces of some parts, m²; a part without a coat counts nothing, a coat on no face counts the edges. */
export const coatAreaOf = (parts: readonly Part[], factors: EdgeFactors): Area =>
  totalOf(
    parts.filter((part) => part.coat !== undefined),
    ({ length, width, thickness, coat, material }) =>
      coatArea({
        length,
        width,
        thickness,
        faces: coat?.faces ?? 0,
        edgeFactor: isMdf({ material }) ? factors.mdf : factors.other,
      }),
  )

/** m² of one thing on all pieces of some parts. */
export const totalOf = (parts: readonly Part[], area: (part: Part) => Area): Area =>
  areaInAll({
    areas: parts.map((part) => within(part.id, () => area(part))),
    quantities: parts.map((part) => part.quantity),
  })
