import type { FaceRectangle } from '../../geometry/face-rectangle.ts'
import {
  clearanceRule,
  fuel,
  hearth,
  manualClearances,
  manualModel,
  opening,
  realMasonry,
} from '../../job/chapters/firebox.ts'
import type { FuelKind } from '../../kinds/fuel/contract.ts'
import { FUELS } from '../../kinds/fuel/list.ts'
import type { ManualFigures } from '../../kinds/fuel/manual-rule.ts'
import type { MasonryCodeId } from '../../kinds/fuel/masonry-codes.ts'
import type { WoodRule } from '../../kinds/fuel/wood-rule.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, over, shortest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import {
  codeNotKnown,
  hearthNotMeasured,
  hearthTooSmall,
  manualMissing,
  masonryNotConfirmed,
  notMasonry,
} from './firebox-messages.ts'
import { type HearthZone, hearthZone } from './hearth-zone.ts'

/** The opening of one breast, what burns in it, and what that asks of wood. */
export interface Firebox {
  readonly fuel: FuelKind
  readonly opening: FaceRectangle | undefined
  readonly rules: readonly WoodRule[]
  /** How far the manual lets wood stand out; undefined where no manual speaks. */
  readonly manualOut: Length | undefined
  /** Whether the breast's sides may grow hot: its smoke rises in masonry, or nobody has looked yet. */
  readonly hotMasonry: boolean
  readonly waitsFor: readonly QuestionKey[]
  readonly messages: readonly Message[]
}

/** Reads the firebox of a breast. What is not measured stands at the dangerous assumption: an open fire, a wide opening. */
export function fireboxOf(context: PlanContext, wall: BreastWall): Firebox {
  const { settle, figures } = context
  const burning = settle.measured(fuel, wall.bay, () => ({
    value: 'open-fire' as const,
    because: 'the strictest, until you have looked',
  }))
  const kind: FuelKind = FUELS[burning.value]
  const measured = settle.measured(opening, wall.bay, () => ({
    value: assumedOpening(context, wall),
    because: 'in the middle, until it is measured',
  }))
  const rectangle = rectangleFrom(measured.value)
  const code = kind.governedBy === 'masonry rule' ? codeOf(context, wall.bay) : 'irc'
  const masonry = kind.heatsMasonry ? masonryFacts(context, wall.bay, kind) : NO_MASONRY
  const manual = kind.governedBy === 'manual' ? manualFacts(context, wall.bay, kind) : NO_MANUAL
  const rules = kind.woodRules({ figures, code, manual: manual.figures })
  return {
    fuel: kind,
    opening: rectangle,
    rules: rectangle === undefined ? [] : rules,
    manualOut: manual.figures?.standsOut,
    hotMasonry: masonry.hot,
    waitsFor: [...burning.waitsFor, ...measured.waitsFor, ...manual.waitsFor],
    messages: [
      ...masonry.messages,
      ...unknownCode(code, rules, wall.bay),
      ...manual.messages,
      ...(kind.burns ? hearthMessages(context, wall.bay, rectangle) : []),
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

const codeOf = ({ settle }: PlanContext, bay: NamedBay): MasonryCodeId =>
  settle.choice(clearanceRule, bay, () => ({
    value: 'unknown' as const,
    because: 'the local inspector decides; until then the strictest counts',
  }))

interface MasonryFacts {
  readonly hot: boolean
  readonly messages: readonly Message[]
}
const NO_MASONRY: MasonryFacts = { hot: false, messages: [] }

/** Real masonry is what the masonry rule is written for; under an appliance it only tells whether the breast's sides grow hot. */
function masonryFacts({ settle }: PlanContext, bay: NamedBay, kind: FuelKind): MasonryFacts {
  const real = settle.measured(realMasonry, bay, () => ({ value: true, because: 'until somebody has looked' }))
  const where = { about: questionKey(bay.id, realMasonry), place: bay.name }
  const values = { fuel: kind.says }
  if (real.waitsFor.length > 0) return { hot: true, messages: [raise(masonryNotConfirmed, where, values)] }
  if (real.value || kind.governedBy !== 'masonry rule') return { hot: real.value, messages: [] }
  return { hot: false, messages: [raise(notMasonry, { ...where, about: questionKey(bay.id, fuel) }, values)] }
}

const unknownCode = (code: MasonryCodeId, rules: readonly WoodRule[], bay: NamedBay): readonly Message[] =>
  code === 'unknown'
    ? [
        raise(
          codeNotKnown,
          { about: questionKey(bay.id, clearanceRule), place: bay.name },
          { rules: rules.map((r) => r.says).join('; ') },
        ),
      ]
    : []

interface ManualFacts {
  readonly figures: ManualFigures | undefined
  readonly waitsFor: readonly QuestionKey[]
  readonly messages: readonly Message[]
}
const NO_MANUAL: ManualFacts = { figures: undefined, waitsFor: [], messages: [] }

function manualFacts({ settle, figures }: PlanContext, bay: NamedBay, kind: FuelKind): ManualFacts {
  const model = settle.asked(manualModel, bay)?.trim() ?? ''
  const within = figures.length('clearance.within')
  const clear = settle.measured(manualClearances, bay, () => ({
    value: [within, within, ZERO],
    because: 'no wood near it, until the manual is read',
  }))
  const [above = ZERO, sides = ZERO, standsOut = ZERO] = clear.value
  const entered = clear.waitsFor.length === 0
  const missing = [
    ...(model === '' ? [{ says: 'model and edition', about: questionKey(bay.id, manualModel) }] : []),
    ...(entered ? [] : [{ says: 'clearances', about: questionKey(bay.id, manualClearances) }]),
  ]
  return {
    figures: entered ? { above, sides, standsOut } : undefined,
    waitsFor: clear.waitsFor,
    messages: missing.map((m) =>
      raise(manualMissing, { about: m.about, place: bay.name }, { fuel: kind.says, missing: m.says }),
    ),
  }
}

function hearthMessages(context: PlanContext, bay: NamedBay, rectangle: FaceRectangle | undefined): readonly Message[] {
  const { settle, figures, show } = context
  if (rectangle === undefined) return []
  const zone = hearthZone({ ...rectangle, figures })
  const reach = settle.measured(hearth, bay, () => ({
    value: [zone.front, zone.side, zone.side],
    because: 'what the code asks of this opening, until it is measured',
  }))
  const where = { about: questionKey(bay.id, hearth), place: bay.name }
  const asked = { front: show.withUnit(zone.front), side: show.withUnit(zone.side) }
  if (reach.waitsFor.length > 0) return [raise(hearthNotMeasured, where, asked)]
  const short = shortOf(context, zone, reach.value)
  return short === '' ? [] : [raise(hearthTooSmall, where, { ...asked, short })]
}

/** Where the hearth ends inside the zone, and what is missing there; empty when nothing is. */
function shortOf(
  { show }: PlanContext,
  zone: HearthZone,
  [front = ZERO, left = ZERO, right = ZERO]: readonly Length[],
) {
  return [
    { says: 'in front', is: front, least: zone.front },
    { says: 'at the left', is: left, least: zone.side },
    { says: 'at the right', is: right, least: zone.side },
  ]
    .filter(({ is, least }) => is < least)
    .map(({ says, is, least }) => `${show.withUnit(is)} ${says}, ${show.withUnit(less(least, is))} short`)
    .join('; ')
}
