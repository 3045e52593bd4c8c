import type { ShelfCleat } from '../../kinds/shelf/contract.ts'
import { type Length, less, sum, times } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { WallFixing } from '../survey/survey.ts'

/** Screws of a row: two at least, no further apart than the pitch; one where the piece is too short for two. */
const rowOf = (length: Length, end: Length, pitch: Length): number =>
  length < times(end, 3) ? 1 : Math.max(2, 1 + Math.ceil(less(length, times(end, 2)) / pitch))

/** Screws that hold a back cleat: at each stud it crosses, two in a high cleat; along it in masonry or into blocking. */
export function backCleatScrews(
  { figures }: PlanContext,
  cleat: ShelfCleat,
  at: { readonly x: Length; readonly fixing: WallFixing },
): { readonly studs: number | undefined; readonly screws: number } {
  const row = rowOf(cleat.length, figures.length('screw.cleat-end'), figures.length('screw.top-pitch'))
  if (at.fixing.kind === 'masonry') return { studs: undefined, screws: row }
  const studs = studsBehind(at.fixing, at.x, cleat.length)
  const each = cleat.height >= figures.length('cleat.two-screws') ? 2 : 1
  return { studs, screws: studs < 2 ? row : studs * each }
}

const studsBehind = (fixing: WallFixing, x: Length, length: Length): number =>
  fixing.kind === 'studs' ? fixing.centres.filter((c) => c >= x && c <= sum(x, length)).length : 0
