import { formula } from '../../things/formula.ts'
import { type Length, less, longest, nanometres, over, shortest, size, sum, times } from '../../units/length.ts'
import type { CutStep } from '../../units/round.ts'
import { leftSideAt, rightSideAt, widthAt } from '../survey/outline.ts'
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

/** Depth at which a board enters the recess: the front of the shorter return, or where the front was measured. */
export const mouthDepth = (wall: AlcoveWall): Length => wall.depth ?? wall.frontDepth

/** Free width at a depth, the least over the board's two faces. */
export const leastWidth = ({ wall, from, to }: Pick<Recess, 'wall' | 'from' | 'to'>, y: Length): Length =>
  shortest(widthAt(wall, from, y), widthAt(wall, to, y))

/** Length of an end that has its play on both sides. */
const between = formula(
  {
    id: 'body.length',
    plain: 'free width − 2 × play, down to the cut step',
    source: 'geometry',
  },
  (of: { readonly free: Length; readonly play: Length; readonly cut: CutStep }): Length =>
    of.cut.down(less(of.free, times(of.play, 2))),
)

/** The board that slides straight back into the recess: it follows the walls where they open outward, else its ends are parallel. */
export const slidInBody = (recess: Recess): BodyShape =>
  leastWidth(recess, mouthDepth(recess.wall)) >= leastWidth(recess, nanometres(0))
    ? followingBody(recess)
    : parallelBody(recess)

/** A board whose ends follow the two returns, each with its own offset. */
export function followingBody(recess: Recess): BodyShape {
  const { wall, to, depth, play, cut } = recess
  const back = between({ free: leastWidth(recess, nanometres(0)), play, cut })
  const front = between({ free: leastWidth(recess, depth), play, cut })
  return {
    shape: 'follows walls',
    depth,
    back,
    front,
    x: centred(wall, to, back),
    ...endOffsets(recess),
    extent: fullExtent(recess),
    gapBack: play,
    gapFront: play,
  }
}

/** A board no longer than the mouth, both ends cut to the slant of the recess's centre line, so that it stays clear all the way in. */
export function parallelBody(recess: Recess): BodyShape {
  const { wall, to, depth, play, cut } = recess
  const back = between({ free: leastWidth(recess, mouthDepth(wall)), play, cut })
  const { offsetLeft, offsetRight } = endOffsets(recess)
  const offset = over(sum(offsetLeft, offsetRight), 2)
  return {
    shape: 'parallel',
    depth,
    back,
    front: back,
    x: centred(wall, to, back),
    offsetLeft: offset,
    offsetRight: offset,
    extent: sum(back, size(offset)),
    gapBack: over(less(leastWidth(recess, nanometres(0)), back), 2),
    gapFront: over(less(leastWidth(recess, depth), back), 2),
  }
}

const centred = (wall: AlcoveWall, z: Length, back: Length): Length =>
  sum(leftSideAt(wall, z, nanometres(0)), over(less(widthAt(wall, z, nanometres(0)), back), 2))

const endOffsets = ({ wall, to, depth }: Recess): Pick<BodyShape, 'offsetLeft' | 'offsetRight'> => ({
  offsetLeft: less(leftSideAt(wall, to, depth), leftSideAt(wall, to, nanometres(0))),
  offsetRight: less(rightSideAt(wall, to, depth), rightSideAt(wall, to, nanometres(0))),
})

/** From the leftmost point of the outline to the rightmost, over the depth and the two faces. */
function fullExtent({ wall, from, to, depth }: Recess): Length {
  const rights = [rightSideAt(wall, from, depth), rightSideAt(wall, to, nanometres(0)), rightSideAt(wall, to, depth)]
  const lefts = [leftSideAt(wall, from, depth), leftSideAt(wall, to, nanometres(0)), leftSideAt(wall, to, depth)]
  return less(
    longest(rightSideAt(wall, from, nanometres(0)), ...rights),
    shortest(leftSideAt(wall, from, nanometres(0)), ...lefts),
  )
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
