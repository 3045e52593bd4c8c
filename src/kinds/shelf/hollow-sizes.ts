import { formula } from '../../things/formula.ts'
import { type Length, less, over, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'

// Inputs named like a question (`shelfThickness`, `skinThickness`, `edgeThickness`) or a formula's id (`shelfDepth`) find it.

/** Height of the hollow between the skins, T − 2t. */
export const shelfVoid = formula(
  { id: 'shelf.void', plain: 'shelf thickness − 2 × skin', source: 'geometry' },
  (of: { readonly shelfThickness: Length; readonly skinThickness: Length }): Length =>
    less(of.shelfThickness, times(of.skinThickness, 2)),
)

/** Depth of what lies behind the front edge: skins and end pieces. */
export const shelfBehindEdge = formula(
  { id: 'shelf.behind-edge', plain: 'shelf depth − front edge', source: 'geometry' },
  (of: { readonly shelfDepth: Length; readonly edgeThickness: Length }): Length =>
    less(of.shelfDepth, of.edgeThickness),
)

/** Depth of the same pieces as sawn: the back edge is scribed to the wall on site. */
export const shelfRoughDepth = formula(
  {
    id: 'shelf.rough-depth',
    plain: 'depth behind the front edge + spare for scribing the back, up to the cut step',
    source: 'common practice, no source',
  },
  (of: { readonly behindEdge: Length; readonly spareDepth: Length; readonly cut: CutStep }): Length =>
    of.cut.up(sum(of.behindEdge, of.spareDepth)),
)

/** Length of a skin at the back or at the front, between the end pieces that cover it. */
export const skinLength = formula(
  {
    id: 'shelf.skin-length',
    plain: 'length of the shelf there − an edge thickness at each free end',
    source: 'geometry',
    from: { bodyLength: { id: 'body.length' } },
    units: { freeEnds: 'count' },
  },
  (of: { readonly bodyLength: Length; readonly freeEnds: number; readonly edgeThickness: Length }): Length =>
    less(of.bodyLength, times(of.edgeThickness, of.freeEnds)),
)

/** Length a skin is sawn at: its whole outline and what is trimmed on site. */
export const skinRoughLength = formula(
  {
    id: 'shelf.skin-rough-length',
    plain: 'board it takes − an edge thickness at each free end + left long, up to the cut step',
    source: 'common practice, no source',
    from: { extent: [{ id: 'body.extent' }, { id: 'body.length' }], leftLong: { id: 'shelf.long' } },
    units: { freeEnds: 'count' },
  },
  (of: {
    readonly extent: Length
    readonly freeEnds: number
    readonly edgeThickness: Length
    readonly leftLong: Length
    readonly cut: CutStep
  }): Length => of.cut.up(sum(less(of.extent, times(of.edgeThickness, of.freeEnds)), of.leftLong)),
)

/** Length the front edge is sawn at. */
export const edgeRoughLength = formula(
  {
    id: 'shelf.edge-rough-length',
    plain: 'front length + left long, up to the cut step',
    source: 'common practice, no source',
    from: { front: { id: 'body.length' }, leftLong: { id: 'shelf.long' } },
  },
  (of: { readonly front: Length; readonly leftLong: Length; readonly cut: CutStep }): Length =>
    of.cut.up(sum(of.front, of.leftLong)),
)

/** Ribs a shelf gets, its ends not counted: ⌈length / pitch⌉ − 1. */
export const ribCount = formula(
  {
    id: 'shelf.ribs',
    plain: 'back length / rib pitch, up to a whole number, − 1',
    source: 'common practice, no source',
    gives: 'count',
    from: { back: { id: 'body.length' } },
  },
  (of: { readonly back: Length; readonly ribPitch: Length }): number => Math.ceil(of.back / of.ribPitch) - 1,
)

/** Length of a rib, from the front edge to the space of the back cleat. */
export const ribLength = formula(
  {
    id: 'shelf.rib-length',
    plain: 'shelf depth − front edge − cleat depth − play, down to the cut step',
    source: 'geometry',
  },
  (of: {
    readonly shelfDepth: Length
    readonly edgeThickness: Length
    readonly cleatDepth: Length
    readonly cleatPlay: Length
    readonly cut: CutStep
  }): Length => of.cut.down(less(of.shelfDepth, of.edgeThickness, of.cleatDepth, of.cleatPlay)),
)

/** How far the outermost ribs stand in from the ends, so that a side cleat enters between, a slanting end too. */
export const endRibInset = formula(
  {
    id: 'shelf.end-rib-inset',
    plain: 'cleat depth + room beyond the cleat + how far the end slants',
    source: 'common practice, no source',
    from: { ribEnd: { id: 'shelf.rib-end' }, slant: { id: 'body.slant' } },
  },
  (of: { readonly cleatDepth: Length; readonly ribEnd: Length; readonly slant: Length }): Length =>
    sum(of.cleatDepth, of.ribEnd, of.slant),
)

/** Height of a cleat: the hollow less the play that lets the shelf slide over it. */
export const cleatHeight = formula(
  { id: 'cleat.height', plain: 'hollow − slip, down to half the cut step', source: 'common practice, no source' },
  (of: { readonly shelfVoid: Length; readonly shelfSlip: Length; readonly cut: CutStep }): Length =>
    of.cut.downHalf(less(of.shelfVoid, of.shelfSlip)),
)

/** Upper edge of the cleats: half the slip stays open over and under them. */
export const cleatTop = formula(
  {
    id: 'cleat.top',
    plain: 'shelf top − skin − slip / 2',
    source: 'geometry',
    from: { shelfTop: [{ id: 'shelfHeights' }, { id: 'shelf.heights' }] },
  },
  (of: { readonly shelfTop: Length; readonly skinThickness: Length; readonly shelfSlip: Length }): Length =>
    less(of.shelfTop, of.skinThickness, over(of.shelfSlip, 2)),
)

/** Room the back cleat leaves at one end: for the side cleat at a wall, for the end piece at a free end. */
export const cleatRoom = formula(
  {
    id: 'cleat.room',
    plain: 'what stands at that end (side cleat, or end piece) + play',
    source: 'geometry',
    from: { standing: [{ id: 'cleat.depth' }, { id: 'edgeThickness' }] },
  },
  (of: { readonly standing: Length; readonly cleatPlay: Length }): Length => sum(of.standing, of.cleatPlay),
)

/** Length of the back cleat, between what stands at the two ends. */
export const backCleatLength = formula(
  {
    id: 'cleat.back-length',
    plain: 'back length − room at the left end − room at the right end, down to the cut step',
    source: 'geometry',
    from: { back: { id: 'body.length' }, roomLeft: cleatRoom, roomRight: cleatRoom },
  },
  (of: {
    readonly back: Length
    readonly roomLeft: Length
    readonly roomRight: Length
    readonly cut: CutStep
  }): Length => of.cut.down(less(of.back, of.roomLeft, of.roomRight)),
)

/** Length of a side cleat, behind the front edge. */
export const sideCleatLength = formula(
  {
    id: 'cleat.side-length',
    plain: 'shelf depth − front edge − play, down to the cut step',
    source: 'geometry',
  },
  (of: {
    readonly shelfDepth: Length
    readonly edgeThickness: Length
    readonly cleatPlay: Length
    readonly cut: CutStep
  }): Length => of.cut.down(less(of.shelfDepth, of.edgeThickness, of.cleatPlay)),
)
