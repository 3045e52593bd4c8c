import type { SurfaceId } from '../../things/part.ts'
import type { CoatingLine, CoatingPlan } from '../coating.ts'

/** One coat on one surface, to be put on in one go. */
export interface CoatStep {
  readonly line: CoatingLine
  /** `primer, coat 2 of 2`. */
  readonly says: string
  /** Whether the dry coat is sanded before the next. */
  readonly sandAfter: boolean
}

/** The coats of a surface in the order they go on, sealer, primer, then top; only the layers asked for. */
export const coatSteps = (
  coating: CoatingPlan,
  surface: SurfaceId,
  layers: readonly CoatingLine['layer'][],
): readonly CoatStep[] =>
  layers.flatMap((layer) =>
    coating.lines
      .filter((line) => line.surface === surface && line.layer === layer && line.area > 0)
      .flatMap((line) =>
        Array.from({ length: line.coats }, (_, i) => ({
          line,
          says: line.coats === 1 ? line.product : `${line.product}, coat ${i + 1} of ${line.coats}`,
          sandAfter: line.sandBetween,
        })),
      ),
  )
