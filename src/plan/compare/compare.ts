import type { Issue } from '../../job/job.ts'
import type { Plan } from '../plan.ts'
import { changedBoxes, changedHeights, changedShelves } from './built.ts'
import type { Change } from './change.ts'
import { changedParts, sizeWords } from './parts.ts'
import { changedMessages, changedOrder, changedSheets, changedTotals } from './totals.ts'

export type { Change } from './change.ts'

/** What differs between two plans, most important first: boxes, heights, shelves, sheets, finish, price, stops and confirms, parts, hours, order. */
export const comparePlans = (before: Plan, after: Plan): readonly Change[] =>
  [
    ...changedMessages(before, after),
    ...changedBoxes(before, after),
    ...changedHeights(before, after),
    ...changedShelves(before, after),
    ...changedSheets(before, after),
    ...changedTotals(before, after),
    ...changedOrder(before, after),
    ...changedParts(before, after),
  ].toSorted((a, b) => b.weight - a.weight)

/** Finished size of every part by its mark, in words: what a packet remembers so that the next one can say what changed. */
export const issuedParts = (plan: Plan): Readonly<Record<string, string>> =>
  Object.fromEntries(plan.parts.map((part) => [pieceMark(part), sizeWords(part, plan.show)]))

/** `L2-B1`, or `L-H2 edge` for a piece glued into one thing with others. */
const pieceMark = (part: Plan['parts'][number]): string =>
  part.piece === undefined ? part.mark : `${part.mark} ${part.piece}`

/** What a new revision changes for someone who has started to cut: `L2-B1 bottom was 18, now 17 15/16: cut again`. */
export function changesSince(issue: Issue, plan: Plan): readonly Change[] {
  const now = issuedParts(plan)
  const names = new Map(plan.parts.map((part) => [pieceMark(part), part.name]))
  const gone = Object.keys(issue.parts)
    .filter((mark) => now[mark] === undefined)
    .map((mark) => ({ weight: 3, mark, says: `${mark} is gone: do not use it` }))
  const others = Object.entries(now).flatMap(([mark, size]): readonly Change[] => {
    const was = issue.parts[mark]
    const name = names.get(mark) ?? ''
    if (was === size) return []
    if (was === undefined) return [{ weight: 1, mark, says: `${mark} ${name} is new: ${size}` }]
    return [{ weight: 2, mark, says: `${mark} ${name} was ${whatDiffers(was, size)}: cut again` }]
  })
  return [...gone, ...others].toSorted((a, b) => b.weight - a.weight)
}

/** Only the dimensions that differ when both sizes are of one form; else both in full. */
function whatDiffers(was: string, now: string): string {
  const [old, fresh] = [was.split(' × '), now.split(' × ')]
  if (old.length !== fresh.length) return `${was}, now ${now}`
  const at = old.flatMap((size, i) => (size === fresh[i] ? [] : [i]))
  const pick = (sizes: readonly string[]) => at.map((i) => sizes[i] ?? '').join(' × ')
  return `${pick(old)}, now ${pick(fresh)}`
}
