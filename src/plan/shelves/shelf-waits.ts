import { shelfCount, shelfHeights, shelfThickness } from '../../job/chapters/shelves.ts'
import { answerOf } from '../../job/job.ts'
import { type Field, NOT_MEASURED, type QuestionKey } from '../../things/field.ts'
import type { PlanContext } from '../context.ts'
import type { RunnableWall } from '../survey/survey.ts'
import type { ShelfBay } from './shelf-bay.ts'

/** What shelves share with the rest of the wall. */
export interface SharedWaits {
  /** The walls a bay's shelves line up with, its own among them. */
  readonly together: readonly RunnableWall[]
  /** What the boxes below wait for, by bay id. */
  readonly below: ReadonlyMap<string, readonly QuestionKey[]>
  /** What the mantel line waits for. */
  readonly mantel: readonly QuestionKey[]
}

/**
 * Widths, depth and devices of its own wall always: an outlet moves a shelf. Studs where it hangs on its back. While number,
 * heights or thickness are the rule's own also what they rest on: every bay it lines up with, and the mantel.
 */
export function shelfWaits({ job }: PlanContext, bay: ShelfBay, shared: SharedWaits): readonly QuestionKey[] {
  const { wall } = bay.room
  const isTyped = (field: Field) => {
    const answer = answerOf(job, field, wall.bay.id)
    return answer !== undefined && answer !== NOT_MEASURED
  }
  const hangs = bay.left === 'free' || bay.right === 'free'
  const room = shared.together.flatMap((w) => [...w.waits.ceiling, ...(shared.below.get(w.bay.id) ?? [])])
  const spans = shared.together.flatMap((w) => [
    ...w.waits.widths,
    ...w.waits.depth,
    ...(w.kind === 'flat' ? w.waits.fixing : []),
  ])
  const thickness = isTyped(shelfThickness) ? [] : [...spans, ...room]
  const heights =
    isTyped(shelfHeights) && isTyped(shelfCount)
      ? []
      : [...spans, ...room, ...shared.mantel, ...shared.together.flatMap((w) => w.waits.devices)]
  return unique([
    ...wall.waits.widths,
    ...wall.waits.depth,
    ...wall.waits.devices,
    ...(hangs ? wall.waits.fixing : []),
    ...thickness,
    ...heights,
  ])
}

const unique = (keys: readonly QuestionKey[]): readonly QuestionKey[] => [...new Set(keys)]
