import { formula } from '../../things/formula.ts'
import { type Length, less, longest, nanometres, over, shortest, size, sum, times, ZERO } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { LEFT_SIDE, leftSideAt, outlineStations, RIGHT_SIDE, recessWidth, rightSideAt } from '../survey/outline.ts'
import type { AlcoveWall } from '../survey/survey.ts'

/** A board that follows a recess, seen in plan: a trapezium, or parallel ends along the recess's centre line. */
export interface BodyShape {
  readonly shape: 'follows walls' | 'parallel'
  readonly depth: Length
  readonly back: Length
  readonly front: Length
  /** x of the back left corner, in the bay's own x. */
  readonly x: Length
  /** How far each end moves over the depth, + to the right. */
  readonly offsetLeft: Length
  readonly offsetRight: Length
  /** Length of board it is cut from, without spare. */
  readonly extent: Length
  /** Gap each side at the back corner and at the front edge. */
  readonly gapBack: Length
  readonly gapFront: Length
}

export interface Recess {
  readonly wall: AlcoveWall
  /** Lower and upper face of the board. */
  readonly from: Length
  readonly to: Length
  readonly depth: Length
  /** Gap kept at each end. */
  readonly play: Length
  readonly cut: CutStep
}

/** Width a plumb board finds: the lean between its two faces is taken up by the play of one end, what is more counts. */
const boardWidth = formula(
  {
    id: 'body.board-width',
    plain: 'least free width of the two faces; at most the width clear of both returns over the whole thickness + play',
    source: 'geometry',
    from: { least: recessWidth, clear: recessWidth, play: [{ id: 'shelf.play' }, { id: 'counter.play' }] },
  },
  (of: { readonly least: Length; readonly clear: Length; readonly play: Length }): Length =>
    shortest(of.least, sum(of.clear, of.play)),
)

/** Length of a board with its play at each walled end. */
export const bodyLength = formula(
  {
    id: 'body.length',
    plain: 'free width − play at each end that meets a wall, down to the cut step',
    source: 'geometry',
    from: {
      free: [boardWidth, recessWidth, { id: 'shelf.length' }],
      play: [{ id: 'shelf.play' }, { id: 'counter.play' }],
    },
    units: { walledEnds: 'count' },
  },
  (of: { readonly free: Length; readonly play: Length; readonly walledEnds: number; readonly cut: CutStep }): Length =>
    of.cut.down(less(of.free, times(of.play, of.walledEnds))),
)

/** How far one return runs off square over the depth of the board, + to the right. */
const endOffset = formula(
  {
    id: 'body.end-offset',
    plain: 'where the return stands at the front − where it stands at the back',
    source: 'geometry',
    from: { front: [LEFT_SIDE, RIGHT_SIDE], back: [LEFT_SIDE, RIGHT_SIDE] },
  },
  (of: { readonly front: Length; readonly back: Length }): Length => less(of.front, of.back),
)

/** How far the middle of the recess runs off square: both ends of a parallel board run so. */
const middleOffset = formula(
  {
    id: 'body.middle-offset',
    plain: '(left offset + right offset) / 2',
    source: 'geometry',
    from: { left: endOffset, right: endOffset },
  },
  (of: { readonly left: Length; readonly right: Length }): Length => over(sum(of.left, of.right), 2),
)

/** Board a trapezium takes: from the leftmost point of its outline to the rightmost. */
const outlineExtent = formula(
  {
    id: 'body.extent',
    plain: 'the rightmost point of the recess − the leftmost, over the depth and thickness of the board',
    source: 'geometry',
    from: { rights: RIGHT_SIDE, lefts: LEFT_SIDE },
  },
  (of: { readonly rights: readonly Length[]; readonly lefts: readonly Length[] }): Length => {
    const [right = ZERO, ...rights] = of.rights
    const [left = ZERO, ...lefts] = of.lefts
    return less(longest(right, ...rights), shortest(left, ...lefts))
  },
)

/** Board a shape with parallel slanting ends takes. */
const slantedExtent = formula(
  {
    id: 'body.extent',
    plain: 'length + how far the ends run off square',
    source: 'geometry',
    from: { length: bodyLength, offset: middleOffset },
  },
  (of: { readonly length: Length; readonly offset: Length }): Length => sum(of.length, size(of.offset)),
)

/** The gap each side of a board that stands in the middle of its recess. */
const bodyGap = formula(
  {
    id: 'body.gap',
    plain: '(free width − length) / 2',
    source: 'geometry',
    from: { free: recessWidth, length: bodyLength },
  },
  (of: { readonly free: Length; readonly length: Length }): Length => over(less(of.free, of.length), 2),
)

/** Where the back left corner stands, in the bay's own x: the gap at both ends is the same. */
const bodyX = formula(
  {
    id: 'body.x',
    plain: 'left return + the gap at the back',
    source: 'geometry',
    from: { left: LEFT_SIDE, gap: bodyGap },
  },
  (of: { readonly left: Length; readonly gap: Length }): Length => sum(of.left, of.gap),
)

/** Depth at which a board enters the recess: the front of the shorter return, or where the front was measured. */
export const mouthDepth = (wall: AlcoveWall): Length => wall.depth ?? wall.frontDepth

/** Free width at a depth, the least over the board's two faces. */
export const leastWidth = ({ wall, from, to }: Pick<Recess, 'wall' | 'from' | 'to'>, y: Length): Length =>
  shortest(widthThere(wall, from, y), widthThere(wall, to, y))

const widthThere = (wall: AlcoveWall, z: Length, y: Length): Length =>
  recessWidth({ right: rightSideAt(wall, z, y), left: leftSideAt(wall, z, y) })

/** Both returns over the whole thickness of a board, where they stand farthest in: its faces, and a ledge between them. */
function clearOf({ wall, from, to }: Pick<Recess, 'wall' | 'from' | 'to'>, y: Length) {
  const [first = to, ...others] = outlineStations(wall, from, to)
  return {
    left: longest(leftSideAt(wall, first, y), ...others.map((z) => leftSideAt(wall, z, y))),
    right: shortest(rightSideAt(wall, first, y), ...others.map((z) => rightSideAt(wall, z, y))),
  }
}

const widthForBoard = (recess: Recess, y: Length): Length =>
  boardWidth({ least: leastWidth(recess, y), clear: recessWidth(clearOf(recess, y)), play: recess.play })

/** The board that slides straight back into the recess: it follows the walls where they open outward, else its ends are parallel. */
export const slidInBody = (recess: Recess): BodyShape =>
  leastWidth(recess, mouthDepth(recess.wall)) >= leastWidth(recess, ZERO) ? followingBody(recess) : parallelBody(recess)

const bothWalled = ({ play, cut }: Recess) => ({ play, walledEnds: 2, cut })

/** A board whose ends follow the two returns, each with its own offset. */
export function followingBody(recess: Recess): BodyShape {
  const { depth, play } = recess
  const back = bodyLength({ free: widthForBoard(recess, ZERO), ...bothWalled(recess) })
  const front = bodyLength({ free: widthForBoard(recess, depth), ...bothWalled(recess) })
  return {
    shape: 'follows walls',
    depth,
    back,
    front,
    x: centred(recess, back),
    ...endOffsets(recess),
    extent: fullExtent(recess),
    gapBack: play,
    gapFront: play,
  }
}

/** A board no longer than the mouth, both ends cut to the slant of the recess's centre line, so that it stays clear all the way in. */
export function parallelBody(recess: Recess): BodyShape {
  const back = bodyLength({ free: widthForBoard(recess, mouthDepth(recess.wall)), ...bothWalled(recess) })
  const { offsetLeft, offsetRight } = endOffsets(recess)
  const offset = middleOffset({ left: offsetLeft, right: offsetRight })
  return {
    shape: 'parallel',
    depth: recess.depth,
    back,
    front: back,
    x: centred(recess, back),
    offsetLeft: offset,
    offsetRight: offset,
    extent: slantedExtent({ length: back, offset }),
    gapBack: bodyGap({ free: leastWidth(recess, ZERO), length: back }),
    gapFront: bodyGap({ free: leastWidth(recess, recess.depth), length: back }),
  }
}

function centred(recess: Recess, back: Length): Length {
  const clear = clearOf(recess, ZERO)
  return bodyX({ left: clear.left, gap: bodyGap({ free: recessWidth(clear), length: back }) })
}

const endOffsets = ({ wall, to, depth }: Recess): Pick<BodyShape, 'offsetLeft' | 'offsetRight'> => ({
  offsetLeft: endOffset({ front: leftSideAt(wall, to, depth), back: leftSideAt(wall, to, ZERO) }),
  offsetRight: endOffset({ front: rightSideAt(wall, to, depth), back: rightSideAt(wall, to, ZERO) }),
})

/** From the leftmost point of the outline to the rightmost, over the depth and the two faces. */
function fullExtent({ wall, from, to, depth }: Recess): Length {
  const corners = [from, to].flatMap((z) => [ZERO, depth].map((y) => ({ z, y })))
  return outlineExtent({
    rights: corners.map(({ z, y }) => rightSideAt(wall, z, y)),
    lefts: corners.map(({ z, y }) => leftSideAt(wall, z, y)),
  })
}

/** A square board on a wall without returns. */
export const squareBody = (of: { readonly x: Length; readonly length: Length; readonly depth: Length }): BodyShape => ({
  shape: 'follows walls',
  depth: of.depth,
  back: of.length,
  front: of.length,
  x: of.x,
  offsetLeft: nanometres(0),
  offsetRight: nanometres(0),
  extent: of.length,
  gapBack: nanometres(0),
  gapFront: nanometres(0),
})
