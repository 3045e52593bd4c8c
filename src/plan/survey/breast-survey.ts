import { breastSize } from '../../job/chapters/wall.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { ceilingOf, NO_WAITS } from './bay-survey.ts'
import type { BreastWall, SurveyedBay } from './survey.ts'

/** A chimney breast as measured: width and how far it stands out of the back wall. */
export function breastWall(context: PlanContext, bay: NamedBay, originX: Length): SurveyedBay<BreastWall> {
  const assumedWidth = context.figures.length('survey.assumed-breast')
  const assumedProjection = context.figures.length('survey.assumed-depth')
  const measured = context.settle.measured(breastSize, bay, () => ({
    value: [assumedWidth, assumedProjection],
    because: 'until it is measured',
  }))
  const [width = assumedWidth, projection = assumedProjection] = measured.value
  const { waits, messages, ...top } = ceilingOf(context, bay, width)
  return {
    wall: {
      kind: 'breast',
      bay,
      originX,
      width,
      projection,
      ...top,
      waits: { ...NO_WAITS, ...waits, widths: measured.waitsFor, depth: measured.waitsFor },
    },
    messages,
  }
}
