import type { CodeProfile } from '../../figures/code-profiles.ts'
import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import { clearanceRule, fuel, opening } from '../../job/chapters/firebox.ts'
import { CODE_NOT_KNOWN, profilesOf } from '../../kinds/fuel/code-rules.ts'
import type { FuelKind } from '../../kinds/fuel/contract.ts'
import { FUELS } from '../../kinds/fuel/list.ts'
import type { WoodRule } from '../../kinds/fuel/wood-rule.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, over, shortest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { codeNeedsReading, codeNotKnown } from './firebox-messages.ts'
import { type Hearthstone, hearthstoneOf } from './hearth-facts.ts'
import { manualFacts } from './manual-facts.ts'
import { type MasonryFacts, masonryFacts } from './masonry-facts.ts'

/** The opening of one breast, what burns in it, and what that asks of wood. */
export interface Firebox {
  readonly fuel: FuelKind
  readonly opening: FaceRectangle | undefined
  /** The codes that count here; none for what heats no masonry. */
  readonly profiles: readonly CodeProfile[]
  readonly rules: readonly WoodRule[]
  /** How far the manual lets wood stand out; undefined where no manual speaks. */
  readonly manualOut: Length | undefined
  /** Whether the breast's sides grow hot, and how thick its masonry is there. */
  readonly masonry: MasonryFacts
  readonly hearth: Hearthstone | undefined
  readonly waitsFor: readonly QuestionKey[]
  readonly messages: readonly Message[]
}

/** Reads the firebox of a breast. What is not measured stands at the dangerous assumption: an open fire, a wide opening. */
export function fireboxOf(context: PlanContext, wall: BreastWall): Firebox {
  const { settle, figures } = context
  const { bay } = wall
  const burning = settle.measured(fuel, bay, () => ({
    value: 'open-fire' as const,
    because: 'the strictest, until you have looked',
  }))
  const kind: FuelKind = FUELS[burning.value]
  const measured = settle.measured(opening, bay, () => ({
    value: assumedOpening(context, wall),
    because: 'in the middle, until it is measured',
  }))
  const rectangle = rectangleFrom(measured.value)
  const code = kind.heatsMasonry ? codeOf(context, bay) : undefined
  const profiles = code === undefined ? [] : profilesOf(code, figures)
  const manual = manualFacts(context, bay, kind)
  const masonry = masonryFacts(context, wall, {
    kind,
    opening: measured.waitsFor.length > 0 ? undefined : rectangle,
  })
  const hearth = hearthstoneOf(context, bay, { kind, opening: rectangle, profiles })
  return {
    fuel: kind,
    opening: rectangle,
    profiles,
    rules: rectangle === undefined ? [] : kind.woodRules({ figures, profiles, manual: manual.figures }),
    manualOut: manual.figures?.standsOut,
    masonry,
    hearth,
    waitsFor: [...burning.waitsFor, ...measured.waitsFor, ...manual.waitsFor],
    messages: [
      ...masonry.messages,
      ...codeMessages(code, profiles, bay),
      ...manual.messages,
      ...(hearth?.messages ?? []),
    ],
  }
}

function assumedOpening({ figures }: PlanContext, wall: BreastWall): readonly Length[] {
  const width = shortest(figures.length('opening.assumed-width'), wall.width)
  return [over(less(wall.width, width), 2), ZERO, width, figures.length('opening.assumed-height')]
}

/** Four lengths as a rectangle; nothing when one side of it is 0. */
export function rectangleFrom(four: readonly Length[]): FaceRectangle | undefined {
  const [x = ZERO, z = ZERO, width = ZERO, height = ZERO] = four
  return width > 0 && height > 0 ? { x, z, width, height } : undefined
}

const codeOf = ({ settle }: PlanContext, bay: NamedBay): string =>
  settle.choice(clearanceRule, bay, () => ({
    value: CODE_NOT_KNOWN,
    because: 'the local inspector decides; until then the strictest counts',
  }))

/** One question a breast: which code applies, or whether somebody has read what its row leaves open. */
function codeMessages(code: string | undefined, profiles: readonly CodeProfile[], bay: NamedBay): readonly Message[] {
  const where = { about: questionKey(bay.id, clearanceRule), place: bay.name }
  if (code === CODE_NOT_KNOWN)
    return [raise(codeNotKnown, where, { rules: profiles.map((profile) => profile.opening.says).join('; ') })]
  const [first] = profiles.flatMap(({ name, asks }) => (asks === undefined ? [] : [{ code: name, asks }]))
  return first === undefined ? [] : [raise(codeNeedsReading, where, first)]
}
