import type { Box } from '../boxes/boxes.ts'
import type { Plan } from '../plan.ts'
import type { Change } from './change.ts'
import { WEIGHTS } from './weights.ts'

/** Bays of either plan, each once. */
const bayIds = (before: Plan, after: Plan): readonly string[] => [
  ...new Set([...before.bays, ...after.bays].map((b) => b.id)),
]
const nameOf = (id: string, before: Plan, after: Plan): string =>
  (after.bays.find((b) => b.id === id) ?? before.bays.find((b) => b.id === id))?.name ?? id

/** One change where the words differ; a bay that stands in one plan only says so by its words. */
const differing = (weight: number, place: string, before: string, after: string): readonly Change[] =>
  before === after ? [] : [{ weight, says: `${place}: ${before} → ${after}` }]

/** `left alcove: 2 boxes of 19 1/2 → 1 box of 39`. */
export const changedBoxes = (before: Plan, after: Plan): readonly Change[] =>
  bayIds(before, after).flatMap((id) =>
    differing(WEIGHTS.boxes, nameOf(id, before, after), boxWords(before, id), boxWords(after, id)),
  )

function boxWords(plan: Plan, bay: string): string {
  const boxes = plan.boxes.boxes.filter((b) => b.run.bay.id === bay)
  if (boxes.length === 0) return 'no boxes'
  const widths = [...new Set(boxes.map((b) => plan.show.length(b.width)))]
  return `${boxes.length} ${boxes.length === 1 ? 'box' : 'boxes'} of ${widths.join(' and ')}${deep(plan, boxes)}`
}

const deep = (plan: Plan, boxes: readonly Box[]): string => {
  const [first] = boxes
  return first === undefined ? '' : `, ${plan.show.length(first.height)} high, ${plan.show.length(first.depth)} deep`
}

/** Plinth, counter and mantel heights. */
export const changedHeights = (before: Plan, after: Plan): readonly Change[] => [
  ...one('plinth', before.slots.runs.length, after.slots.runs.length, [
    before.show.length(before.slots.plinth),
    after.show.length(after.slots.plinth),
  ]),
  ...bayIds(before, after).flatMap((id) => {
    const [was, now] = [before.tops.counterTop.get(id), after.tops.counterTop.get(id)]
    return was === undefined || now === undefined
      ? []
      : differing(
          WEIGHTS.heights,
          `${nameOf(id, before, after)}, counter top`,
          before.show.length(was),
          after.show.length(now),
        )
  }),
  ...differing(WEIGHTS.heights, 'mantel top', mantelWords(before), mantelWords(after)),
]

/** `plinth 4 → 5 1/2`, where both plans have runs. */
const one = (
  thing: string,
  runsBefore: number,
  runsAfter: number,
  [was, now]: readonly [string, string],
): readonly Change[] =>
  runsBefore === 0 || runsAfter === 0 || was === now
    ? []
    : [{ weight: WEIGHTS.heights, says: `${thing} ${was} → ${now}` }]

const mantelWords = (plan: Plan): string =>
  plan.mantel.mantelTop === undefined ? 'none' : plan.show.length(plan.mantel.mantelTop)

/** `left alcove: 3 shelves at 52, 64, 76 → 2 shelves at 55, 72`. */
export const changedShelves = (before: Plan, after: Plan): readonly Change[] =>
  bayIds(before, after).flatMap((id) =>
    differing(WEIGHTS.shelves, nameOf(id, before, after), shelfWords(before, id), shelfWords(after, id)),
  )

function shelfWords(plan: Plan, bay: string): string {
  const shelves = plan.shelves.shelves.filter((s) => s.bay.id === bay)
  if (shelves.length === 0) return 'no shelves'
  const thick = [...new Set(shelves.map((s) => plan.show.length(s.thickness)))].join(' and ')
  return `${shelves.length} ${shelves.length === 1 ? 'shelf' : 'shelves'} at ${shelves.map((s) => plan.show.length(s.z)).join(', ')}, ${thick} thick`
}
