import { type PartitionRow, partitions } from '../../job/chapters/box-inside.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { hasDrawers } from '../fronts/drawer-choice.ts'
import type { Run } from '../run/slot.ts'
import { evenPartition, partitionAt } from './box-sizes.ts'
import { looseShelvesOf, shelvesAsked } from './loose-shelf.ts'

/** A level panel across a box, from the box's underside. */
export interface FixedShelf {
  readonly from: Length
  readonly to: Length
}

/** What divides a box. */
export interface BoxInside {
  /** Left faces of upright dividers, from the box's left outer edge. */
  readonly dividers: readonly Length[]
  readonly fixedShelves: readonly FixedShelf[]
  /** Heights from one level panel to the next, from the bottom up: where loose shelves go. */
  readonly openings: readonly FixedShelf[]
  /** Loose shelves in each opening, in each compartment. */
  readonly loose: readonly number[]
}

interface Outer {
  readonly run: Pick<Run, 'bay'>
  readonly number: number
  readonly width: Length
  readonly height: Length
  readonly carcass: Length
}

/** Dividers, fixed shelves and loose shelves of one box. A row with no room is left out here and named in a message. */
export function insideOf(context: PlanContext, outer: Outer): BoxInside {
  const drawers = hasDrawers(context, outer)
  const rows = drawers ? [] : partitionRows(context, outer.run).filter((row) => row.box === outer.number)
  const dividers = placesOf(context, outer, rows, 'divider').flatMap((p) => (p.fits ? [p.at] : []))
  const shelves = placesOf(context, outer, rows, 'fixed-shelf').flatMap((p) => (p.fits ? [p.at] : []))
  const fixedShelves = shelves.map((from) => ({ from, to: sum(from, outer.carcass) }))
  const openings = openingsOf(outer, fixedShelves)
  const wanted = looseShelvesOf(context, outer.height, outer.carcass)
  // A fixed shelf takes the place of a loose one, unless their number was asked for.
  const count = drawers ? 0 : shelvesAsked(context) ? wanted : Math.max(0, wanted - fixedShelves.length)
  return { dividers, fixedShelves, openings, loose: spread(count, openings) }
}

export const partitionRows = ({ settle }: PlanContext, run: Pick<Run, 'bay'>): readonly PartitionRow[] =>
  settle.choice(partitions, run.bay, () => ({ value: [], because: 'nothing is added unasked' }))

/** One row with where its near face comes, and whether it keeps clear of its neighbours. */
export interface PlacedPartition {
  readonly row: PartitionRow
  readonly at: Length
  readonly fits: boolean
  /** Middle nearest to what was asked that fits beside the others; undefined where there is none. */
  readonly nearest: Length | undefined
}

/** The partitions of one kind in a box, from the left or from below. */
export function placesOf(
  context: PlanContext,
  { width, height, carcass }: Outer,
  rows: readonly PartitionRow[],
  what: PartitionRow['what'],
): readonly PlacedPartition[] {
  const boxSize = what === 'divider' ? width : height
  const least = context.figures.length('box.opening-least')
  const own = rows.filter((row) => row.what === what)
  const middles = own
    .map((row, i) => ({
      row,
      middle: row.at ?? evenPartition({ boxSize, carcassThickness: carcass, count: own.length, place: i + 1 }),
    }))
    .toSorted((a, b) => a.middle - b.middle)
  return middles.reduce<readonly PlacedPartition[]>((done, { row, middle }) => {
    const at = partitionAt({ middle, carcassThickness: carcass, cut: context.cut })
    const before = done.findLast((p) => p.fits)
    const from = sum(before?.at ?? ZERO, carcass, least)
    const to = less(boxSize, times(carcass, 2), least)
    const fits = at >= from && at <= to
    const half = over(carcass, 2)
    const nearest = at < from ? context.cut.up(sum(from, half)) : context.cut.down(sum(to, half))
    return [...done, { row, at, fits, nearest: fits || from > to ? undefined : nearest }]
  }, [])
}

function openingsOf({ height, carcass }: Outer, fixed: readonly FixedShelf[]): readonly FixedShelf[] {
  const starts = [carcass, ...fixed.map((s) => s.to)]
  const ends = [...fixed.map((s) => s.from), less(height, carcass)]
  return ends.map((to, i) => ({ from: starts[i] ?? carcass, to }))
}

/** One after the other into the opening whose shelves stand widest apart. */
function spread(count: number, openings: readonly FixedShelf[]): readonly number[] {
  return Array.from({ length: count }).reduce<readonly number[]>(
    (loose) => {
      const gaps = openings.map(({ from, to }, i) => less(to, from) / ((loose[i] ?? 0) + 1))
      const widest = gaps.indexOf(Math.max(...gaps))
      return loose.map((n, i) => (i === widest ? n + 1 : n))
    },
    openings.map(() => 0),
  )
}
