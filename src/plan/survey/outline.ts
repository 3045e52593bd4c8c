import { roundedQuotient, stationsBetween } from '../../geometry/edge.ts'
import { rising } from '../../geometry/edge-line.ts'
import { returns } from '../../job/chapters/wall.ts'
import { formula, type Ref } from '../../things/formula.ts'
import { type Length, less, nanometres } from '../../units/length.ts'
import { edgeReading } from './reading.ts'
import type { AlcoveWall, RunnableWall } from './survey.ts'

/** Names of where the two returns stand, for what leans on them. */
export const LEFT_SIDE = { id: 'recess.left-side' }
export const RIGHT_SIDE = { id: 'recess.right-side' }

interface AtDepth {
  /** Where the return stands at the back wall and at its front edge, at one height. */
  readonly back: Length
  readonly front: Length
  /** Depth it is read at, and depth the front was measured at. */
  readonly depth: Length
  readonly frontDepth: Length
}

const DEPTHS: readonly Ref[] = [
  { id: 'counter.depth' },
  { id: 'shelf.depth' },
  { id: 'kick.face' },
  returns,
  { id: 'survey.assumed-depth' },
]

const sideAt = (id: string, which: string) =>
  formula<AtDepth, Length>(
    {
      id,
      plain: `the ${which} return at that height: between its back corner and its front edge, in proportion to the depth`,
      source: 'geometry',
      from: { back: edgeReading, front: edgeReading, depth: DEPTHS, frontDepth: DEPTHS },
      units: { depth: 'length' },
    },
    ({ back, front, depth, frontDepth }) => atDepth(back, front, depth, frontDepth),
  )
const leftSide = sideAt(LEFT_SIDE.id, 'left')
const rightSide = sideAt(RIGHT_SIDE.id, 'right')

/** x of the left return at height z and depth y: linear from the back edge to the front edge. */
export const leftSideAt = ({ left, frontDepth }: AlcoveWall, z: Length, y: Length): Length =>
  leftSide({
    back: edgeReading({ edge: left.back, at: z }),
    front: edgeReading({ edge: left.front, at: z }),
    depth: y,
    frontDepth,
  })

/** x of the right return at height z and depth y. */
export const rightSideAt = ({ right, frontDepth }: AlcoveWall, z: Length, y: Length): Length =>
  rightSide({
    back: edgeReading({ edge: right.back, at: z }),
    front: edgeReading({ edge: right.front, at: z }),
    depth: y,
    frontDepth,
  })

/** Width between the two returns at one height and depth. */
export const recessWidth = formula<{ right: Length; left: Length }, Length>(
  {
    id: 'recess.width',
    plain: 'right return − left return, at that height and depth',
    source: 'geometry',
    from: { right: RIGHT_SIDE, left: LEFT_SIDE },
  },
  ({ right, left }) => less(right, left),
)

/** Free width between the returns at height z and depth y. */
export const widthAt = (wall: AlcoveWall, z: Length, y: Length): Length =>
  recessWidth({ right: rightSideAt(wall, z, y), left: leftSideAt(wall, z, y) })

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
