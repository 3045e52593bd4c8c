import { drawers as drawersField } from '../../job/chapters/drawers.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import type { FrontsAsked } from './drawer-choice.ts'

/** What the drawers of a box have to share: the face less the heights asked for and the gaps between the drawers. */
export const drawerRoom = formula<{ faceHeight: Length; askedHigh: Length; gap: Length; drawers: number }, Length>(
  {
    id: 'fronts.drawer-room',
    plain: 'face − heights asked for − gaps between the drawers',
    source: 'geometry',
    from: { askedHigh: drawersField },
    units: { drawers: 'count' },
  },
  ({ faceHeight, askedHigh, gap, drawers }) => less(faceHeight, askedHigh, times(gap, drawers - 1)),
)

/** Height of each drawer front that none was asked for. */
export const drawerShare = formula<{ drawerRoom: Length; sharing: number; cut: CutStep }, Length>(
  {
    id: 'fronts.drawer-share',
    plain: 'room ÷ drawers that share it, down to half a step',
    source: 'geometry',
    units: { sharing: 'count' },
  },
  ({ drawerRoom: room, sharing, cut }) => cut.downHalf(over(room, sharing)),
)

/** What rounding leaves over of the room: the lowest front takes it. */
export const drawerLeftOver = formula<{ drawerRoom: Length; drawerShare: Length; sharing: number }, Length>(
  {
    id: 'fronts.drawer-left-over',
    plain: 'room − shares',
    source: 'geometry',
    units: { sharing: 'count' },
  },
  ({ drawerRoom: room, drawerShare: share, sharing }) => less(room, times(share, sharing)),
)

/** Height of one drawer front. */
export const drawerFrontHeight = formula<{ frontHeight: Length; more: Length }, Length>(
  {
    id: 'fronts.drawer-front-height',
    plain: 'height asked for, or its share; the lowest front and what is left over',
    source: 'geometry',
    from: { frontHeight: [drawersField, drawerShare], more: [drawerLeftOver, drawerRoom] },
  },
  ({ frontHeight, more }) => sum(frontHeight, more),
)

/** What the drawers of a box leave for leaves. */
export const leafHeightBeside = formula<{ drawerRoom: Length; gap: Length }, Length>(
  { id: 'fronts.leaf-height', plain: 'room the drawers leave − the gap to them', source: 'geometry' },
  ({ drawerRoom: room, gap }) => less(room, gap),
)

/** One front: its height, and what is added to the lowest. */
export interface FrontHeight {
  readonly frontHeight: Length
  readonly more: Length
}

/** Fronts top to bottom, and what they leave for leaves. */
export interface DrawerHeights {
  readonly fronts: readonly FrontHeight[]
  /** Undefined when the drawers fill the box. */
  readonly leaf: Length | undefined
  /** What the heights asked for leave that is no room for a leaf; under 0: how much too high they are. Undefined when they fit. */
  readonly misfit: Length | undefined
}

interface Given {
  readonly faceHeight: Length
  readonly gap: Length
  readonly asked: FrontsAsked
  /** A leaf lower than this is none. */
  readonly leastLeaf: Length
  readonly cut: CutStep
}

/**
 * Fronts of one box: those without a height share what the others leave, what rounding leaves goes to the lowest of them;
 * with a height for each, leaves take the rest. Heights that do neither give equal fronts, and the misfit to be said.
 */
export function drawerHeights(given: Given): DrawerHeights {
  const { faceHeight, gap, asked, leastLeaf, cut } = given
  const askedHigh = sum(ZERO, ...asked.map((height) => height ?? ZERO))
  const room = drawerRoom({ faceHeight, askedHigh, gap, drawers: asked.length })
  if (asked.includes(undefined)) return room > 0 ? filling(given, room) : { ...equal(given), misfit: room }
  const fits = (more: Length, leaf: Length | undefined): DrawerHeights => ({
    fronts: asked.map((height, i) => ({ frontHeight: height ?? ZERO, more: i === asked.length - 1 ? more : ZERO })),
    leaf,
    misfit: undefined,
  })
  // What is less than a step cannot be read off a tape: the lowest front takes it.
  if (room >= 0 && room < cut.step) return fits(room, undefined)
  return less(room, gap) >= leastLeaf
    ? fits(ZERO, leafHeightBeside({ drawerRoom: room, gap }))
    : { ...equal(given), misfit: room }
}

function filling({ asked, cut }: Given, room: Length): DrawerHeights {
  const blanks = asked.flatMap((height, i) => (height === undefined ? [i] : []))
  const share = drawerShare({ drawerRoom: room, sharing: blanks.length, cut })
  const left = drawerLeftOver({ drawerRoom: room, drawerShare: share, sharing: blanks.length })
  const lowest = blanks[blanks.length - 1]
  const fronts = asked.map((height, i) => ({ frontHeight: height ?? share, more: i === lowest ? left : ZERO }))
  return { fronts, leaf: undefined, misfit: undefined }
}

function equal(given: Given): DrawerHeights {
  const asked = given.asked.map(() => undefined)
  const { faceHeight, gap } = given
  return filling({ ...given, asked }, drawerRoom({ faceHeight, askedHigh: ZERO, gap, drawers: asked.length }))
}
