/** The rows of a list that are shown: from the first to before `to`. */
export interface RowWindow {
  readonly from: number
  readonly to: number
}

/**
 * Which rows stand in a window of so many lines, the chosen one in the middle where there are enough on both sides. Rows may
 * be of several lines each; a row is shown whole or not at all, but at least the chosen one.
 */
export function rowWindow(heights: readonly number[], chosen: number, room: number): RowWindow {
  const above = Math.floor((room - (heights[chosen] ?? 1)) / 2)
  const from = Math.min(firstFitting(heights, chosen, above), firstFitting(heights, heights.length, room), chosen)
  let to = from
  for (let lines = heights[to] ?? 0; to < heights.length && lines <= room; lines += heights[to] ?? 0) to += 1
  return { from, to: Math.max(to, chosen + 1) }
}

/** First of the rows that end before `end` and take at most so many lines together. */
function firstFitting(heights: readonly number[], end: number, room: number): number {
  let from = end
  for (let lines = heights[from - 1] ?? 0; from > 0 && lines <= room; lines += heights[from - 1] ?? 0) from -= 1
  return from
}

/**
 * The row to choose for one window further: the next window begins with the last row of this one (or, after a single tall row,
 * right behind it), so that paging through a list shows every row.
 */
export function pageDown(heights: readonly number[], chosen: number, room: number): number {
  const last = heights.length - 1
  const { from, to } = rowWindow(heights, chosen, room)
  const wanted = Math.max(to - 1, from + 1)
  let at = Math.min(chosen + 1, last)
  while (at < last && rowWindow(heights, at + 1, room).from <= wanted) at += 1
  return at
}

/** The row to choose for one window back; the window before ends with the first row of this one. */
export function pageUp(heights: readonly number[], chosen: number, room: number): number {
  const { from, to } = rowWindow(heights, chosen, room)
  const wanted = Math.min(from + 1, to - 1)
  let at = Math.max(chosen - 1, 0)
  while (at > 0 && rowWindow(heights, at - 1, room).to >= wanted) at -= 1
  return at
}
