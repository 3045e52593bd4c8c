import { edgeAt, stationsBetween } from '../../geometry/edge.ts'
import { face, paintFace } from '../../job/chapters/firebox.ts'
import type { JointDraft } from '../../things/joint.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import { type Length, less, over, sum, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import type { Firebox } from './firebox.ts'
import { legPieces } from './mantel-legs.ts'
import { beamPieces, type MantelSize } from './mantel-size.ts'

/** The face of a breast: how rough it is, what is painted of it, and how a straight piece meets it. */
export interface BreastFace {
  readonly rough: boolean
  /** Masonry to be painted, its roughness counted; 0 when it is not painted. */
  readonly painted: Area
  /** Gap of a straight piece set against it. */
  readonly gap: Length
  readonly joints: readonly JointDraft[]
}

/** Reads face and painting of a breast, and works out its painted area without the opening and the mantel on it. */
export function breastFace(
  { settle, figures }: PlanContext,
  wall: BreastWall,
  on: { readonly fire: Firebox; readonly mantel: MantelSize | undefined },
): BreastFace {
  const kind = settle.choice(face, wall.bay, () => ({
    value: 'brick' as const,
    origin: 'assumed',
    because: 'the usual breast, until you have looked',
  }))
  const painting = settle.choice(paintFace, wall.bay, () => ({ value: true, because: 'one colour with the built-ins' }))
  const rough = kind !== 'smooth'
  const bare = nakedFace(wall, on.fire, on.mantel)
  return {
    rough,
    painted: squareMetres(painting ? bare * figures.number(`roughness.${kind}`) : 0),
    gap: figures.length(rough ? 'masonry.gap' : 'scribe.fit'),
    joints: painting ? colourLines(wall) : [],
  }
}

/** Area of the face up to the ceiling, less the opening and what the mantel covers. */
function nakedFace(wall: BreastWall, fire: Firebox, mantel: MantelSize | undefined): Area {
  const covered =
    mantel === undefined
      ? []
      : [...beamPieces(mantel), ...(mantel.legs === undefined ? [] : legPieces(mantel.legs))].map((p) => p.at)
  const off = [...(fire.opening === undefined ? [] : [fire.opening]), ...covered]
  const rest = off.reduce<number>((area, r) => area - areaOf(r.width, r.height), faceToCeiling(wall))
  return squareMetres(Math.max(0, rest))
}

function faceToCeiling({ ceiling, width }: BreastWall): Area {
  const stations = stationsBetween(ceiling, ZERO, width)
  const strips = stations.slice(1).map((to, i) => {
    const from = stations[i] ?? ZERO
    return areaOf(less(to, from), over(sum(edgeAt(ceiling, from), edgeAt(ceiling, to)), 2))
  })
  return squareMetres(strips.reduce<number>((total, a) => total + a, 0))
}

/** Where the masonry's colour meets walls and ceiling. */
const colourLines = (wall: BreastWall): readonly JointDraft[] => [
  colourLine(wall, 'face-left', 'masonry face, left edge', edgeAt(wall.ceiling, ZERO)),
  colourLine(wall, 'face-right', 'masonry face, right edge', edgeAt(wall.ceiling, wall.width)),
  colourLine(wall, 'face-ceiling', 'masonry face to the ceiling', wall.width),
]

const colourLine = ({ bay, waits }: BreastWall, id: string, where: string, length: Length): JointDraft => ({
  id: `${bay.id}/${id}`,
  bay: bay.id,
  where,
  length,
  gap1: ZERO,
  gap2: ZERO,
  ends: id === 'face-ceiling' ? ['left', 'right'] : ['foot', 'top'],
  colour: 'wall',
  twoColours: true,
  waitsFor: [...waits.widths, ...waits.ceiling],
})
