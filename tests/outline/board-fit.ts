import { HAIR, heightsOf, type Recess } from './recess.ts'

/** A board seen in plan, seated: its back left corner at x, both ends straight from back to front. */
export interface Board {
  readonly x: number
  readonly back: number
  readonly front: number
  /** How far the front left corner lies right of the back left one. */
  readonly shift: number
  readonly depth: number
  /** Its lower and upper face. */
  readonly from: number
  readonly to: number
}

const leftEnd = (b: Board, y: number) => b.x + (b.shift * y) / b.depth
const rightEnd = (b: Board, y: number) => leftEnd(b, y) + b.back + ((b.front - b.back) * y) / b.depth

const STATIONS = 8
const spread = (to: number): readonly number[] => Array.from({ length: STATIONS + 1 }, (_, i) => (to * i) / STATIONS)

/** How far to the side the board may be moved when it is still `out` of its seat: least and most. */
export function roomAside(recess: Recess, board: Board, out: number): readonly [least: number, most: number] {
  const mouth = recess.mouth ?? board.depth
  const inside = Math.min(board.depth, mouth - out)
  if (inside < 0) return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  const at = heightsOf(recess, board.from, board.to).flatMap((z) => spread(inside).map((y) => ({ z, y })))
  return [
    Math.max(...at.map(({ z, y }) => recess.left(z, y + out) - leftEnd(board, y))),
    Math.min(...at.map(({ z, y }) => recess.right(z, y + out) - rightEnd(board, y))),
  ]
}

/** Reasons the board cannot be where it is seated. */
export function seatFaults(recess: Recess, board: Board, says: string): readonly string[] {
  const [least, most] = roomAside(recess, board, 0)
  return least > HAIR || most < -HAIR ? [`${says} stands in a wall where it is seated`] : []
}

/** Whether it can be pushed straight back, free to move aside, without turning or tipping. */
export function slidesIn(recess: Recess, board: Board): boolean {
  return spread(recess.mouth ?? 0).every((out) => {
    const [least, most] = roomAside(recess, board, out)
    return least <= most + HAIR
  })
}

const DEGREE = Math.PI / 180

/** Whether it goes in with one end low: through the mouth at some slant, under the ceiling, and then down flat. */
export function tipsIn(recess: Recess, board: Board, ceiling: number): boolean {
  const thick = board.to - board.from
  const free = (y: number) =>
    Math.min(...heightsOf(recess, board.from, board.to).map((z) => recess.right(z, y) - recess.left(z, y)))
  const longest = Math.max(board.back, board.front)
  const slants = Array.from({ length: 900 }, (_, i) => (i / 10) * DEGREE)
  const through = slants.some(
    (a) =>
      longest * Math.cos(a) + thick * Math.sin(a) <= free(recess.mouth ?? board.depth) + HAIR &&
      longest * Math.sin(a) + thick * Math.cos(a) <= ceiling - board.from,
  )
  const lowers = (length: number, y: number) => Math.hypot(length, thick) <= free(y) + HAIR
  return through && lowers(board.back, 0) && lowers(board.front, board.depth)
}

/** Gap of each end to its wall at a depth, least and most over the board's thickness. */
export function endGap(recess: Recess, board: Board, side: 'left' | 'right', y: number): readonly [number, number] {
  const gaps = heightsOf(recess, board.from, board.to).map((z) =>
    side === 'left' ? leftEnd(board, y) - recess.left(z, y) : recess.right(z, y) - rightEnd(board, y),
  )
  return [Math.min(...gaps), Math.max(...gaps)]
}

/** Whether a gap named on paper is the one found, to a cut step (what rounding leaves over opens it by less than one). */
export const gapFaults = (
  at: { readonly says: string; readonly said: number; readonly step: number },
  found: readonly [number, number],
): readonly string[] =>
  found[0] > at.said + at.step || found[1] < at.said - at.step
    ? [`${at.says}: the joint says ${at.said}, found ${found[0]} to ${found[1]}`]
    : []
