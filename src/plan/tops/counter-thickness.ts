import { counter, counterThickness } from '../../job/chapters/cabinets.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'

/** Thickness of the counter; undefined where no base boxes carry one. */
export function counterThicknessOf({ settle, figures }: PlanContext, runs: readonly Run[]): Length | undefined {
  if (!runs.some((run) => run.kind === 'base')) return undefined
  if (!settle.choice(counter, undefined, () => ({ value: true, because: 'base boxes want a top' }))) return undefined
  return settle.choice(counterThickness, undefined, () => ({
    value: figures.length('panel.counter'),
    origin: 'assumed',
    because: 'its name at the counter: put the caliper on it',
  }))
}
