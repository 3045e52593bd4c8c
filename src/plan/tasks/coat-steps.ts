import type { SurfaceId } from '../../things/part.ts'
import type { CoatingLine, CoatingPlan } from '../coating/coating.ts'

/** One coat of one product, put on in one go wherever it is due. */
export interface CoatStep {
  readonly line: CoatingLine
  /** Square metres of this coat: a second coat may be due on fewer surfaces than the first. */
  readonly area: number
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
  layers.flatMap((layer) => {
    const lines = coating.lines.filter((l) => l.surface === surface && l.layer === layer && l.area > 0)
    return [...new Set(lines.map((l) => l.product))].flatMap((product) =>
      coatsOf(lines.filter((l) => l.product === product)),
    )
  })

function coatsOf(lines: readonly CoatingLine[]): readonly CoatStep[] {
  const coats = Math.max(...lines.map((l) => l.coats))
  return Array.from({ length: coats }, (_, i) => lines.filter((l) => l.coats > i)).flatMap((due, i) => {
    const [line] = due
    if (line === undefined) return []
    return [
      {
        line,
        area: due.reduce((m2, l) => m2 + l.area, 0),
        says: coats === 1 ? line.product : `${line.product}, coat ${i + 1} of ${coats}`,
        sandAfter: line.sandBetween,
      },
    ]
  })
}
