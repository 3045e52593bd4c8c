import { type Edge, edgeAt } from '../../geometry/edge.ts'
import { returns, squareLeft, type WidthRow, widths } from '../../job/chapters/wall.ts'
import { type Field, questionKey } from '../../things/field.ts'
import { type Message, raise } from '../../things/message.ts'
import { type Length, less, longest, shortest, size, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { AlcoveEdges } from './alcove-edges.ts'
import { widthAt } from './outline.ts'
import type { AlcoveWall } from './survey.ts'
import {
  leanSplit,
  oneFaceMeasured,
  squareSplit,
  surveyOutside,
  surveyResidual,
  unusableSurvey,
} from './survey-messages.ts'

/** What the readings of one alcove make worth asking or knowing. Nothing is said about what nobody has measured yet. */
export function alcoveMessages(
  context: PlanContext,
  wall: AlcoveWall,
  edges: AlcoveEdges,
  rows: readonly WidthRow[],
): readonly Message[] {
  if (wall.waits.widths.length > 0) return []
  return [
    ...unusableRows(context, wall, rows),
    ...residuals(context, wall, edges),
    ...outside(context, wall, rows),
    ...assumptions(context, wall, edges),
  ]
}

const about = (wall: AlcoveWall, field: Pick<Field, 'id'>) => ({
  about: questionKey(wall.bay.id, field),
  place: wall.bay.name,
})

function unusableRows(context: PlanContext, wall: AlcoveWall, rows: readonly WidthRow[]): readonly Message[] {
  const { show } = context
  const where = about(wall, widths)
  const bad = rows.flatMap((row) => [
    ...(row.height < 0 ? [row.height] : []),
    ...[row.back, row.front].filter((width) => width !== undefined && width <= 0),
  ])
  const twice = rows.find((row, i) => rows.findIndex((r) => r.height === row.height) !== i)
  return [
    ...bad.map((reading = ZERO) =>
      raise(unusableSurvey, where, {
        what: 'A reading of the width table',
        is: show.withUnit(reading),
        allowed: 'Heights are counted up from the floor and a width is greater than 0',
      }),
    ),
    ...(twice === undefined
      ? []
      : [
          raise(unusableSurvey, where, {
            what: 'A height that stands twice in the width table',
            is: show.withUnit(twice.height),
            allowed: 'Each height has one row; the first one counts',
          }),
        ]),
  ]
}

function residuals(context: PlanContext, wall: AlcoveWall, edges: AlcoveEdges): readonly Message[] {
  const { show } = context
  const allowed = context.figures.length('survey.tolerance')
  const pairs = [
    { residual: edges.leanResidual, what: 'The two leans', field: widths },
    { residual: edges.squareResidual, what: 'The two square readings', field: squareLeft },
  ]
  return pairs
    .filter(({ residual }) => residual.by > allowed)
    .map(({ residual, what, field }) =>
      raise(surveyResidual, about(wall, field), {
        what,
        height: show.withUnit(residual.height),
        differ: show.withUnit(residual.by),
        allowed: show.withUnit(allowed),
      }),
    )
}

function outside(context: PlanContext, wall: AlcoveWall, rows: readonly WidthRow[]): readonly Message[] {
  const { figures, show } = context
  const most = figures.length('survey.lean-most')
  const leastDepth = figures.length('survey.depth-least')
  const upTo = `up to ${show.withUnit(most)}`
  const leans = rows.flatMap((r) => [r.left, r.right]).filter((l) => l !== undefined)
  const lean = leans.reduce((a, b) => (size(b) > size(a) ? b : a), ZERO)
  const square = longest(offSquare(wall.left), offSquare(wall.right))
  return [
    ...spreadOf(context, wall, rows),
    ...(size(lean) > most
      ? [raise(surveyOutside, about(wall, widths), { what: 'A lean', is: show.withUnit(lean), usual: upTo })]
      : []),
    ...(square > most
      ? [
          raise(surveyOutside, about(wall, squareLeft), {
            what: 'A return’s offset from square',
            is: show.withUnit(square),
            usual: upTo,
          }),
        ]
      : []),
    ...(wall.depth !== undefined && wall.depth < leastDepth && wall.waits.depth.length === 0
      ? [
          raise(surveyOutside, about(wall, returns), {
            what: 'The shallower return',
            is: `${show.withUnit(wall.depth)} deep`,
            usual: `${show.withUnit(leastDepth)} or more`,
          }),
        ]
      : []),
  ]
}

const offSquare = (side: AlcoveWall['left']): Length =>
  side.back.reduce<Length>((most, k) => longest(most, size(less(edgeAt(side.front, k.at), k.v))), ZERO)

function spreadOf(context: PlanContext, wall: AlcoveWall, rows: readonly WidthRow[]): readonly Message[] {
  const [first, ...rest] = rows.flatMap((r) => [r.back, r.front]).filter((w) => w !== undefined)
  if (first === undefined) return []
  const [narrow, wide] = [shortest(first, ...rest), longest(first, ...rest)]
  const share = context.figures.number('survey.width-spread')
  if (less(wide, narrow) <= wide * share) return []
  const { show } = context
  return [
    raise(surveyOutside, about(wall, widths), {
      what: `A width of the ${wall.bay.name}`,
      is: `${show.length(narrow)} where another is ${show.withUnit(wide)}`,
      usual: `within ${Math.round(share * 100)} % of the others`,
    }),
  ]
}

function assumptions(context: PlanContext, wall: AlcoveWall, edges: AlcoveEdges): readonly Message[] {
  const { show } = context
  const varies = mostBetween(wall.left.back, (z) =>
    less(edgeAt(wall.right.back, z), edgeAt(wall.left.back, z), wall.width),
  )
  const taper = mostBetween(wall.left.back, (z) => less(widthAt(wall, z, ZERO), widthAt(wall, z, wall.frontDepth)))
  const other = edges.onlyFace === 'back' ? 'front' : 'back'
  return [
    ...(edges.onlyFace === undefined
      ? []
      : [raise(oneFaceMeasured, about(wall, widths), { measured: edges.onlyFace, missing: other })]),
    ...(edges.leanMeasured || varies === 0
      ? []
      : [raise(leanSplit, about(wall, widths), { most: show.withUnit(varies) })]),
    ...(edges.squareMeasured || taper === 0 || edges.onlyFace !== undefined
      ? []
      : [raise(squareSplit, about(wall, squareLeft), { most: show.withUnit(taper) })]),
  ]
}

const mostBetween = (edge: Edge, valueAt: (z: Length) => Length): Length =>
  edge.reduce<Length>((most, k) => longest(most, size(valueAt(k.at))), ZERO)
