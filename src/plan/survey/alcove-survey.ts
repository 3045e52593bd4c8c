import { edgeAt } from '../../geometry/edge.ts'
import { returns, squareLeft, squareRight, type WidthRow, widths } from '../../job/chapters/wall.ts'
import { questionKey } from '../../things/field.ts'
import type { NamedBay } from '../../things/place.ts'
import { type Length, less, shortest, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { Measured } from '../settle.ts'
import { type AlcoveEdges, alcoveEdges } from './alcove-edges.ts'
import { alcoveMessages } from './alcove-messages.ts'
import { ceilingOf, NO_WAITS, runWallOf } from './bay-survey.ts'
import type { AlcoveWall, SurveyedBay } from './survey.ts'

/** An alcove as measured: both returns as lines over the height, at the back wall and at the front edge. */
export function alcoveWall(context: PlanContext, bay: NamedBay, originX: Length): SurveyedBay<AlcoveWall> {
  const rows = widthRows(context, bay)
  const edges = edgesOf(context, bay, rows.value)
  const depths = returnDepths(context, bay)
  const { waits: overWaits, messages: overMessages, ...top } = ceilingOf(context, bay, edges.widthAtFoot)
  const { waits: runWaits, messages: runMessages, ...rest } = runWallOf(context, bay, edges.widthAtFoot)
  const widthWaits = edges.widthsMissing ? [questionKey(bay.id, widths)] : rows.waitsFor
  const wall: AlcoveWall = {
    kind: 'alcove',
    bay,
    originX,
    width: edges.widthAtFoot,
    left: edges.left,
    right: edges.right,
    returnLeft: depths.left,
    returnRight: depths.right,
    depth: depths.shortest,
    frontDepth: depths.shortest ?? context.figures.length('survey.assumed-depth'),
    ...top,
    ...rest,
    waits: { ...NO_WAITS, ...overWaits, ...runWaits, widths: widthWaits, depth: depths.waitsFor },
  }
  return { wall, messages: [...alcoveMessages(context, wall, edges, rows.value), ...overMessages, ...runMessages] }
}

/** The rows of the width table; an unusable one is left out here and named in a message. */
function widthRows(context: PlanContext, bay: NamedBay): Measured<readonly WidthRow[]> {
  return context.settle.measured(widths, bay, () => ({
    value: [{ height: ZERO, back: context.figures.length('survey.assumed-width') }],
    because: 'until it is measured',
  }))
}

/** Whether a row can be used: standing on or above the level line's zero, widths greater than nothing. */
export const usableRow = (row: WidthRow): boolean =>
  row.height >= 0 && [row.back, row.front].every((w) => w === undefined || w > 0)

/** Squares are noted with what the plan uses without them: the taper split, or what the other side leaves. */
function edgesOf(context: PlanContext, bay: NamedBay, rows: readonly WidthRow[]): AlcoveEdges {
  const { settle } = context
  const edges = alcoveEdges({
    rows: rows.filter(usableRow).filter(firstAtItsHeight),
    squareLeft: settle.asked(squareLeft, bay),
    squareRight: settle.asked(squareRight, bay),
    assumedWidth: context.figures.length('survey.assumed-width'),
  })
  const left = less(footOf(edges.left.front), footOf(edges.left.back))
  const right = less(footOf(edges.right.back), footOf(edges.right.front))
  const because = 'the taper of the widths, split where nothing else is known'
  settle.measured(squareLeft, bay, () => ({ value: left, because }))
  settle.measured(squareRight, bay, () => ({ value: right, because }))
  return edges
}

const firstAtItsHeight = (row: WidthRow, index: number, rows: readonly WidthRow[]): boolean =>
  rows.findIndex((r) => r.height === row.height) === index

const footOf = (edge: AlcoveEdges['left']['back']): Length => edgeAt(edge, edge[0]?.at ?? ZERO)

interface ReturnDepths extends Pick<Measured<unknown>, 'waitsFor'> {
  readonly left: Length | undefined
  readonly right: Length | undefined
  readonly shortest: Length | undefined
}

/** 0 = a room wall that goes on, which limits nothing. */
function returnDepths(context: PlanContext, bay: NamedBay): ReturnDepths {
  const assumed = context.figures.length('survey.assumed-depth')
  const measured = context.settle.measured(returns, bay, () => ({
    value: [assumed, assumed],
    because: 'until it is measured',
  }))
  const [left, right] = measured.value.map((r) => (r > 0 ? r : undefined))
  const both = [left, right].filter((r) => r !== undefined)
  const [first, ...rest] = both
  return {
    left,
    right,
    shortest: first === undefined ? undefined : shortest(first, ...rest),
    waitsFor: measured.waitsFor,
  }
}
