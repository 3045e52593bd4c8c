import type { Figures } from '../../figures/figures.ts'
import { formula } from '../../things/formula.ts'
import { type Length, NM_PER_INCH } from '../../units/length.ts'

/** Floor that stays free of wood in front of an opening and to each side of it. */
export interface HearthZone {
  readonly front: Length
  readonly side: Length
}

/**
 * Hearth zone of a masonry fireplace: 16 in front and 8 at each side, from 6 sq ft of opening on 20 and 12
 * (IRC R1001.10). Exactly 6 sq ft counts as large.
 */
export const hearthZone = formula(
  { id: 'hearth.zone', plain: 'by the area of the opening, width × height', source: 'IRC R1001.10, 2006 to 2021' },
  (opening: { readonly width: Length; readonly height: Length; readonly figures: Figures }): HearthZone => {
    const squareInch = BigInt(NM_PER_INCH) ** 2n
    const large = BigInt(opening.figures.number('hearth.large-opening')) * squareInch
    const size = BigInt(opening.width) * BigInt(opening.height) >= large ? 'large' : 'small'
    return {
      front: opening.figures.length(`hearth.front-${size}`),
      side: opening.figures.length(`hearth.side-${size}`),
    }
  },
)
