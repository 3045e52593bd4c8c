import { type Edge, edgeAt } from '../../geometry/edge.ts'
import { edgeThrough, rising } from '../../geometry/edge-line.ts'
import {
  squareLeft as squareLeftField,
  squareRight as squareRightField,
  type WidthRow,
  widths,
} from '../../job/chapters/wall.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, size, sum, ZERO } from '../../units/length.ts'
import { widthReading } from './reading.ts'

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

/** A width is read from the table, or follows from the other face and the squares. */
const WIDTHS = [widthReading, { id: 'survey.other-face' }, { id: 'survey.assumed-width' }]

/** Offset of the left return from plumb where no lean was measured: half of what the width lost above the lowest height. */
const splitLean = formula<{ atFoot: Length; here: Length }, Length>(
  {
    id: 'survey.split-lean',
    plain: '(width at the lowest height − width here) ÷ 2',
    source: 'common practice, no source',
    from: { atFoot: WIDTHS, here: WIDTHS },
  },
  ({ atFoot, here }) => over(less(atFoot, here), 2),
)

/** Offset of the left return's front edge where square was not measured: half of the taper from back to front. */
const splitSquare = formula<{ back: Length; front: Length }, Length>(
  {
    id: 'survey.split-square',
    plain: '(width at the back − width at the front) ÷ 2',
    source: 'common practice, no source',
    from: { back: WIDTHS, front: WIDTHS },
  },
  ({ back, front }) => over(less(back, front), 2),
)

/** Offset of the left return where only the right one's lean was taken: what the width lost less that. */
const leanFromRight = formula<{ atFoot: Length; here: Length; right: Length }, Length>(
  {
    id: 'survey.lean-from-right',
    plain: 'width at the lowest height − width here − lean of the right return',
    source: 'geometry',
    from: { atFoot: WIDTHS, here: WIDTHS, right: widthReading },
  },
  ({ atFoot, here, right }) => less(atFoot, here, right),
)

/** Offset of the left return's front edge where only the right corner was taken with a square. */
const squareFromRight = formula<{ back: Length; front: Length; right: Length }, Length>(
  {
    id: 'survey.square-from-right',
    plain: 'width at the back − width at the front − square of the right corner',
    source: 'geometry',
    from: { back: WIDTHS, front: WIDTHS, right: squareRightField },
  },
  ({ back, front, right }) => less(back, front, right),
)

/** A lean counted from the lowest height, where it is 0. */
const fromFoot = formula<{ lean: Length; atFoot: Length }, Length>(
  {
    id: 'survey.lean-from-foot',
    plain: 'lean here − lean at the lowest height',
    source: 'geometry',
    from: { lean: widths, atFoot: [widths, widthReading] },
  },
  ({ lean, atFoot }) => less(lean, atFoot),
)

/** Width of the face that was not measured: the other one and what the squares say. */
const otherFace = formula<{ measured: Length; squares: readonly Length[]; face: 'back' | 'front' }, Length>(
  {
    id: 'survey.other-face',
    plain: 'width of the measured face, more at the back (less at the front) by the squares taken',
    source: 'geometry',
    from: { measured: [widthReading, { id: 'survey.assumed-width' }], squares: [squareLeftField, squareRightField] },
  },
  ({ measured, squares, face }) => {
    const taper = sum(ZERO, ...squares)
    return face === 'back' ? sum(measured, taper) : less(measured, taper)
  },
)

/** Where a return stands, in the bay's own x: 0 is the left back corner at the lowest height. */
const leftBack = formula<{ lean: Length }, Length>(
  {
    id: 'survey.lean',
    plain: 'lean of the left return there, into the alcove',
    source: 'geometry',
    from: { lean: [widthReading, splitLean, leanFromRight] },
  },
  ({ lean }) => lean,
)
const SQUARES = [squareLeftField, splitSquare, squareFromRight]
const leftFront = formula<{ lean: Length; square: Length }, Length>(
  {
    id: 'survey.left-front',
    plain: 'lean of the left return + how far its front edge runs in',
    source: 'geometry',
    from: { lean: leftBack, square: SQUARES },
  },
  ({ lean, square }) => sum(lean, square),
)
const rightBack = formula<{ lean: Length; width: Length }, Length>(
  {
    id: 'survey.right-back',
    plain: 'lean of the left return + width at the back',
    source: 'geometry',
    from: { lean: leftBack, width: WIDTHS },
  },
  ({ lean, width }) => sum(lean, width),
)
const rightFront = formula<{ lean: Length; square: Length; width: Length }, Length>(
  {
    id: 'survey.right-front',
    plain: 'lean of the left return + how far its front edge runs in + width at the front',
    source: 'geometry',
    from: { lean: leftBack, square: SQUARES, width: WIDTHS },
  },
  ({ lean, square, width }) => sum(lean, square, width),
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
  const leanAt = (z: Length): Length => {
    if (leftLean !== undefined) return widthReading({ edge: leftLean, at: z })
    return rightLean === undefined
      ? splitLean({ atFoot: back(foot), here: back(z) })
      : leanFromRight({ atFoot: back(foot), here: back(z), right: widthReading({ edge: rightLean, at: z }) })
  }
  const lean = (z: Length): Length => leftBack({ lean: leanAt(z) })
  const square = (z: Length): Length => {
    if (squareLeft !== undefined) return squareLeft
    const faces = { back: back(z), front: front(z) }
    return squareRight === undefined ? splitSquare(faces) : squareFromRight({ ...faces, right: squareRight })
  }
  const line = (valueAt: (z: Length) => Length) => edgeThrough(heights.length === 0 ? [ZERO] : heights, valueAt)
  return {
    left: { back: line(lean), front: line((z) => leftFront({ lean: lean(z), square: square(z) })) },
    right: {
      back: line((z) => rightBack({ lean: lean(z), width: back(z) })),
      front: line((z) => rightFront({ lean: lean(z), square: square(z), width: front(z) })),
    },
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
  const squares = [readings.squareLeft, readings.squareRight].filter((s) => s !== undefined)
  const read =
    (edge: Edge): Line =>
    (z) =>
      widthReading({ edge, at: z })
  if (back !== undefined && front !== undefined)
    return { back: read(back), front: read(front), onlyFace: undefined, widthsMissing: false }
  if (front !== undefined)
    return {
      back: (z) => otherFace({ measured: read(front)(z), squares, face: 'back' }),
      front: read(front),
      onlyFace: 'front',
      widthsMissing: false,
    }
  const known: Line = back === undefined ? () => readings.assumedWidth : read(back)
  return {
    back: known,
    front: (z) => otherFace({ measured: known(z), squares, face: 'front' }),
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
  const atFoot = widthReading({ edge: knots, at: foot })
  return knots.map((k) => ({ at: k.at, v: fromFoot({ lean: k.v, atFoot }) }))
}

function worst(heights: readonly Length[], residualAt: Line): Residual {
  return heights
    .map((height) => ({ height, by: size(residualAt(height)) }))
    .reduce((most, here) => (here.by > most.by ? here : most), { height: ZERO, by: ZERO })
}
