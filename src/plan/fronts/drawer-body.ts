import { carcassThickness } from '../../job/chapters/cabinets.ts'
import { drawerSide, slide, slideSheet } from '../../job/chapters/drawers.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, shortest, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { BOX_BOTTOM, BOX_HEIGHT, BOX_WIDTH } from './box-refs.ts'

const PRACTICE = 'common practice, no source'

/** Outside width of a drawer box: the box inside, less the slides' room at both sides. */
export const drawerWidth = formula<
  { boxWidth: Length; carcassThickness: Length; slideClear: Length; cut: CutStep },
  Length
>(
  {
    id: 'fronts.drawer-width',
    plain: 'box − 2 · side of the box − 2 · clearance of the slide, down',
    source: 'geometry',
    from: { boxWidth: BOX_WIDTH, slideClear: [slideSheet, { id: 'slide.side.clear' }, { id: 'slide.under.clear' }] },
  },
  ({ boxWidth, carcassThickness, slideClear, cut }) =>
    cut.down(less(boxWidth, times(carcassThickness, 2), times(slideClear, 2))),
)

/** Outside height of a drawer box: lower than its front, and clear of what is under and over it. */
export const drawerHeight = formula<
  { frontHeight: Length; frontOver: Length; opening: Length; slideBelow: Length; above: Length; cut: CutStep },
  Length
>(
  {
    id: 'fronts.drawer-height',
    plain: 'the smaller of front − what the front is higher, and opening − room under it − room above it, down',
    source: PRACTICE,
    from: {
      frontHeight: { id: 'fronts.drawer-front-height' },
      slideBelow: [slideSheet, { id: 'slide.side.below' }, { id: 'slide.under.below' }],
    },
  },
  ({ frontHeight, frontOver, opening, slideBelow, above, cut }) =>
    cut.down(shortest(less(frontHeight, frontOver), less(opening, slideBelow, above))),
)

/** Upper face of a box's bottom. */
export const insideFloor = formula<{ boxBottom: Length; carcassThickness: Length }, Length>(
  {
    id: 'fronts.inside-floor',
    plain: 'lower edge of the box + its bottom',
    source: 'geometry',
    from: { boxBottom: BOX_BOTTOM },
  },
  ({ boxBottom, carcassThickness }) => sum(boxBottom, carcassThickness),
)

/** Lower face of a box's top. */
export const insideCeiling = formula<{ boxBottom: Length; boxHeight: Length; carcassThickness: Length }, Length>(
  {
    id: 'fronts.inside-ceiling',
    plain: 'lower edge of the box + its height − its top',
    source: 'geometry',
    from: { boxBottom: BOX_BOTTOM, boxHeight: BOX_HEIGHT },
  },
  ({ boxBottom, boxHeight, carcassThickness }) => less(sum(boxBottom, boxHeight), carcassThickness),
)

/** Height between the panels, rails or neighbours a drawer runs between. */
export const drawerOpening = formula<{ openingTop: Length; openingBottom: Length }, Length>(
  {
    id: 'fronts.opening',
    plain: 'underside of what is over it − top of what is under it',
    source: 'geometry',
    from: {
      openingTop: [insideCeiling, { id: 'fronts.rail-bottom' }],
      openingBottom: [insideFloor, { id: 'fronts.rail-top' }],
    },
    units: { openingTop: 'length', openingBottom: 'length' },
  },
  ({ openingTop, openingBottom }) => less(openingTop, openingBottom),
)

/** Inside depth that is free for drawers: less the nailer where it stands inside the box. */
export const freeDepth = formula<{ insideDepth: Length; nailer: Length }, Length>(
  {
    id: 'fronts.free-depth',
    plain: 'inside depth − nailer behind the drawer',
    source: 'geometry',
    from: { nailer: carcassThickness },
  },
  ({ insideDepth, nailer }) => less(insideDepth, nailer),
)

/** The longest slide sold that goes in with its room behind; undefined when none does. */
export const slideLength = formula<
  { freeDepth: Length; slideBehind: Length; sold: readonly Length[] },
  Length | undefined
>(
  {
    id: 'fronts.slide-length',
    plain: 'longest slide sold that is not longer than the free depth − room behind it',
    source: PRACTICE,
    from: { slideBehind: { id: 'slide.behind' }, sold: slide },
    units: { sold: 'length' },
  },
  ({ freeDepth: depth, slideBehind, sold }) => sold.findLast((length) => length <= less(depth, slideBehind)),
)

/** Length of the drawer box's front and back, between its sides. */
export const drawerEndLength = formula<{ drawerWidth: Length; drawerSide: Length }, Length>(
  {
    id: 'fronts.drawer-end',
    plain: 'drawer width − 2 · drawer side',
    source: 'geometry',
    from: { drawerSide: [drawerSide, { id: 'drawer.side' }] },
  },
  ({ drawerWidth: width, drawerSide: side }) => less(width, times(side, 2)),
)

const inGrooves = (given: { outside: Length; drawerSide: Length; groove: Length; grooveClear: Length; cut: CutStep }) =>
  given.cut.down(sum(less(given.outside, times(given.drawerSide, 2)), less(times(given.groove, 2), given.grooveClear)))
const IN_GROOVES = {
  source: 'geometry',
  from: {
    drawerSide: [drawerSide, { id: 'drawer.side' }],
    groove: { id: 'back.groove' },
    grooveClear: { id: 'back.groove-clear' },
  },
} as const

interface Bottom {
  readonly drawerSide: Length
  readonly groove: Length
  readonly grooveClear: Length
  readonly cut: CutStep
}

/** The drawer bottom across, in grooves of its sides. */
export const drawerBottomWidth = formula<Bottom & { drawerWidth: Length }, Length>(
  {
    ...IN_GROOVES,
    id: 'fronts.drawer-bottom-width',
    plain: 'drawer width − 2 · drawer side + 2 · groove − play, down',
  },
  ({ drawerWidth: outside, ...rest }) => inGrooves({ outside, ...rest }),
)

/** The drawer bottom from front to back, in grooves of its front and back. */
export const drawerBottomLength = formula<Bottom & { slideLength: Length }, Length>(
  {
    ...IN_GROOVES,
    id: 'fronts.drawer-bottom-length',
    plain: 'slide length − 2 · drawer side + 2 · groove − play, down',
  },
  ({ slideLength: outside, ...rest }) => inGrooves({ outside, ...rest }),
)

/** Screw line of the slides from the box's lower edge: a set-out number. */
export const slideLine = formula<{ drawerBottom: Length; boxBottom: Length; slideUp: Length; cut: CutStep }, Length>(
  {
    id: 'fronts.slide-line',
    plain: 'drawer box’s lower edge − lower edge of the box + screw line of the slide above it, near',
    source: PRACTICE,
    from: { boxBottom: BOX_BOTTOM, slideUp: [slideSheet, { id: 'slide.side.line' }, { id: 'slide.under.line' }] },
    units: { drawerBottom: 'length' },
  },
  ({ drawerBottom, boxBottom, slideUp, cut }) => cut.near(sum(less(drawerBottom, boxBottom), slideUp)),
)
