import {
  backThickness,
  boxDepth,
  boxHeight,
  boxWidths,
  carcassThickness,
  tallHeight,
} from '../../job/chapters/cabinets.ts'
import { formula, type Ref } from '../../things/formula.ts'
import { type Length, less, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'

/** Where the outer sizes of a box come from. */
const OUTER_WIDTH: readonly Ref[] = [{ id: 'boxes.widths' }, boxWidths]
const OUTER_HEIGHT: readonly Ref[] = [{ id: 'box.height' }, boxHeight, tallHeight]

/** Depth of the boxes of a run without doors: what was asked or suggested, to the cut step. */
export const wholeDepth = formula<{ wanted: Length; cut: CutStep }, Length>(
  { id: 'box.depth', plain: 'wanted depth, down to the cut step', source: 'geometry', from: { wanted: boxDepth } },
  ({ wanted, cut }) => cut.down(wanted),
)

/** Between the sides: length of bottom, top, rails and nailers. Down, so that a box is never wider than its place. */
export const insideWidth = formula<{ boxWidth: Length; carcassThickness: Length; cut: CutStep }, Length>(
  {
    id: 'box.inside-width',
    plain: 'box width − 2 × panel, down to the cut step',
    source: 'geometry',
    from: { boxWidth: OUTER_WIDTH },
  },
  ({ boxWidth, carcassThickness: t, cut }) => cut.down(less(boxWidth, times(t, 2))),
)

/** Between bottom and top: length of an upright divider. */
export const insideHeight = formula<{ boxHeight: Length; carcassThickness: Length; cut: CutStep }, Length>(
  {
    id: 'box.inside-height',
    plain: 'box height − 2 × panel, down to the cut step',
    source: 'geometry',
    from: { boxHeight: OUTER_HEIGHT },
  },
  ({ boxHeight: height, carcassThickness: t, cut }) => cut.down(less(height, times(t, 2))),
)

/** From the inner face of the back to the box front. A grooved back stands one panel in from the rear. */
export const insideDepth = formula<{ boxDepth: Length; backThickness: Length; behindBack: Length }, Length>(
  {
    id: 'box.inside-depth',
    plain: 'box depth − back − what is behind the back',
    source: 'geometry',
    from: { behindBack: carcassThickness },
  },
  ({ boxDepth: depth, backThickness: back, behindBack }) => less(depth, back, behindBack),
)

/** Depth of sides, bottom and top: an applied back lies behind them. */
export const shellDepth = formula<{ boxDepth: Length; behind: Length; cut: CutStep }, Length>(
  {
    id: 'box.shell-depth',
    plain: 'box depth − a back applied behind, down to the cut step',
    source: 'geometry',
    from: { behind: backThickness },
  },
  // The hair that is lost stays behind the back.
  ({ boxDepth: depth, behind, cut }) => cut.down(less(depth, behind)),
)

const OUTER = [...OUTER_WIDTH, ...OUTER_HEIGHT]

/** Width or height of a back applied behind the sides, eased at both edges. */
export const appliedBack = formula<{ outer: Length; ease: Length; cut: CutStep }, Length>(
  {
    id: 'box.back-applied',
    plain: 'box size − 2 × ease, down to the cut step',
    source: 'common practice, no source',
    from: { outer: OUTER, ease: { id: 'back.ease' } },
  },
  ({ outer, ease, cut }) => cut.down(less(outer, times(ease, 2))),
)

/** Width or height of a back in grooves, with play in them. */
export const groovedBack = formula<
  { outer: Length; carcassThickness: Length; groove: Length; grooveClear: Length; cut: CutStep },
  Length
>(
  {
    id: 'box.back-grooved',
    plain: 'box size − 2 × panel + 2 × groove − clearance, down to the cut step',
    source: 'common practice, no source',
    from: { outer: OUTER, groove: { id: 'back.groove' }, grooveClear: { id: 'back.groove-clear' } },
  },
  ({ outer, carcassThickness: t, groove, grooveClear, cut }) =>
    cut.down(sum(less(outer, times(t, 2)), less(times(groove, 2), grooveClear))),
)

/** Widths between the sides and the dividers of a box, from the left. `dividers` = left faces from the box's left outer edge. */
export const compartmentWidths = formula<
  { boxWidth: Length; carcassThickness: Length; dividers: readonly Length[] },
  readonly Length[]
>(
  {
    id: 'box.compartments',
    plain: 'from the inner face of a side or divider to the next one',
    source: 'geometry',
    from: { boxWidth: OUTER_WIDTH, dividers: { id: 'box.partition-at' } },
  },
  ({ boxWidth, carcassThickness: t, dividers }) => {
    const ends = [...dividers, less(boxWidth, t)]
    const starts = [t, ...dividers.map((x) => sum(x, t))]
    return ends.map((end, i) => less(end, starts[i] ?? t))
  },
)

/** Length of a fixed shelf: it enters between two uprights. */
export const fixedShelfLength = formula<{ compartment: Length; cut: CutStep }, Length>(
  {
    id: 'box.fixed-shelf-length',
    plain: 'space between the uprights, down to the cut step',
    source: 'geometry',
    from: { compartment: compartmentWidths },
  },
  ({ compartment, cut }) => cut.down(compartment),
)

/** Depth of dividers and fixed shelves, less a nailer they would meet. */
export const partitionDepth = formula<{ insideDepth: Length; nailer: Length; cut: CutStep }, Length>(
  {
    id: 'box.partition-depth',
    plain: 'inside depth − a nailer in its way, down to the cut step',
    source: 'geometry',
    from: { nailer: carcassThickness },
  },
  ({ insideDepth: depth, nailer, cut }) => cut.down(less(depth, nailer)),
)

/** Length of a loose shelf, with play between the uprights. */
export const looseShelfLength = formula<{ compartment: Length; clear: Length; cut: CutStep }, Length>(
  {
    id: 'box.loose-shelf-length',
    plain: 'space between the uprights − clearance, down to the cut step',
    source: 'common practice, no source',
    from: { compartment: compartmentWidths, clear: { id: 'loose-shelf.clear' } },
  },
  ({ compartment, clear, cut }) => cut.down(less(compartment, clear)),
)

/** Depth of a loose shelf, behind the box front. */
export const looseShelfDepth = formula<{ insideDepth: Length; setBack: Length; cut: CutStep }, Length>(
  {
    id: 'box.loose-shelf-depth',
    plain: 'inside depth − set-back, down to the cut step',
    source: 'common practice, no source',
    from: { setBack: { id: 'loose-shelf.set-back' } },
  },
  ({ insideDepth: depth, setBack, cut }) => cut.down(less(depth, setBack)),
)

/** Near face of an upright or level partition, from the box's left outer edge or underside. */
export const partitionAt = formula<{ middle: Length; carcassThickness: Length; cut: CutStep }, Length>(
  {
    id: 'box.partition-at',
    plain: 'its middle − half its thickness, to the nearest cut step',
    source: 'geometry',
    from: { middle: [{ id: 'partitions' }, { id: 'box.partition-even' }] },
  },
  ({ middle, carcassThickness: t, cut }) => cut.near(less(middle, times(t, HALF))),
)
const HALF = 0.5

/** Middle of the `place`-th of `count` partitions that share a box evenly. */
export const evenPartition = formula<
  { boxSize: Length; carcassThickness: Length; count: number; place: number },
  Length
>(
  {
    id: 'box.partition-even',
    plain: 'panel ÷ 2 + place × (box size − panel) ÷ (partitions + 1)',
    source: 'geometry',
    from: { boxSize: OUTER },
    units: { count: 'count', place: 'count' },
  },
  ({ boxSize, carcassThickness: t, count, place }) => sum(times(t, HALF), times(less(boxSize, t), place / (count + 1))),
)
