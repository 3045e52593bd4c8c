import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import { type Contribution, merged } from '../../things/contribution.ts'
import type { QuestionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { NamedBay } from '../../things/place.ts'
import type { Area } from '../../units/area.ts'
import { type Length, longest } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { TradeCall } from '../devices/device-opening.ts'
import type { BreastWall, Survey } from '../survey/survey.ts'
import { breastDevicesOf } from './breast-devices.ts'
import type { CableRoute } from './cable.ts'
import { type Firebox, fireboxOf } from './firebox.ts'
import { legMessages } from './leg-checks.ts'
import { beamMessages } from './mantel-checks.ts'
import { mantelJoints } from './mantel-joints.ts'
import { mantelParts } from './mantel-parts.ts'
import { type MantelSize, mantelSize } from './mantel-size.ts'
import { breastFace } from './masonry-face.ts'
import { screenOn } from './screen.ts'

/** What stands on one breast, in the bay's own x. */
export interface Breast {
  readonly bay: NamedBay
  readonly opening: FaceRectangle | undefined
  readonly mantel: MantelSize | undefined
  readonly screen: FaceRectangle | undefined
  /** The way of the screen's cable. */
  readonly cable: Pick<CableRoute, 'way' | 'to' | 'says'>
  /** Masonry to be painted, roughness counted; 0 when it is not painted. */
  readonly paintedFace: Area
  /** What is masked before the face is painted, in words. */
  readonly masking: readonly string[]
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
  /** Devices on a breast's face to be moved by a licensed trade. */
  readonly trades: readonly TradeCall[]
  readonly contribution: Contribution
}

/** Firebox, mantel with its legs, screen and face of every breast. */
export function mantels(context: PlanContext, survey: Survey): MantelPlan {
  const built = survey.walls.flatMap((wall) =>
    wall.kind === 'breast' ? [within(wall.bay.id, () => breastOf(context, wall))] : [],
  )
  const [first, ...others] = built.flatMap(({ breast }) => (breast.mantel === undefined ? [] : [breast.mantel.top]))
  return {
    hearths: built.map((b) => b.hearth),
    breasts: built.map((b) => b.breast),
    mantelTop: first === undefined ? undefined : longest(first, ...others),
    trades: built.flatMap((b) => b.trades),
    contribution: merged(...built.map((b) => b.contribution)),
  }
}

function breastOf(
  context: PlanContext,
  wall: BreastWall,
): {
  readonly hearth: Hearth
  readonly breast: Breast
  readonly contribution: Contribution
  readonly trades: readonly TradeCall[]
} {
  const fire = fireboxOf(context, wall)
  const chosen = mantelSize(context, wall, fire)
  const mantel = chosen?.size
  const face = breastFace(context, wall, { fire, mantel })
  const screen = screenOn(context, wall, { fire, mantel })
  const devices = breastDevicesOf(context, wall, { fire, mantel, screen: screen.at })
  const waitsFor = [...wall.waits.widths, ...fire.waitsFor]
  return {
    hearth: { wall, fire },
    trades: devices.trades,
    breast: {
      bay: wall.bay,
      opening: fire.opening,
      mantel,
      screen: screen.at,
      cable: screen.cable,
      paintedFace: face.painted,
      masking: face.masking,
      fuel: fire.fuel.id,
      waitsFor: [...waitsFor, ...screen.waitsFor],
    },
    contribution: {
      parts:
        mantel === undefined
          ? []
          : mantelParts({
              context,
              wall,
              size: mantel,
              holes: screen.cable.holes,
              holeWaits: screen.waitsFor,
              waitsFor,
            }),
      joints: [...(mantel === undefined ? [] : mantelJoints(wall, mantel, face, waitsFor)), ...face.joints],
      messages: [
        ...fire.messages,
        ...(chosen === undefined
          ? []
          : [...beamMessages(context, wall, fire, chosen), ...legMessages(context, wall, fire, chosen.size)]),
        ...face.messages,
        ...screen.messages,
        ...devices.messages,
      ],
    },
  }
}
