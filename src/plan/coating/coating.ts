import { wallTinKept } from '../../job/chapters/finish.ts'
import { within } from '../../things/formula.ts'
import type { Joint } from '../../things/joint.ts'
import type { Message } from '../../things/message.ts'
import type { SurfaceId } from '../../things/part.ts'
import { type Area, squareMetres } from '../../units/area.ts'
import type { PlanContext } from '../context.ts'
import type { FrontPlan } from '../fronts/fronts.ts'
import type { MantelPlan } from '../mantel/mantel.ts'
import { edgeFactorsOf, type SupplyPlan } from '../supply/supply.ts'
import { withWholeFronts } from '../supply/whole-front.ts'
import type { Survey } from '../survey/survey.ts'
import { type ChipJar, chipKit } from './chip-kit.ts'
import { coatAreaOf } from './coated-area.ts'
import { coatingMessages } from './coating-checks.ts'
import { type CoatingChoices, coatingChoices } from './coating-choices.ts'
import { builtInFilms, type CoatingLine, filmLines, masonryFilms, wallLines } from './coating-lines.ts'
import { wallStrips, wholeWalls } from './wall-area.ts'

export type { CoatingLine } from './coating-lines.ts'

export interface CoatingPlan extends CoatingChoices {
  readonly lines: readonly CoatingLine[]
  readonly areas: Readonly<Record<SurfaceId, Area>>
  /** The whole wall corner to corner, or strips along the joints where the same tin is at hand. */
  readonly wallTouchUp: 'corner to corner' | 'strips'
  /** A jar of each colour that stays with the client. */
  readonly chipKit: readonly ChipJar[]
  readonly messages: readonly Message[]
}

/** What is painted: all that is built, and the wall round it. */
export interface ToCoat {
  readonly survey: Survey
  readonly supply: SupplyPlan
  readonly fronts: FrontPlan
  readonly mantel: MantelPlan
  readonly joints: readonly Joint[]
}

/** Areas, products and litres of every surface. What a spray shop paints is its own paint: no line for the built-ins. */
export function coating(context: PlanContext, work: ToCoat): CoatingPlan {
  const { supply, fronts, mantel } = work
  const choices = coatingChoices(context, supply.sprayedOut ? 'spray shop' : 'here')
  const wallTouchUp = context.settle.asked(wallTinKept, undefined) === true ? 'strips' : 'corner to corner'
  const painted = withWholeFronts(supply.parts, fronts).filter((part) => part.coat?.surface === 'built-in')
  const areas = {
    'built-in': within('built-in', () => coatAreaOf(painted, edgeFactorsOf(context))),
    masonry: squareMetres(mantel.breasts.reduce((area, breast) => area + breast.paintedFace, 0)),
    wall: within('wall', () => wallArea(context, work, wallTouchUp)),
  }
  const films = [
    ...(supply.sprayedOut ? [] : builtInFilms(context, choices, { painted, area: areas['built-in'] })),
    ...masonryFilms(choices, areas.masonry),
  ]
  const lines = [...filmLines(context, films), ...wallLines(context, choices, areas.wall)]
  return {
    ...choices,
    areas,
    wallTouchUp,
    lines,
    chipKit: chipKit(context, choices, lines),
    messages: coatingMessages(choices, lines),
  }
}

const wallArea = (context: PlanContext, work: ToCoat, touchUp: CoatingPlan['wallTouchUp']): Area =>
  touchUp === 'strips'
    ? wallStrips(work.joints, context.figures.length('touch-up.strip'))
    : wholeWalls({ survey: work.survey, parts: work.supply.parts, joints: work.joints })
