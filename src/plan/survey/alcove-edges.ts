import { type Edge, edgeAt } from '../../geometry/edge.ts'
import { edgeThrough, rising } from '../../geometry/edge-line.ts'
import type { WidthRow } from '../../job/chapters/wall.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, size, sum, ZERO } from '../../units/length.ts'

/** Readings of one alcove, as taken; `assumedWidth` stands in while no width is there. */
export interface AlcoveReadings {
  readonly rows: readonly WidthRow[]
  readonly squareLeft: Length | undefined
  readonly squareRight: Length | undefined
  readonly assumedWidth: Length
}

/** Two readings of one thing that disagree: where, and by how much. */
export interface Residual {
  readonly height: Length
  readonly by: Length
}

/** Both returns as lines over the height, and what the readings say about each other. */
export interface AlcoveEdges {
  readonly left: { readonly back: Edge; readonly front: Edge }
  readonly right: { readonly back: Edge; readonly front: Edge }
  readonly widthAtFoot: Length
  readonly widthsMissing: boolean
  readonly onlyFace: 'back' | 'front' | undefined
  readonly leanMeasured: boolean
  readonly squareMeasured: boolean
  readonly leanResidual: Residual
  readonly squareResidual: Residual
}

/** Offset of the left return from plumb where no lean was measured: half of what the width lost above the lowest height. */
const splitLean = formula<{ atFoot: Length; here: Length }, Length>(
  {
    id: 'survey.split-lean',
    plain: '(width at the lowest height − width here) ÷ 2',
    source: 'common practice, no source',
  },
  ({ atFoot, here }) => over(less(atFoot, here), 2),
)

/** Offset of the left return's front edge where square was not measured: half of the taper from back to front. */
const splitSquare = formula<{ back: Length; front: Length }, Length>(
  {
    id: 'survey.split-square',
    plain: '(width at the back − width at the front) ÷ 2',
    source: 'common practice, no source',
  },
  ({ back, front }) => over(less(back, front), 2),
)

/**
 * The two returns of an alcove from its readings. Lean: offset from a plumb line at the lowest height; square: offset of
 * the front edge from square to the back; both plus *into* the alcove. The left side governs; the right one is the left
 * one and the width. x = 0 is the left back corner at the lowest height. Beyond the readings the nearest one is held.
 */
export function alcoveEdges(readings: AlcoveReadings): AlcoveEdges {
  const { squareLeft, squareRight } = readings
  const rows = [...readings.rows].sort((a, b) => a.height - b.height)
  const heights = rising(rows.map((r) => r.height))
  const foot = heights[0] ?? ZERO
  const { back, front, ...faces } = widthLines(readings, rows)
  const leftLean = leanLine(rows, foot, (r) => r.left)
  const rightLean = leanLine(rows, foot, (r) => r.right)
  const lost = (z: Length) => less(back(foot), back(z))
  const taper = (z: Length) => less(back(z), front(z))
  const lean = (z: Length): Length => {
    if (leftLean !== undefined) return edgeAt(leftLean, z)
    return rightLean === undefined
      ? splitLean({ atFoot: back(foot), here: back(z) })
      : less(lost(z), edgeAt(rightLean, z))
  }
  const square = (z: Length): Length => {
    if (squareLeft !== undefined) return squareLeft
    return squareRight === undefined ? splitSquare({ back: back(z), front: front(z) }) : less(taper(z), squareRight)
  }
  const line = (valueAt: (z: Length) => Length) => edgeThrough(heights.length === 0 ? [ZERO] : heights, valueAt)
  return {
    left: { back: line(lean), front: line((z) => sum(lean(z), square(z))) },
    right: { back: line((z) => sum(lean(z), back(z))), front: line((z) => sum(lean(z), square(z), front(z))) },
    widthAtFoot: back(foot),
    ...faces,
    squareMeasured: squareLeft !== undefined || squareRight !== undefined,
    leanMeasured: leftLean !== undefined || rightLean !== undefined,
    leanResidual: worst(heights, (z) =>
      leftLean === undefined || rightLean === undefined
        ? ZERO
        : less(sum(edgeAt(leftLean, z), edgeAt(rightLean, z)), lost(z)),
    ),
    squareResidual: worst(heights, (z) =>
      squareLeft === undefined || squareRight === undefined ? ZERO : less(sum(squareLeft, squareRight), taper(z)),
    ),
  }
}

type Line = (z: Length) => Length

/** Width over height at the back and at the front; a face not measured follows from the other one and the squares taken. */
function widthLines(
  readings: AlcoveReadings,
  rows: readonly WidthRow[],
): { readonly back: Line; readonly front: Line } & Pick<AlcoveEdges, 'onlyFace' | 'widthsMissing'> {
  const back = lineOf(rows, (r) => r.back)
  const front = lineOf(rows, (r) => r.front)
  const taper = sum(readings.squareLeft ?? ZERO, readings.squareRight ?? ZERO)
  if (back !== undefined && front !== undefined)
    return { back: (z) => edgeAt(back, z), front: (z) => edgeAt(front, z), onlyFace: undefined, widthsMissing: false }
  if (front !== undefined)
    return {
      back: (z) => sum(edgeAt(front, z), taper),
      front: (z) => edgeAt(front, z),
      onlyFace: 'front',
      widthsMissing: false,
    }
  const known: Line = back === undefined ? () => readings.assumedWidth : (z) => edgeAt(back, z)
  return {
    back: known,
    front: (z) => less(known(z), taper),
    onlyFace: back === undefined ? undefined : 'back',
    widthsMissing: back === undefined,
  }
}

function lineOf(rows: readonly WidthRow[], pick: (row: WidthRow) => Length | undefined): Edge | undefined {
  const knots = rows.flatMap((row) => {
    const v = pick(row)
    return v === undefined ? [] : [{ at: row.height, v }]
  })
  return knots.length === 0 ? undefined : knots
}

/** A lean is measured from a plumb line at the lowest height, so it is 0 there; readings from another line are shifted. */
function leanLine(
  rows: readonly WidthRow[],
  foot: Length,
  pick: (row: WidthRow) => Length | undefined,
): Edge | undefined {
  const line = lineOf(rows, pick)
  if (line === undefined) return undefined
  const first = line[0]
  const knots = first !== undefined && first.at > foot ? [{ at: foot, v: ZERO }, ...line] : line
  const atFoot = edgeAt(knots, foot)
  return knots.map((k) => ({ at: k.at, v: less(k.v, atFoot) }))
}

function worst(heights: readonly Length[], residualAt: Line): Residual {
  return heights
    .map((height) => ({ height, by: size(residualAt(height)) }))
    .reduce((most, here) => (here.by > most.by ? here : most), { height: ZERO, by: ZERO })
}
