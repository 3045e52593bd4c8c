import { formula } from '../../things/formula.ts'
import { type Length, less, over, sum, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { PlanContext } from '../context.ts'
import type { Run } from '../run/slot.ts'
import type { HandleChoice } from './door-choices.ts'
import type { DrawerHole, LeafHole } from './front.ts'
import type { LeafMake } from './leaves.ts'

const PRACTICE = 'common practice, no source'

/** Nearest hole below the top of a tall leaf, so that the handle's middle is at its height above the floor. */
export const tallHandle = formula<{ leafTop: Length; tallHeight: Length; pullSpacing: Length }, Length>(
  {
    id: 'fronts.handle-tall',
    plain: 'top of the leaf above the floor − height of the handle − half the distance of its holes',
    source: PRACTICE,
  },
  ({ leafTop, tallHeight, pullSpacing }) => less(leafTop, tallHeight, over(pullSpacing, 2)),
)

/** Upper hole below the top of a leaf that hangs high: its handle stands above the leaf's lower edge. */
export const highHandle = formula<{ leafHeight: Length; wallUp: Length; pullSpacing: Length }, Length>(
  {
    id: 'fronts.handle-high',
    plain: 'leaf height − nearest hole above its bottom − distance of the holes',
    source: PRACTICE,
  },
  ({ leafHeight, wallUp, pullSpacing }) => less(leafHeight, wallUp, pullSpacing),
)

/** Where a leaf stands on the wall. */
export interface LeafHeights {
  readonly run: Pick<Run, 'kind'>
  readonly bottom: Length
  readonly top: Length
}

/**
 * Holes of a leaf's handle. Base leaf: the nearest hole a hand below the leaf's top; tall leaf: the handle's middle at a
 * height above the floor, where the leaf reaches it with a hand to spare; one that hangs above it: near its lower edge.
 */
export function handleHoles(context: PlanContext, make: LeafMake, leaf: LeafHeights): readonly LeafHole[] {
  const { figures } = context
  const { handle, spacing } = make.handle
  if (handle.holes === 0) return []
  const fromHandleEdge = make.kind.handleIn({ frame: make.frame, figures })
  const first = upperHole(context, make.handle, leaf)
  return [first, ...(handle.holes === 2 ? [sum(first, spacing)] : [])].map((fromTop) => ({ fromHandleEdge, fromTop }))
}

function upperHole({ figures }: PlanContext, { spacing }: HandleChoice, { run, bottom, top }: LeafHeights): Length {
  const down = figures.length('handle.base-down')
  if (run.kind === 'base') return down
  const tallHeight = figures.length('handle.tall-height')
  const wallUp = figures.length('handle.wall-up')
  if (less(top, tallHeight, over(spacing, 2)) < down) return down
  return less(tallHeight, over(spacing, 2), bottom) < wallUp
    ? highHandle({ leafHeight: less(top, bottom), wallUp, pullSpacing: spacing })
    : tallHandle({ leafTop: top, tallHeight, pullSpacing: spacing })
}

interface DrawerHandle {
  readonly frontWidth: Length
  readonly share: number
  readonly holeAside: Length
  readonly cut: CutStep
}

/** A hole of a drawer's handle from the left edge of its front: the handle's middle, and its hole aside of that. */
export const drawerHoleFromLeft = formula<DrawerHandle, Length>(
  {
    id: 'fronts.drawer-hole-left',
    plain: 'front width × share of the handle’s middle, and half the distance of its holes aside, near',
    source: PRACTICE,
    from: { frontWidth: { id: 'fronts.drawer-front-width' } },
    units: { share: 'number' },
  },
  ({ frontWidth, share, holeAside, cut }) => cut.near(sum(over(frontWidth, 1 / share), holeAside)),
)

/** Holes of a drawer's handle below the top of its front: in its middle. */
export const drawerHoleFromTop = formula<{ frontHeight: Length; cut: CutStep }, Length>(
  {
    id: 'fronts.drawer-hole-top',
    plain: 'front height ÷ 2, near',
    source: PRACTICE,
    from: { frontHeight: { id: 'fronts.drawer-front-height' } },
  },
  ({ frontHeight, cut }) => cut.near(over(frontHeight, 2)),
)

/** One handle in the middle; two on a wide front, each in the middle of its half. */
export const handleShares = (context: PlanContext, width: Length): readonly number[] =>
  width > context.figures.length('drawer.two-handles') ? [1 / 4, 3 / 4] : [1 / 2]

/** Holes of a drawer front, from its left edge and its top. */
export function drawerHoles(
  context: PlanContext,
  { handle, spacing }: HandleChoice,
  front: { readonly width: Length; readonly height: Length },
): readonly DrawerHole[] {
  if (handle.holes === 0) return []
  const { cut } = context
  const fromTop = drawerHoleFromTop({ frontHeight: front.height, cut })
  const aside = handle.holes === 2 ? [less(ZERO, over(spacing, 2)), over(spacing, 2)] : [ZERO]
  return handleShares(context, front.width).flatMap((share) =>
    aside.map((holeAside) => ({
      fromLeft: drawerHoleFromLeft({ frontWidth: front.width, share, holeAside, cut }),
      fromTop,
    })),
  )
}
