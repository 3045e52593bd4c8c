import { formula } from '../../things/formula.ts'
import type { Part } from '../../things/part.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'

/**
 * Area one coat covers on one piece, m²: faces × length × width + all four edges × edge factor.
 * Finished size, the larger end of a taper. An MDF edge drinks more than its area: that is the factor.
 */
export const coatArea = formula(
  {
    id: 'coating.part-area',
    plain: 'faces × length × width + 2 × (length + width) × thickness × edge factor',
    source: 'common practice, no source',
  },
  (
    given: Pick<Part, 'length' | 'width' | 'thickness'> & { readonly faces: number; readonly edgeFactor: number },
  ): Area => squareMetres(given.faces * areaOf(given.length, given.width) + edgeArea(given) * given.edgeFactor),
)

/** Plain area of the four edges of one piece, m². */
export const edgeArea = ({ length, width, thickness }: Pick<Part, 'length' | 'width' | 'thickness'>): Area =>
  squareMetres(2 * (areaOf(length, thickness) + areaOf(width, thickness)))

/** How much more the edges of a material drink than its faces. */
export interface EdgeFactors {
  readonly mdf: number
  readonly other: number
}

export const isMdf = (part: Pick<Part, 'material'>): boolean => part.material.startsWith('mdf')

/** Area of one coat on all pieces of some parts, m²; a part without a coat counts nothing, a coat on no face counts the edges. */
export const coatAreaOf = (parts: readonly Part[], factors: EdgeFactors): Area =>
  squareMetres(
    parts.reduce((total, part) => {
      if (part.coat === undefined) return total
      const edgeFactor = isMdf(part) ? factors.mdf : factors.other
      const { length, width, thickness, coat } = part
      return total + part.quantity * coatArea({ length, width, thickness, faces: coat.faces, edgeFactor })
    }, 0),
  )
