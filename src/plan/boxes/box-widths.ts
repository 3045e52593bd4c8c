import { boxCount, boxWidths } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'

/**
 * Widths of `count` boxes that fill `width` (whole cut steps long) exactly: equal ones down to the step; the steps left over go from the two
 * ends inwards in pairs, an odd one to the middle box (odd count) or the left end (even count).
 * `equalWidths({ width: 1143 mm, count: 2, cut: 1 mm })` = 572, 571.
 */
export const equalWidths = formula<{ width: Length; count: number; cut: CutStep }, readonly Length[]>(
  {
    id: 'boxes.widths',
    plain: 'run ÷ boxes, down to the step; left-over steps from the ends inwards',
    source: 'geometry',
    from: { width: [{ id: 'slot.run-width' }, { id: 'slot.flat-run-width' }], count: boxCount },
    units: { count: 'count' },
  },
  ({ width, count, cut }) => {
    const base = cut.down(over(width, count))
    const left = less(width, times(base, count))
    const wider = new Set(placesOf(Math.floor(left / cut.step), count))
    return Array.from({ length: count }, (_, i) => (wider.has(i) ? sum(base, cut.step) : base))
  },
)

function placesOf(steps: number, count: number): readonly number[] {
  const odd = steps % 2 === 1
  const single = odd ? [count % 2 === 1 ? (count - 1) / 2 : 0] : []
  // With the left end already taken by the odd step, the pairs begin one box further in at the left.
  const shift = odd && count % 2 === 0 ? 1 : 0
  const pairs = Array.from({ length: Math.floor(steps / 2) }, (_, i) => [i + shift, count - 1 - i])
  return [...single, ...pairs.flat()]
}

export interface WidthsUsed {
  readonly widths: readonly Length[]
  /** Sum of the widths asked for, when it is not the run's width. */
  readonly askedTotal: Length | undefined
}

/** The widths asked for when they fill the run, else equal ones; a sum that does not fill the run is handed back to be said. */
export function widthsOf(context: PlanContext, run: Run): WidthsUsed {
  const equal = equalWidths({ width: run.width, count: run.boxCount, cut: context.cut })
  const asked = context.settle.choice(boxWidths, run.bay, () => ({
    value: equal,
    because: equal.length === 1 ? 'one box fills the run' : 'equal, to the cut step',
  }))
  const total = sum(ZERO, ...asked)
  const fills = total === run.width && asked.length === run.boxCount
  return fills ? { widths: asked, askedTotal: undefined } : { widths: equal, askedTotal: total }
}
