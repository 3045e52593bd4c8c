import { formula, within } from '../../things/formula.ts'
import type { Joint } from '../../things/joint.ts'
import type { Part } from '../../things/part.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import { type Length, less, longest, nanometres, ZERO } from '../../units/length.ts'
import type { RunnableWall, Survey } from '../survey/survey.ts'

/** Wall seen above the new work of a bay, painted corner to corner: width × (ceiling − crown − top of the work). */
export const wallAbove = formula(
  {
    id: 'coating.wall-area',
    plain: 'width × (lowest ceiling − crown − top of what stands before the wall)',
    source: 'geometry',
    gives: 'area',
  },
  (given: { readonly width: Length; readonly ceiling: Length; readonly crown: Length; readonly top: Length }): Area =>
    areaOf(given.width, longest(less(given.ceiling, given.crown, given.top), ZERO)),
)

export interface WallWork {
  readonly survey: Survey
  readonly parts: readonly Part[]
  readonly joints: readonly Joint[]
}

/** Areas together, m². */
export const wallInAll = formula(
  {
    id: 'coating.wall',
    plain: 'wall of every bay, together',
    source: 'geometry',
    gives: 'area',
    from: { areas: wallAbove },
    units: { areas: 'area' },
  },
  ({ areas }: { readonly areas: readonly Area[] }): Area =>
    squareMetres(areas.reduce((total, area) => total + area, 0)),
)

/** m² of wall to paint corner to corner: every alcove or flat bay where something is built. */
export const wholeWalls = ({ survey, parts }: WallWork): Area =>
  wallInAll({
    areas: survey.walls.flatMap((wall) => {
      if (wall.kind === 'breast' || !parts.some((part) => part.bay === wall.bay.id)) return []
      return [within(wall.bay.id, () => wallAbove(sizesOf(wall, parts)))]
    }),
  })

const sizesOf = (wall: RunnableWall, parts: readonly Part[]) => ({
  width: wall.width,
  ceiling: wall.lowestCeiling,
  crown: wall.crown.drop,
  top: topOfWork(wall, parts),
})

/** Top of what stands on the floor before the wall; shelves leave the wall behind them to be painted. */
function topOfWork(wall: RunnableWall, parts: readonly Part[]): Length {
  const standing = parts.filter((part) => part.bay === wall.bay.id && !isShelf(part))
  return standing.reduce((top, { placement }) => longest(top, nanometres(placement.z + placement.dz)), ZERO)
}

const isShelf = (part: Part): boolean => /-[HC]\d+$/.test(part.mark)

/** Strips along joints, m²: the length of all of them × the width of a strip. */
export const stripArea = formula(
  {
    id: 'coating.strips',
    plain: 'length of the joints in the wall’s colour × width of a strip',
    source: 'common practice, no source',
    gives: 'area',
    from: { strip: { id: 'touch-up.strip' } },
  },
  ({ lengths, strip }: { readonly lengths: readonly Length[]; readonly strip: Length }): Area =>
    squareMetres(lengths.reduce((area, length) => area + areaOf(length, strip), 0)),
)

/** m² of strips along the joints painted in the wall's colour, where the same tin is at hand. */
export const wallStrips = (joints: readonly Joint[], strip: Length): Area =>
  stripArea({
    lengths: joints.filter((joint) => joint.colour === 'wall' && joint.twoColours).map((joint) => joint.length),
    strip,
  })
