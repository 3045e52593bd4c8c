import { boxDepth } from '../../job/chapters/cabinets.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import type { Run } from '../run/slot.ts'
import { recessDepth } from '../survey/outline.ts'
import { wholeDepth } from './box-sizes.ts'
import { frontThicknessOf } from './panel-thickness.ts'

/** Space between wall and box back: for the wall's bow, or clear of its proudest point. */
export const backGapOf = (context: PlanContext, run: Run): Length =>
  longest(context.figures.length('back.scribe'), sum(run.wall.bow.proud, context.figures.length('back.proud-clear')))

/** Door faces stay behind the breast face, by a set-back. */
export const depthBehindBreast = formula<
  { returnDepth: Length; doorSet: Length; front: Length; bumper: Length; backGap: Length },
  Length
>(
  {
    id: 'boxes.depth',
    plain: 'shallower return − door set-back − leaf − bumper − gap behind',
    source: 'common practice, no source',
  },
  ({ returnDepth, doorSet, front, bumper, backGap }) => less(returnDepth, doorSet, front, bumper, backGap),
)

/** How far the leaf stands off the box front with its bumper; 0 without doors. */
export const leafReach = (context: PlanContext): Length =>
  hasDoors(context) ? sum(frontThicknessOf(context), context.figures.length('door.bumper')) : frontThicknessOf(context)

/** Depth of the boxes of a run, without doors. */
export function depthOf(context: PlanContext, run: Run): Length {
  const { settle, figures, cut } = context
  return wholeDepth({
    cut,
    wanted: settle.choice(boxDepth, run.bay, () => {
      const returnDepth = recessDepth(run.wall)
      if (returnDepth === undefined)
        return { value: figures.length('box.depth-flat'), because: 'no return limits it: a usual depth' }
      const front = frontThicknessOf(context)
      const bumper = less(leafReach(context), front)
      const doorSet = figures.length('door.set-back')
      const value = depthBehindBreast({ returnDepth, doorSet, front, bumper, backGap: backGapOf(context, run) })
      const behind = { value: cut.down(value), because: 'the door faces stay behind the breast face' }
      const usual = figures.length('box.depth-flat')
      return run.wall.kind === 'flat' && behind.value > usual
        ? { value: usual, because: 'a usual depth, behind the breast face' }
        : behind
    }),
  })
}
