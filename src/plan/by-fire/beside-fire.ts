import { type Length, shortest } from '../../units/length.ts'
import type { Firebox } from '../mantel/firebox.ts'
import type { Hearth } from '../mantel/mantel.ts'
import type { BreastWall, RunnableWall, Survey } from '../survey/survey.ts'

/** A breast with its fire, and one bay that stands beside it. */
export interface BesideFire {
  readonly breast: BreastWall
  readonly fire: Firebox
  readonly beside: RunnableWall
  /** Which side of the breast it touches. */
  readonly side: 'left' | 'right'
  /** Distance of the masonry face from the back wall: what stands further out is seen by the fire. */
  readonly faceY: Length
}

/** Every pair of a breast in which something burns and a bay next to it. */
export const besideFires = (survey: Survey, hearths: readonly Hearth[]): readonly BesideFire[] =>
  hearths
    .filter(({ fire }) => fire.fuel.burns)
    .flatMap(({ wall: breast, fire }) =>
      survey.walls.flatMap((beside, i) => {
        if (beside.kind === 'breast') return []
        const after = survey.walls[i - 1] === breast
        if (!after && survey.walls[i + 1] !== breast) return []
        return [
          {
            breast,
            fire,
            beside,
            side: after ? ('right' as const) : ('left' as const),
            faceY: faceBeside(breast, beside, after ? 'left' : 'right'),
          },
        ]
      }),
    )

/** The return beside it and the breast's own depth measure the same face: the shallower one counts. */
function faceBeside(breast: BreastWall, beside: RunnableWall, side: 'left' | 'right'): Length {
  if (beside.kind === 'flat') return breast.projection
  const own = side === 'left' ? beside.returnLeft : beside.returnRight
  return own === undefined ? breast.projection : shortest(own, breast.projection)
}
