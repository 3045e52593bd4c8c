import { type Edge, edgeAt, type Knot } from '../../geometry/edge.ts'
import { boxHeight, kick, tallHeight } from '../../job/chapters/cabinets.ts'
import { shelfHeights } from '../../job/chapters/shelves.ts'
import { ceiling, floor, widths } from '../../job/chapters/wall.ts'
import { type Formula, formula, type Ref } from '../../things/formula.ts'
import type { Length } from '../../units/length.ts'

interface Reading {
  readonly edge: Edge
  readonly at: Length
}

/** Where along a line it is read: heights of what stands there, or where the run begins and ends. */
const PLACES: readonly Ref[] = [
  { id: 'levels.plinth' },
  { id: 'levels.box-top' },
  { id: 'counter.top' },
  { id: 'shelf.heights' },
  { id: 'shelf.lower-face' },
  { id: 'slot.start' },
  { id: 'slot.run-end' },
  kick,
  boxHeight,
  tallHeight,
  shelfHeights,
  widths,
]

/** The measured points on either side of a place; one of them beyond the ends. */
function around(edge: Edge, at: Length): readonly Knot[] {
  const above = edge.find((knot) => knot.at >= at)
  const below = edge.findLast((knot) => knot.at <= at)
  return [...new Set([below, above])].filter((knot) => knot !== undefined)
}

/** Reads a measured line between its points, straight from one to the next; beyond the ends the nearest is held. */
function readingOf(id: string, what: string, from: readonly Ref[]): Formula<Reading, Length> {
  return formula<Reading & { readonly readings?: readonly Length[] }, Length>(
    {
      id,
      plain: `${what}: between the readings on either side, in proportion`,
      source: 'geometry',
      told: ({ edge, at }) => ({ readings: around(edge, at).map(({ v }) => v), at }),
      from: { readings: from, at: PLACES },
      units: { at: 'length' },
    },
    ({ edge, at }) => edgeAt(edge, at),
  )
}

/** A line through readings of the width table: widths at the back or the front, or a lean. */
export const widthReading = readingOf('survey.width-reading', 'a reading of the width table', [
  widths,
  { id: 'survey.lean-from-foot' },
  { id: 'survey.assumed-width' },
])

/** A return over its height, at the back wall or at its front edge. */
export const edgeReading = readingOf('survey.edge-reading', 'the edge of the return', [
  { id: 'survey.lean' },
  { id: 'survey.left-front' },
  { id: 'survey.right-back' },
  { id: 'survey.right-front' },
])

/** How far the floor lies under the level line's zero. */
export const floorReading = readingOf('survey.floor-reading', 'the drop of the floor', [floor])

/** The ceiling over the level line's zero. */
export const ceilingReading = readingOf('survey.ceiling-reading', 'the ceiling', [ceiling])
