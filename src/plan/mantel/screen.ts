import { type FaceRectangle, rightOf, topOf } from '../../geometry/face-rectangle.ts'
import { tv, tvHeat, tvPlace } from '../../job/chapters/firebox.ts'
import { type QuestionKey, questionKey } from '../../things/field.ts'
import { type Fix, type Message, messageKind, raise } from '../../things/message.ts'
import { type Length, less, longest, over, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { BreastWall } from '../survey/survey.ts'
import { type CableRoute, cableRoute, NO_CABLE } from './cable.ts'
import { type Firebox, rectangleFrom } from './firebox.ts'
import type { MantelSize } from './mantel-size.ts'

/** A screen on the breast, and the way its cable takes. */
export interface Screen {
  readonly at: FaceRectangle | undefined
  readonly cable: CableRoute
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

const NO_SCREEN: Screen = { at: undefined, cable: NO_CABLE, waitsFor: [], messages: [] }

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
  if (at === undefined) return { ...NO_SCREEN, waitsFor: place.waitsFor }
  const route = cableRoute(context, wall, { ...on, screen: at })
  return {
    at,
    cable: route,
    waitsFor: place.waitsFor,
    messages: [...placeMessages(context, wall, at, on), ...heatMessages(context, wall, at, on.fire), ...route.messages],
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
  const about = questionKey(wall.bay.id, tvPlace)
  return [
    raise(screenCrowded, { about, place: wall.bay.name, fixes: movedIn(context, wall, at, mantel) }, { gaps, todo }),
  ]
}

/** The screen moved just clear of the breast's edges and the mantel, where it fits between them. */
function movedIn(
  { figures, show }: PlanContext,
  { bay, width }: BreastWall,
  at: FaceRectangle,
  mantel: MantelSize | undefined,
): readonly Fix[] {
  const side = figures.length('tv.breast-clear')
  const most = less(width, side, at.width)
  if (most < side) return []
  const x = shortest(longest(at.x, side), most)
  const z = mantel === undefined ? at.z : longest(at.z, sum(mantel.top, figures.length('tv.mantel-clear')))
  return [
    {
      says: `screen at ${show.length(x)} from the left, ${show.withUnit(z)} up`,
      answers: [{ key: questionKey(bay.id, tvPlace), value: [x, z, at.width, at.height] }],
    },
  ]
}

function heatMessages(context: PlanContext, { bay }: BreastWall, at: FaceRectangle, fire: Firebox): readonly Message[] {
  const { settle, show } = context
  if (!fire.fuel.burns || fire.opening === undefined) return []
  const limit = settle.measured(tvHeat, bay, () => ({ value: ZERO, because: 'until the screen’s manual is read' }))
  const where = { about: questionKey(bay.id, tvHeat), place: bay.name }
  const lowest = sum(topOf(fire.opening), limit.value)
  if (limit.waitsFor.length > 0) return [raise(screenHeatUnknown, where, { fuel: fire.fuel.says })]
  const gap = less(at.z, topOf(fire.opening))
  if (gap >= limit.value) return []
  return [
    raise(
      screenTooLow,
      {
        ...where,
        fixes: [
          {
            says: `screen’s lower edge at ${show.withUnit(lowest)}`,
            answers: [{ key: questionKey(bay.id, tvPlace), value: [at.x, lowest, at.width, at.height] }],
          },
        ],
      },
      { is: show.withUnit(gap), least: show.withUnit(limit.value), lowest: show.withUnit(lowest) },
    ),
  ]
}
