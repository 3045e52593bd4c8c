import { drawers, drawersWanted } from '../../job/chapters/drawers.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'

/** Heights of the drawer fronts of one box as asked, top to bottom; undefined = an equal share of what the others leave. */
export type FrontsAsked = readonly (Length | undefined)[]

/** Whether any box of the job has drawers. */
export const wantsDrawers = (context: PlanContext): boolean =>
  context.settle.choice(drawersWanted, undefined, () => ({
    value: 'no' as const,
    because: 'nothing is added unasked',
  })) === 'yes'

/** The drawers asked for in a run, by the number of their box. Nothing is suggested: a box has drawers only when told so. */
export function drawersAsked(context: PlanContext, run: Pick<Run, 'bay'>): ReadonlyMap<number, FrontsAsked> {
  if (!wantsDrawers(context)) return new Map()
  const rows = context.settle.choice(drawers, run.bay, () => ({ value: [], because: 'doors alone, until you ask' }))
  const numbers = [...new Set(rows.map((row) => row.box))]
  return new Map(numbers.map((number) => [number, rows.filter((row) => row.box === number).map((row) => row.height)]))
}

/** Whether a box has drawers: then it has no loose shelves. */
export const hasDrawers = (
  context: PlanContext,
  box: { readonly run: Pick<Run, 'bay'>; readonly number: number },
): boolean => drawersAsked(context, box.run).has(box.number)
