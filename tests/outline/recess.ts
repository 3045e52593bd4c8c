import { returns, squareLeft, squareRight, type WidthRow, widths } from '../../src/job/chapters/wall.ts'
import { answerOf, type Job } from '../../src/job/job.ts'
import { NOT_MEASURED } from '../../src/things/field.ts'

/**
 * The outline of one alcove straight from its readings, in plain nanometres (floating): nothing here comes from the plan.
 * x from the left back corner at the lowest height measured, y out of the back wall, z up.
 */
export interface Recess {
  readonly left: (z: number, y: number) => number
  readonly right: (z: number, y: number) => number
  /** Heights at which the outline may bend. */
  readonly bends: readonly number[]
  /** Depth of the shorter return; undefined where both walls go on. */
  readonly mouth: number | undefined
  readonly widthAtFoot: number
}

/** Readings are whole nanometres; a point read between two of them is rounded at most three times on its way to a part. */
export const HAIR = 4

type Line = (z: number) => number

/** The outline of a fully measured alcove; undefined where no width was taken. */
export function recessOf(job: Job, bay: string): Recess | undefined {
  const rows = given(job, bay).toSorted((a, b) => a.height - b.height)
  const first = rows[0]
  if (first === undefined) return undefined
  const foot = first.height
  const { back, front } = faces(rows, squareOf(job, bay, 'left') ?? 0, squareOf(job, bay, 'right') ?? 0)
  const lean = leanOf(rows, foot, back)
  const square = squareAt(job, bay, back, front)
  const mouth = mouthOf(job, bay)
  const slide = (atBack: number, atFront: number, y: number) =>
    mouth === undefined ? atBack : atBack + ((atFront - atBack) * y) / mouth
  return {
    left: (z, y) => slide(lean(z), lean(z) + square(z), y),
    right: (z, y) => slide(lean(z) + back(z), lean(z) + square(z) + front(z), y),
    bends: rows.map((r) => r.height),
    mouth,
    widthAtFoot: back(foot),
  }
}

/** Free width, the least over some heights. */
export const leastFree = (recess: Recess, heights: readonly number[], y: number): number =>
  Math.min(...heights.map((z) => recess.right(z, y) - recess.left(z, y)))

/** Both ends of a band of heights, its bends, and a fine ladder between them. */
export function heightsOf(recess: Recess, from: number, to: number): readonly number[] {
  const rungs = Array.from({ length: 41 }, (_, i) => from + ((to - from) * i) / 40)
  return [...rungs, ...recess.bends.filter((z) => z > from && z < to)]
}

function given(job: Job, bay: string): readonly WidthRow[] {
  const answer = answerOf(job, widths, bay)
  return answer === undefined || answer === NOT_MEASURED ? [] : answer
}

function squareOf(job: Job, bay: string, side: 'left' | 'right'): number | undefined {
  const answer = answerOf(job, side === 'left' ? squareLeft : squareRight, bay)
  return answer === undefined || answer === NOT_MEASURED ? undefined : answer
}

function mouthOf(job: Job, bay: string): number | undefined {
  const answer = answerOf(job, returns, bay)
  const deep = answer === undefined || answer === NOT_MEASURED ? [] : answer.filter((r) => r > 0)
  return deep.length === 0 ? undefined : Math.min(...deep)
}

/** Straight between readings; beyond the first and last the nearest is held. */
function through(points: readonly (readonly [z: number, v: number])[]): Line | undefined {
  if (points.length === 0) return undefined
  return (z) => {
    const above = points.findIndex(([at]) => at >= z)
    if (above === -1) return points[points.length - 1]![1]
    if (above === 0) return points[0]![1]
    const [[z0, v0], [z1, v1]] = [points[above - 1]!, points[above]!]
    return v0 + ((v1 - v0) * (z - z0)) / (z1 - z0)
  }
}

const picked = (rows: readonly WidthRow[], pick: (row: WidthRow) => number | undefined): Line | undefined =>
  through(
    rows.flatMap((row) => {
      const v = pick(row)
      return v === undefined ? [] : [[row.height, v] as const]
    }),
  )

/** A face that was not measured differs from the other by the squares that were. */
function faces(
  rows: readonly WidthRow[],
  qLeft: number,
  qRight: number,
): { readonly back: Line; readonly front: Line } {
  const back = picked(rows, (r) => r.back)
  const front = picked(rows, (r) => r.front)
  const narrower = qLeft + qRight
  const nothing: Line = () => 0
  return {
    back: back ?? (front === undefined ? nothing : (z) => front(z) + narrower),
    front: front ?? (back === undefined ? nothing : (z) => back(z) - narrower),
  }
}

/** The left side's lean where it was taken; else what the right side leaves of it; else half of what the width lost. */
function leanOf(rows: readonly WidthRow[], foot: number, back: Line): Line {
  const left = picked(rows, (r) => r.left)
  if (left !== undefined) return (z) => left(z) - left(foot)
  const lost: Line = (z) => back(foot) - back(z)
  const right = picked(rows, (r) => r.right)
  return right === undefined ? (z) => lost(z) / 2 : (z) => lost(z) - (right(z) - right(foot))
}

function squareAt(job: Job, bay: string, back: Line, front: Line): Line {
  const left = squareOf(job, bay, 'left')
  if (left !== undefined) return () => left
  const right = squareOf(job, bay, 'right')
  return right === undefined ? (z) => (back(z) - front(z)) / 2 : (z) => back(z) - front(z) - right
}
