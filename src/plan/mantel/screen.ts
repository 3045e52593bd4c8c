import { type FaceRectangle, rightOf, topOf } from '../../geometry/face-rectangle.ts'
import { cable, tv, tvHeat, tvPlace } from '../../job/chapters/firebox.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { CutOut } from '../../things/part.ts'
import { type Length, less, longest, nanometres, over, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { type Firebox, rectangleFrom } from './firebox.ts'
import type { MantelSize } from './mantel-size.ts'

/** A screen on the breast, and the hole its cable takes through the mantel's top. */
export interface Screen {
  readonly at: FaceRectangle | undefined
  readonly hole: CutOut | undefined
  readonly waitsFor: readonly QuestionKey[]
  readonly messages: readonly Message[]
}

export const screenCrowded = messageKind<{ gaps: string; todo: string }>({
  code: 'C8',
  weight: 'confirm',
  source: 'common practice, no source; the screen’s own manual governs',
  says: (v) => ({
    short: `The screen is close: ${v.gaps}.`,
    why: 'It stays inside the breast and over the mantel, with room for hands and air round it.',
    todo: v.todo,
  }),
})

export const screenTooLow = messageKind<{ is: string; least: string; lowest: string }>({
  code: 'C8',
  weight: 'confirm',
  source: 'the screen’s own manual',
  says: (v) => ({
    short: `The screen hangs ${v.is} above the opening; its manual asks for ${v.least}.`,
    why: 'A fire below heats what hangs above it.',
    todo: `Hang its lower edge at ${v.lowest} or higher.`,
  }),
})

export const screenHeatUnknown = messageKind<{ fuel: string }>({
  code: 'C8',
  weight: 'confirm',
  source: 'the screen’s own manual',
  says: (v) => ({
    short: 'How far the screen must stay above the opening is not known.',
    why: `A ${v.fuel} heats what hangs above it.`,
    todo: 'Look up the heat limit in the screen’s manual, measure the wall’s warmth with the fire burning, and enter it.',
  }),
})

export const cableHoleTight = messageKind<{ hole: string; short: string }>({
  code: 'C8',
  weight: 'confirm',
  source: 'common practice, no source',
  says: (v) => ({
    short: `A ${v.hole} hole does not fit inside the mantel between ledger and frieze: ${v.short} short.`,
    why: 'It would cut the ledger or leave too little wood round it.',
    todo: 'Run the cable in a duct on the face, or make the mantel deeper by that much.',
  }),
})

const NO_SCREEN: Screen = { at: undefined, hole: undefined, waitsFor: [], messages: [] }

interface On {
  readonly fire: Firebox
  readonly mantel: MantelSize | undefined
}

/** The screen of a breast: its place, what is wrong with it, and the cable's way. */
export function screenOn(context: PlanContext, wall: BreastWall, on: On): Screen {
  const { settle } = context
  const { bay } = wall
  if (!settle.choice(tv, bay, () => ({ value: false, because: 'only where you want one' }))) return NO_SCREEN
  const place = settle.measured(tvPlace, bay, () => ({
    value: assumedPlace(context, wall, on.mantel),
    because: 'in the middle, over the mantel, until it is measured',
  }))
  const at = rectangleFrom(place.value)
  const way = settle.choice(cable, bay, () =>
    on.mantel === undefined || holeShortBy(context, on.mantel) > 0
      ? { value: 'surface-duct' as const, because: 'there is no room inside a mantel' }
      : { value: 'through-mantel' as const, because: 'nothing to see from the room' },
  )
  if (at === undefined) return { ...NO_SCREEN, waitsFor: place.waitsFor }
  const hole = way === 'through-mantel' && on.mantel !== undefined ? cableHole(context, at, on.mantel) : undefined
  return {
    at,
    hole: on.mantel !== undefined && holeShortBy(context, on.mantel) > 0 ? undefined : hole,
    waitsFor: place.waitsFor,
    messages: [
      ...placeMessages(context, wall, at, on),
      ...heatMessages(context, wall, at, on.fire),
      ...(hole !== undefined && on.mantel !== undefined ? tightHole(context, wall, on.mantel) : []),
    ],
  }
}

function assumedPlace({ figures }: PlanContext, wall: BreastWall, mantel: MantelSize | undefined): readonly Length[] {
  const inside = less(wall.width, times(figures.length('tv.breast-clear'), 2))
  const width = longest(shortest(figures.length('tv.assumed-width'), inside), ZERO)
  const z = sum(mantel?.top ?? figures.length('mantel.height'), figures.length('tv.mantel-clear'))
  return [over(less(wall.width, width), 2), z, width, figures.length('tv.assumed-height')]
}

function placeMessages(context: PlanContext, wall: BreastWall, at: FaceRectangle, { mantel }: On): readonly Message[] {
  const { figures, show } = context
  const side = figures.length('tv.breast-clear')
  const overMantel = figures.length('tv.mantel-clear')
  const checks = [
    { of: 'the breast’s left edge', is: at.x, least: side, todo: 'move it right by' },
    { of: 'the breast’s right edge', is: less(wall.width, rightOf(at)), least: side, todo: 'move it left by' },
    ...(mantel === undefined
      ? []
      : [{ of: 'the mantel', is: less(at.z, mantel.top), least: overMantel, todo: 'raise it by' }]),
  ]
  const close = checks.filter((c) => c.is < c.least)
  if (close.length === 0) return []
  const gaps = close.map((c) => `${show.withUnit(c.is)} to ${c.of}`).join(', ')
  const moves = close.map((c) => `${c.todo} ${show.withUnit(less(c.least, c.is))}`).join(', ')
  const todo = `${moves.charAt(0).toUpperCase()}${moves.slice(1)}, take a smaller one, or say yes.`
  return [raise(screenCrowded, { about: questionKey(wall.bay.id, tvPlace), place: wall.bay.name }, { gaps, todo })]
}

function heatMessages(context: PlanContext, { bay }: BreastWall, at: FaceRectangle, fire: Firebox): readonly Message[] {
  const { settle, show } = context
  if (!fire.fuel.burns || fire.opening === undefined) return []
  const limit = settle.measured(tvHeat, bay, () => ({ value: ZERO, because: 'until the screen’s manual is read' }))
  const where = { about: questionKey(bay.id, tvHeat), place: bay.name }
  if (limit.waitsFor.length > 0) return [raise(screenHeatUnknown, where, { fuel: fire.fuel.says })]
  const gap = less(at.z, topOf(fire.opening))
  if (gap >= limit.value) return []
  return [
    raise(screenTooLow, where, {
      is: show.withUnit(gap),
      least: show.withUnit(limit.value),
      lowest: show.withUnit(sum(topOf(fire.opening), limit.value)),
    }),
  ]
}

/** What is missing between ledger and frieze for the hole and the wood round it; 0 or less when it fits. */
function holeShortBy({ figures }: PlanContext, mantel: MantelSize): Length {
  const needed = sum(figures.length('cable.hole'), times(figures.length('cable.edge'), 2))
  const inside = less(mantel.beamDepth, mantel.panel, figures.length('mantel.ledger-thick'))
  return less(needed, inside)
}

/** A round hole through every layer of the top, under the screen's middle, just before the ledger. */
function cableHole({ figures, cut }: PlanContext, at: FaceRectangle, mantel: MantelSize): CutOut {
  const width = figures.length('cable.hole')
  const edge = figures.length('cable.edge')
  const middle = less(sum(at.x, over(less(at.width, width), 2)), mantel.x)
  const most = less(mantel.length, edge, width)
  return {
    what: 'round cable hole, from the back edge',
    x: cut.near(shortest(longest(middle, edge), nanometres(Math.max(most, edge)))),
    z: cut.near(sum(figures.length('mantel.ledger-thick'), edge)),
    width,
    height: width,
  }
}

function tightHole(context: PlanContext, { bay }: BreastWall, mantel: MantelSize): readonly Message[] {
  const short = holeShortBy(context, mantel)
  if (short <= 0) return []
  const hole = context.show.withUnit(context.figures.length('cable.hole'))
  const where = { about: questionKey(bay.id, cable), place: bay.name }
  return [raise(cableHoleTight, where, { hole, short: context.show.withUnit(short) })]
}
