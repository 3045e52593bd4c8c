import { flatEnds, flatLength } from '../../job/chapters/wall.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { ceilingOf, NO_WAITS, runWallOf } from './bay-survey.ts'
import type { FlatWall, SurveyedBay } from './survey.ts'

/** A flat wall as measured. A chimney breast beside it counts as a wall at that end until answered otherwise. */
export function flatWall(context: PlanContext, bay: NamedBay, originX: Length): SurveyedBay<FlatWall> {
  const length = context.settle.measured(flatLength, bay, () => ({
    value: context.figures.length('survey.assumed-flat'),
    because: 'until it is measured',
  }))
  const ends = context.settle.choice(flatEnds, bay, () => endsBeside(context, bay))
  const over = ceilingOf(context, bay, length.value)
  const run = runWallOf(context, bay, length.value)
  const { waits: overWaits, messages: overMessages, ...top } = over
  const { waits: runWaits, messages: runMessages, ...rest } = run
  return {
    wall: {
      kind: 'flat',
      bay,
      originX,
      width: length.value,
      ...top,
      ...rest,
      wallAtLeft: ends === 'left' || ends === 'both',
      wallAtRight: ends === 'right' || ends === 'both',
      besideBreast: undefined,
      waits: { ...NO_WAITS, ...overWaits, ...runWaits, widths: length.waitsFor },
    },
    messages: [...overMessages, ...runMessages],
  }
}

function endsBeside(context: PlanContext, bay: NamedBay) {
  const left = context.bays[bay.index - 1]?.kind === 'breast'
  const right = context.bays[bay.index + 1]?.kind === 'breast'
  if (left && right) return { value: 'both' as const, because: 'a breast stands at each end' }
  if (left) return { value: 'left' as const, because: 'the breast stands there' }
  if (right) return { value: 'right' as const, because: 'the breast stands there' }
  return { value: 'neither' as const, because: 'no breast beside it' }
}
