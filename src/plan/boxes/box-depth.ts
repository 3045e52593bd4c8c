import { boxDepth } from '../../job/chapters/cabinets.ts'
import { frontThickness } from '../../job/chapters/hardware.ts'
import { bow, breastSize, returns } from '../../job/chapters/wall.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, longest, sum } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import { hasDoors } from '../fronts/door-choices.ts'
import type { Run } from '../run/slot.ts'
import { recessDepth } from '../survey/outline.ts'
import { wholeDepth } from './box-sizes.ts'
import { frontThicknessOf } from './panel-thickness.ts'

const backGap = formula<{ scribe: Length; proud: Length; clear: Length }, Length>(
  {
    id: 'box.back-gap',
    plain: 'the larger of room for scribing and (hump of the back wall + clearance)',
    source: 'common practice, no source',
    from: { scribe: { id: 'back.scribe' }, proud: bow, clear: { id: 'back.proud-clear' } },
  },
  ({ scribe, proud, clear }) => longest(scribe, sum(proud, clear)),
)

/** Space between wall and box back: for the wall's bow, or clear of its proudest point. */
export const backGapOf = ({ figures }: PlanContext, { wall }: Run): Length =>
  backGap({
    scribe: figures.length('back.scribe'),
    proud: wall.bow.proud,
    clear: figures.length('back.proud-clear'),
  })

/** Door faces stay behind the breast face, by a set-back. */
export const depthBehindBreast = formula<
  { returnDepth: Length; doorSet: Length; front: Length; bumper: Length; backGap: Length; cut: CutStep },
  Length
>(
  {
    id: 'boxes.depth',
    plain: 'shallower return − door set-back − leaf − bumper − gap behind, down to the cut step',
    source: 'common practice, no source',
    from: {
      returnDepth: [returns, breastSize],
      doorSet: { id: 'door.set-back' },
      front: frontThickness,
      bumper: { id: 'door.bumper' },
      backGap,
    },
  },
  ({ cut, ...of }) => cut.down(less(of.returnDepth, of.doorSet, of.front, of.bumper, of.backGap)),
)

const reach = formula<{ front: Length; bumper: Length }, Length>(
  {
    id: 'box.leaf-reach',
    plain: 'leaf + bumper',
    source: 'common practice, no source',
    from: { front: frontThickness, bumper: { id: 'door.bumper' } },
  },
  ({ front, bumper }) => sum(front, bumper),
)

/** How far the leaf stands off the box front with its bumper; 0 without doors. */
export const leafReach = (context: PlanContext): Length =>
  hasDoors(context)
    ? reach({ front: frontThicknessOf(context), bumper: context.figures.length('door.bumper') })
    : frontThicknessOf(context)

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
      const value = depthBehindBreast({ returnDepth, doorSet, front, bumper, backGap: backGapOf(context, run), cut })
      const behind = { value, because: 'the door faces stay behind the breast face' }
      const usual = figures.length('box.depth-flat')
      return run.wall.kind === 'flat' && behind.value > usual
        ? { value: usual, because: 'a usual depth, behind the breast face' }
        : behind
    }),
  })
}
