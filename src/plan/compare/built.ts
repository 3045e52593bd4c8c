import type { Length } from '../../units/length.ts'
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

type Words = (before: Plan, after: Plan, bay: string) => readonly string[]

/** One change a bay, of the words that differ there; bays in which the same changes are said together. */
function byBay(weight: number, wordsOf: Words, [before, after]: readonly [Plan, Plan]): readonly Change[] {
  const said = bayIds(before, after)
    .map((id) => ({ name: nameOf(id, before, after), says: wordsOf(before, after, id).join(', ') }))
    .filter(({ says }) => says !== '')
  return [...new Set(said.map((s) => s.says))].map((says) => ({
    weight,
    says: `${said.flatMap((s) => (s.says === says ? [s.name] : [])).join(' and ')}: ${says}`,
  }))
}

const differing = (was: string, now: string, thing = ''): readonly string[] =>
  was === now ? [] : [`${thing}${thing === '' ? '' : ' '}${was} → ${now}`]

/** `left alcove: run 38 → 39 1/4, 2 boxes of 19 5/8`. */
export const changedBoxes = (before: Plan, after: Plan): readonly Change[] =>
  byBay(WEIGHTS.boxes, boxWords, [before, after])

function boxWords(before: Plan, after: Plan, bay: string): readonly string[] {
  const [was, now] = [boxesIn(before, bay), boxesIn(after, bay)]
  const [old, fresh] = [was[0], now[0]]
  const [counted, recounted] = [boxCountWords(before, was), boxCountWords(after, now)]
  if (old === undefined || fresh === undefined) return differing(counted, recounted)
  const size = (of: (box: Box) => Length) => [before.show.length(of(old)), after.show.length(of(fresh))] as const
  const run = differing(...size((b) => b.run.width), 'run')
  return [
    ...run,
    ...(run.length > 0 && counted !== recounted ? [recounted] : differing(counted, recounted)),
    ...differing(...size((b) => b.height), 'box height'),
    ...differing(...size((b) => b.depth), 'box depth'),
  ]
}

const boxesIn = (plan: Plan, bay: string): readonly Box[] => plan.boxes.boxes.filter((b) => b.run.bay.id === bay)

function boxCountWords({ show }: Plan, boxes: readonly Box[]): string {
  if (boxes.length === 0) return 'no boxes'
  const widths = [...new Set(boxes.map((b) => show.length(b.width)))]
  return `${boxes.length} ${boxes.length === 1 ? 'box' : 'boxes'} of ${widths.join(' and ')}`
}

/** Plinth, counter and mantel heights. */
export const changedHeights = (before: Plan, after: Plan): readonly Change[] => [
  ...plinthWords(before, after).map((says) => ({ weight: WEIGHTS.heights, says })),
  ...byBay(WEIGHTS.heights, counterWords, [before, after]),
  ...differing(mantelWords(before), mantelWords(after), 'mantel top').map((says) => ({
    weight: WEIGHTS.heights,
    says,
  })),
]

/** `plinth 4 → 5 1/2`, where both plans have runs. */
const plinthWords = (before: Plan, after: Plan): readonly string[] =>
  before.slots.runs.length === 0 || after.slots.runs.length === 0
    ? []
    : differing(before.show.length(before.slots.plinth), after.show.length(after.slots.plinth), 'plinth')

function counterWords(before: Plan, after: Plan, bay: string): readonly string[] {
  const [was, now] = [before.tops.counterTop.get(bay), after.tops.counterTop.get(bay)]
  return was === undefined || now === undefined
    ? []
    : differing(before.show.length(was), after.show.length(now), 'counter top')
}

const mantelWords = ({ mantel, show }: Plan): string =>
  mantel.mantelTop === undefined ? 'none' : show.length(mantel.mantelTop)

/** `left alcove: 3 shelves at 52, 64, 76 → 2 shelves at 55, 72`; heights alone: `3 shelves at 52, 64, 76 → 53, 65, 77`. */
export const changedShelves = (before: Plan, after: Plan): readonly Change[] =>
  byBay(WEIGHTS.shelves, shelfWords, [before, after])

function shelfWords(before: Plan, after: Plan, bay: string): readonly string[] {
  const [was, now] = [shelvesIn(before, bay), shelvesIn(after, bay)]
  const same = was.count === now.count
  return [
    ...differing(was.says, same ? now.heights : now.says).filter(() => was.says !== now.says),
    ...(was.count === 0 || now.count === 0 ? [] : differing(was.thick, now.thick, 'shelf thickness')),
  ]
}

function shelvesIn({ shelves, show }: Plan, bay: string) {
  const here = shelves.shelves.filter((s) => s.bay.id === bay)
  const heights = here.map((s) => show.length(s.z)).join(', ')
  return {
    count: here.length,
    heights,
    says: here.length === 0 ? 'no shelves' : `${here.length} ${here.length === 1 ? 'shelf' : 'shelves'} at ${heights}`,
    thick: [...new Set(here.map((s) => show.length(s.thickness)))].join(' and '),
  }
}
