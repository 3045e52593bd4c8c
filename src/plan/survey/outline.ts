import { edgeAt, roundedQuotient, stationsBetween } from '../../geometry/edge.ts'
import { rising } from '../../geometry/edge-line.ts'
import { type Length, less, nanometres } from '../../units/length.ts'
import type { AlcoveWall, RunnableWall } from './survey.ts'

/** Names of where the two returns stand, for what leans on them. */
export const LEFT_SIDE = { id: 'recess.left-side' }
export const RIGHT_SIDE = { id: 'recess.right-side' }

/** x of the left return at height z and depth y: linear from the back edge to the front edge. */
export const leftSideAt = (wall: AlcoveWall, z: Length, y: Length): Length =>
  atDepth(edgeAt(wall.left.back, z), edgeAt(wall.left.front, z), y, wall.frontDepth)

/** x of the right return at height z and depth y. */
export const rightSideAt = (wall: AlcoveWall, z: Length, y: Length): Length =>
  atDepth(edgeAt(wall.right.back, z), edgeAt(wall.right.front, z), y, wall.frontDepth)

/** Free width between the returns at height z and depth y. */
export const widthAt = (wall: AlcoveWall, z: Length, y: Length): Length =>
  less(rightSideAt(wall, z, y), leftSideAt(wall, z, y))

/** Straight line from `back` (depth 0) to `front` (depth `full`), read at depth `y`, beyond it too; one rounding, to the nm. */
export function atDepth(back: Length, front: Length, y: Length, full: Length): Length {
  if (full <= 0 || back === front) return back
  return nanometres(back + Number(roundedQuotient(BigInt(front - back) * BigInt(y), BigInt(full))))
}

/** Both ends of a height band and every surveyed height between them: where the outline's extremes can lie. */
export const outlineStations = (wall: AlcoveWall, from: Length, to: Length): readonly Length[] =>
  rising(
    [wall.left.back, wall.left.front, wall.right.back, wall.right.front].flatMap((edge) =>
      stationsBetween(edge, from, to),
    ),
  )

/** Depth of the recess a run stands in: the shorter return of an alcove, or the breast beside a flat wall; undefined without either. */
export const recessDepth = (wall: RunnableWall): Length | undefined =>
  wall.kind === 'alcove' ? wall.depth : wall.besideBreast
