import { builtInSystem, paintMethod, paintPlace, wallTinKept } from '../../job/chapters/finish.ts'
import { sprayingWay } from '../../job/chapters/make-or-buy.ts'
import { questionKey } from '../../things/field.ts'
import type { Joint } from '../../things/joint.ts'
import { type Fix, type Message, raise } from '../../things/message.ts'
import type { SurfaceId } from '../../things/part.ts'
import { type Area, squareMetres } from '../../units/area.ts'
import type { PlanContext } from '../context.ts'
import type { FrontPlan } from '../fronts/fronts.ts'
import type { MantelPlan } from '../mantel/mantel.ts'
import { withWholeLeaves } from '../supply/leaf-part.ts'
import { edgeFactorsOf, type SupplyPlan } from '../supply/supply.ts'
import type { Survey } from '../survey/survey.ts'
import { coatAreaOf } from './coated-area.ts'
import { type CoatingChoices, coatingChoices, type Method } from './coating-choices.ts'
import { builtInLines, type CoatingLine, masonryLines, wallLines } from './coating-lines.ts'
import { coatingNotHere, dryingFromTheTin, notByThatMethod, sprayingOnSite } from './coating-messages.ts'
import { wallStrips, wholeWalls } from './wall-area.ts'

export type { CoatingLine } from './coating-lines.ts'

export interface CoatingPlan extends CoatingChoices {
  readonly lines: readonly CoatingLine[]
  readonly areas: Readonly<Record<SurfaceId, Area>>
  /** The whole wall corner to corner, or strips along the joints where the same tin is at hand. */
  readonly wallTouchUp: 'corner to corner' | 'strips'
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
  const painted = withWholeLeaves(supply.parts, fronts.leaves).filter((part) => part.coat?.surface === 'built-in')
  const areas = {
    'built-in': coatAreaOf(painted, edgeFactorsOf(context)),
    masonry: squareMetres(mantel.breasts.reduce((area, breast) => area + breast.paintedFace, 0)),
    wall: wallArea(context, work, wallTouchUp),
  }
  const lines = [
    ...(supply.sprayedOut ? [] : builtInLines(context, choices, { painted, area: areas['built-in'] })),
    ...masonryLines(context, choices, areas.masonry),
    ...wallLines(context, choices, areas.wall),
  ]
  return { ...choices, areas, wallTouchUp, lines, messages: messagesOf(choices, lines) }
}

const wallArea = (context: PlanContext, work: ToCoat, touchUp: CoatingPlan['wallTouchUp']): Area =>
  touchUp === 'strips'
    ? wallStrips(work.joints, context.figures.length('touch-up.strip'))
    : wholeWalls({ survey: work.survey, parts: work.supply.parts, joints: work.joints })

function messagesOf({ systems, method, where }: CoatingChoices, lines: readonly CoatingLine[]): readonly Message[] {
  const system = systems['built-in']
  const painted = lines.some((line) => line.surface === 'built-in')
  if (system === undefined || !painted) return drying(lines)
  const coating = system.says
  const sprayed = method !== 'hand'
  const at = (field: { readonly id: string }) => ({ about: questionKey('job', field), place: 'finish' })
  const onSite = where === 'site'
  const notHere =
    system.family === 'isocyanate' || (onSite && (system.family !== 'water-borne' || (sprayed && !system.sprayOnSite)))
  return [
    ...(notHere
      ? [
          raise(
            coatingNotHere,
            { ...at(builtInSystem), fixes: elsewhere(system.family) },
            {
              coating,
              place: onSite ? 'in the client’s house' : 'in your own shop',
              family: system.family,
            },
          ),
        ]
      : []),
    ...(system.methods.includes(method)
      ? []
      : [
          raise(
            notByThatMethod,
            { ...at(paintMethod), fixes: methodsOf(system.methods) },
            {
              coating,
              method: METHOD_WORDS[method],
              methods: system.methods.map((m) => METHOD_WORDS[m]).join(', '),
            },
          ),
        ]),
    ...(onSite && sprayed && !notHere ? [raise(sprayingOnSite, at(paintPlace), { coating })] : []),
    ...drying(lines),
  ]
}

/** Isocyanates go to a spray shop; other coatings that may not be put on in the house go to the own shop. */
const elsewhere = (family: string): readonly Fix[] => [
  family === 'isocyanate'
    ? { says: 'have it sprayed out', answers: [{ key: questionKey('job', sprayingWay), value: 'buy' }] }
    : { says: 'paint in the shop', answers: [{ key: questionKey('job', paintPlace), value: 'shop' }] },
]

const methodsOf = (methods: readonly Method[]): readonly Fix[] =>
  methods.map((value) => ({
    says: METHOD_WORDS[value],
    answers: [{ key: questionKey('job', paintMethod), value }],
  }))

const METHOD_WORDS = { hand: 'brush and roller', hvlp: 'high-volume low-pressure gun', airless: 'airless gun' } as const

const drying = (lines: readonly CoatingLine[]): readonly Message[] =>
  lines.length === 0
    ? []
    : [
        raise(
          dryingFromTheTin,
          { about: questionKey('job', builtInSystem), place: 'finish' },
          { coatings: [...new Set(lines.map((line) => line.product))].join(', ') },
        ),
      ]
