import { drawers } from '../../job/chapters/drawers.ts'
import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'

/** Heights of the drawer fronts of one box as asked, top to bottom; undefined = an equal share of what the others leave. */
export type FrontsAsked = readonly (Length | undefined)[]

/** The drawers asked for in a run, by the number of their box. Nothing is suggested: a box has drawers only when told so. */
export function drawersAsked(context: PlanContext, run: Pick<Run, 'bay'>): ReadonlyMap<number, FrontsAsked> {
  const rows = context.settle.choice(drawers, run.bay, () => ({ value: [], because: 'doors alone, until you ask' }))
  const numbers = [...new Set(rows.map((row) => Number(row.box)))]
  return new Map(
    numbers.map((number) => [number, rows.filter((row) => Number(row.box) === number).map((row) => row.height)]),
  )
}

/** Whether a box has drawers: then it has no loose shelves. */
export const hasDrawers = (
  context: PlanContext,
  box: { readonly run: Pick<Run, 'bay'>; readonly number: number },
): boolean => drawersAsked(context, box.run).has(box.number)
