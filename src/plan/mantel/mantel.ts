import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import { mantelDepth, mantelFrieze, mantelLength, mantelUnderside } from '../../job/chapters/mantel.ts'
import { type Contribution, merged } from '../../things/contribution.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import type { JointDraft } from '../../things/joint.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Area } from '../../units/area.ts'
import { type Length, less, longest, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall, Survey } from '../survey/survey.ts'
import { piecesTooClose, type TooClose, woodTooClose } from './clearance.ts'
import { type Firebox, fireboxOf } from './firebox.ts'
import { mantelPastBreast, mantelTooShallow } from './mantel-messages.ts'
import { leastMantel, mantelParts } from './mantel-parts.ts'
import { type ChosenMantel, type MantelSize, mantelPieces, mantelSize } from './mantel-size.ts'
import { type BreastFace, breastFace } from './masonry-face.ts'
import { screenOn } from './screen.ts'

/** What stands on one breast, in the bay's own x. */
export interface Breast {
  readonly bay: NamedBay
  readonly opening: FaceRectangle | undefined
  readonly mantel: MantelSize | undefined
  readonly screen: FaceRectangle | undefined
  /** Masonry to be painted, roughness counted; 0 when it is not painted. */
  readonly paintedFace: Area
  /** Id of the fuel that burns in it. */
  readonly fuel: string
  readonly waitsFor: readonly QuestionKey[]
}

/** A breast with the fire in it, as the wood round it is checked. */
export interface Hearth {
  readonly wall: BreastWall
  readonly fire: Firebox
}

export interface MantelPlan {
  readonly hearths: readonly Hearth[]
  readonly breasts: readonly Breast[]
  /** Highest mantel top of the wall; undefined without a mantel. */
  readonly mantelTop: Length | undefined
  readonly contribution: Contribution
}

/** Firebox, mantel, screen and face of every breast. Mantels stand on the breast alone: legs beside the opening are not built. */
export function mantels(context: PlanContext, survey: Survey): MantelPlan {
  const built = survey.walls.flatMap((wall) => (wall.kind === 'breast' ? [breastOf(context, wall)] : []))
  const [first, ...others] = built.flatMap(({ breast }) => (breast.mantel === undefined ? [] : [breast.mantel.top]))
  return {
    hearths: built.map((b) => b.hearth),
    breasts: built.map((b) => b.breast),
    mantelTop: first === undefined ? undefined : longest(first, ...others),
    contribution: merged(...built.map((b) => b.contribution)),
  }
}

function breastOf(
  context: PlanContext,
  wall: BreastWall,
): { readonly hearth: Hearth; readonly breast: Breast; readonly contribution: Contribution } {
  const fire = fireboxOf(context, wall)
  const chosen = mantelSize(context, wall, fire)
  const mantel = chosen?.size
  const face = breastFace(context, wall, { fire, mantel })
  const screen = screenOn(context, wall, { fire, mantel })
  const waitsFor = [...wall.waits.widths, ...fire.waitsFor]
  return {
    hearth: { wall, fire },
    breast: {
      bay: wall.bay,
      opening: fire.opening,
      mantel,
      screen: screen.at,
      paintedFace: face.painted,
      fuel: fire.fuel.id,
      waitsFor: [...waitsFor, ...screen.waitsFor],
    },
    contribution: {
      parts:
        mantel === undefined
          ? []
          : mantelParts({ context, wall, size: mantel, hole: screen.hole, holeWaits: screen.waitsFor, waitsFor }),
      joints: [...(mantel === undefined ? [] : mantelJoints(wall, mantel, face, waitsFor)), ...face.joints],
      messages: [
        ...fire.messages,
        ...(chosen === undefined ? [] : mantelMessages(context, wall, fire, chosen)),
        ...screen.messages,
      ],
    },
  }
}

const mantelMessages = (
  context: PlanContext,
  wall: BreastWall,
  fire: Firebox,
  chosen: ChosenMantel,
): readonly Message[] => [
  ...tooClose(context, wall, fire, chosen),
  ...pastBreast(context, wall, chosen.size),
  ...tooShallow(context, wall, chosen.size),
]

function tooClose(context: PlanContext, wall: BreastWall, fire: Firebox, chosen: ChosenMantel): readonly Message[] {
  const { show } = context
  if (fire.opening === undefined) return []
  return piecesTooClose(fire.opening, mantelPieces(chosen.size), fire.rules).map((close) =>
    raise(
      woodTooClose,
      {
        about: questionKey(wall.bay.id, mantelUnderside),
        place: wall.bay.name,
        part: `${wall.bay.id}/mantel/frieze`,
        fixes: fixesFor(context, wall, chosen, close),
      },
      {
        piece: close.piece.what,
        out: show.withUnit(close.piece.standsOut),
        distance: show.withUnit(close.distance),
        most: close.mostOut === 'none' ? 'no wood at all' : `${show.withUnit(context.cut.down(close.mostOut))} at most`,
        rule: close.rule.says,
        nearest: nearestThatPasses(context, chosen, close),
      },
    ),
  )
}

function nearestThatPasses({ show, cut }: PlanContext, chosen: ChosenMantel, close: TooClose): string {
  const raised = chosen.lowest === undefined ? [] : [`raise the underside to ${show.withUnit(chosen.lowest)}`]
  const less = close.mostOut === 'none' ? [] : [`let it stand out ${show.withUnit(cut.down(close.mostOut))} or less`]
  const text = [...raised, ...less].join(', or ')
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}. The local code and the manual may ask for more.`
}

function fixesFor(context: PlanContext, wall: BreastWall, chosen: ChosenMantel, close: TooClose): readonly Fix[] {
  const { show, cut } = context
  const at = (field: Parameters<typeof questionKey>[1], value: Length) => [
    { key: questionKey(wall.bay.id, field), value },
  ]
  const raised =
    chosen.lowest === undefined
      ? []
      : [{ says: `underside at ${show.withUnit(chosen.lowest)}`, answers: at(mantelUnderside, chosen.lowest) }]
  if (close.mostOut === 'none') return raised
  const behindTop = less(chosen.size.depth, close.piece.standsOut)
  const depth = cut.down(sum(close.mostOut, behindTop))
  return depth < leastMantel(context, chosen.size.panel).depth
    ? raised
    : [...raised, { says: `mantel ${show.withUnit(depth)} deep`, answers: at(mantelDepth, depth) }]
}

function pastBreast({ figures, show, cut }: PlanContext, wall: BreastWall, size: MantelSize): readonly Message[] {
  const longestInside = cut.down(less(wall.width, times(figures.length('mantel.breast-clear'), 2)))
  if (size.length <= longestInside) return []
  const values = {
    length: show.withUnit(size.length),
    breast: show.withUnit(wall.width),
    longest: show.withUnit(longestInside),
  }
  return [raise(mantelPastBreast, { about: questionKey(wall.bay.id, mantelLength), place: wall.bay.name }, values)]
}

function tooShallow(context: PlanContext, wall: BreastWall, size: MantelSize): readonly Message[] {
  const { show } = context
  const least = leastMantel(context, size.panel)
  const checks = [
    { field: mantelDepth, what: 'deep', is: size.depth, least: least.depth },
    { field: mantelFrieze, what: 'high at its frieze', is: size.frieze, least: least.frieze },
  ]
  return checks
    .filter((c) => c.is < c.least)
    .map((c) =>
      raise(
        mantelTooShallow,
        {
          about: questionKey(wall.bay.id, c.field),
          place: wall.bay.name,
          fixes: [
            {
              says: `${show.withUnit(c.least)} ${c.what}`,
              answers: [{ key: questionKey(wall.bay.id, c.field), value: c.least }],
            },
          ],
        },
        { what: c.what, is: show.withUnit(c.is), least: show.withUnit(c.least) },
      ),
    )
}

function mantelJoints(
  { bay }: BreastWall,
  size: MantelSize,
  face: BreastFace,
  waitsFor: readonly QuestionKey[],
): readonly JointDraft[] {
  const joint = (id: string, where: string, length: Length, ends: JointDraft['ends']): JointDraft => ({
    id: `${bay.id}/mantel/${id}`,
    bay: bay.id,
    where: `mantel, ${where}`,
    length,
    gap1: face.gap,
    gap2: face.gap,
    ends,
    colour: face.rough ? 'built-in' : 'wall',
    twoColours: true,
    waitsFor,
  })
  return [
    joint('top-wall', 'top to the face', size.length, ['left', 'right']),
    joint('soffit-wall', 'underside to the face', size.beamLength, ['left', 'right']),
    joint('end-left', 'left end', size.frieze, ['foot', 'top']),
    joint('end-right', 'right end', size.frieze, ['foot', 'top']),
  ]
}
