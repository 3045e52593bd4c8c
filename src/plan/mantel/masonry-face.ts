import { edgeAt, stationsBetween } from '../../geometry/edge.ts'
import { type FaceRectangle, rightOf, topOf } from '../../geometry/face-rectangle.ts'
import { face, opening, paintFace, paintHeat } from '../../job/chapters/firebox.ts'
import { mantelLength } from '../../job/chapters/mantel.ts'
import { ceiling } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import { formula } from '../../things/formula.ts'
import type { JointDraft } from '../../things/joint.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import { type Area, areaOf, squareMetres } from '../../units/area.ts'
import { type Length, less, longest, over, shortest, sum, times, ZERO } from '../../units/length.ts'
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
  /** What is masked before it is painted, in words. */
  readonly masking: readonly string[]
  readonly joints: readonly JointDraft[]
  readonly messages: readonly Message[]
}

export const paintNearFire = messageKind<{ kept: string }>({
  code: 'C17',
  weight: 'confirm',
  source: 'the sheet of the paint’s tin; common practice, no source',
  says: (v) => ({
    short: 'How much heat the masonry paint bears near the opening is not known.',
    why: `Ordinary masonry paint blisters, smells and may burn on a face that grows hot; it is planned ${v.kept}, never inside the firebox.`,
    todo: 'Read the sheet of the tin, feel the face after a long fire, and enter how far the paint stays from the opening.',
  }),
})

/** Area of masonry that is painted, its roughness counted. */
const paintedArea = formula(
  {
    id: 'masonry.painted',
    plain: '(face to the ceiling − opening and what its heat keeps bare − what the mantel covers) × roughness',
    source: 'common practice, no source',
    gives: 'area',
    units: { wholeFace: 'area', bare: 'area', covered: 'area', roughness: 'number' },
  },
  (of: { readonly wholeFace: Area; readonly bare: Area; readonly covered: Area; readonly roughness: number }): Area =>
    squareMetres(Math.max(0, of.wholeFace - of.bare - of.covered) * of.roughness),
)

/** Length of tape round what is not painted: the opening, both edges of the breast, and under the mantel. */
const maskingTape = formula(
  {
    id: 'masonry.masking',
    plain: '2 × (opening width + height) + 2 × face height + mantel length',
    source: 'common practice, no source',
    from: { openingWidth: opening, openingHeight: opening, faceHeight: ceiling, mantelLength },
  },
  (of: {
    readonly openingWidth: Length
    readonly openingHeight: Length
    readonly faceHeight: Length
    readonly mantelLength: Length
  }): Length => sum(times(sum(of.openingWidth, of.openingHeight, of.faceHeight), 2), of.mantelLength),
)

interface On {
  readonly fire: Firebox
  readonly mantel: MantelSize | undefined
}

/** Reads face and painting of a breast, and works out its painted area without the opening and the mantel on it. */
export function breastFace(context: PlanContext, wall: BreastWall, on: On): BreastFace {
  const { settle, figures } = context
  const kind = settle.choice(face, wall.bay, () => ({
    value: 'brick' as const,
    origin: 'assumed',
    because: 'the usual breast, until you have looked',
  }))
  const painting = settle.choice(paintFace, wall.bay, () => ({ value: true, because: 'one colour with the built-ins' }))
  const rough = kind !== 'smooth'
  const bare = { rough, painted: squareMetres(0), gap: figures.length(rough ? 'masonry.gap' : 'scribe.fit') }
  if (!painting) return { ...bare, masking: [], joints: [], messages: [] }
  const kept = keptOff(context, wall, on.fire)
  const covered = standingOn(on.mantel)
  return {
    ...bare,
    painted: paintedArea({
      wholeFace: faceToCeiling(wall),
      bare: bareRound(wall, on.fire.opening, kept.distance),
      covered: squareMetres(covered.reduce((area, r) => area + areaOf(r.width, r.height), 0)),
      roughness: figures.number(`roughness.${kind}`),
    }),
    masking: maskingWords(context, wall, on),
    joints: colourLines(wall),
    messages: kept.messages,
  }
}

/** How far the paint stays from the opening; asked about while nobody has read its tin. */
function keptOff(
  { settle }: PlanContext,
  { bay }: BreastWall,
  fire: Firebox,
): { readonly distance: Length; readonly messages: readonly Message[] } {
  if (!fire.fuel.burns || fire.opening === undefined) return { distance: ZERO, messages: [] }
  const answered = settle.asked(paintHeat, bay)
  const where = { about: questionKey(bay.id, paintHeat), place: bay.name }
  return answered === undefined
    ? { distance: ZERO, messages: [raise(paintNearFire, where, { kept: 'up to the edge of the opening' })] }
    : { distance: answered, messages: [] }
}

/** The opening with a band at its sides and over it, as far as the face reaches. */
function bareRound({ width, lowestCeiling }: BreastWall, at: FaceRectangle | undefined, band: Length): Area {
  if (at === undefined) return squareMetres(0)
  const left = longest(ZERO, less(at.x, band))
  const right = shortest(width, sum(rightOf(at), band))
  const top = shortest(lowestCeiling, sum(topOf(at), band))
  return areaOf(less(right, left), longest(ZERO, less(top, at.z)))
}

const standingOn = (mantel: MantelSize | undefined): readonly FaceRectangle[] =>
  mantel === undefined
    ? []
    : [...beamPieces(mantel), ...(mantel.legs === undefined ? [] : legPieces(mantel.legs))].map(({ at }) => at)

function maskingWords({ show }: PlanContext, wall: BreastWall, { fire, mantel }: On): readonly string[] {
  const tape = maskingTape({
    openingWidth: fire.opening?.width ?? ZERO,
    openingHeight: fire.opening?.height ?? ZERO,
    faceHeight: wall.lowestCeiling,
    mantelLength: mantel?.length ?? ZERO,
  })
  return [
    `${wall.bay.name}: before its masonry is painted, tape round the opening, both edges of the face and where the mantel comes, ${show.withUnit(tape)} in all; the firebox is never painted inside.`,
  ]
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
