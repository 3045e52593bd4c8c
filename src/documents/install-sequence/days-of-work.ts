import { type Day, showDay } from '../../units/day.ts'
import { hours, showHours } from '../../units/hours.ts'
import type { HelperTask } from '../audience-fields.ts'

/** The steps that begin on one day at one place. */
export interface WorkDay {
  readonly place: 'shop' | 'site'
  readonly day: Day
  /** `Wed 2 Dec · site day 3 of 7 · 6.8 h` */
  readonly says: string
  readonly tasks: readonly NumberedTask[]
}

export interface NumberedTask {
  readonly number: number
  readonly task: HelperTask
}

const WORDS: Readonly<Record<WorkDay['place'], string>> = { shop: 'workshop day', site: 'site day' }

/** The days in the order of the calendar; one with work at both places comes twice, as the work begins. Steps are numbered through. */
export function daysOfWork(tasks: readonly HelperTask[]): readonly WorkDay[] {
  const own = tasks.flatMap((task) => (isPlace(task.place) ? [{ task, place: task.place }] : []))
  const sorted = own.toSorted((a, b) => order(a.task.start, b.task.start) || a.task.startsAt - b.task.startsAt)
  const days = new Map<string, typeof own>()
  for (const each of sorted) {
    const key = `${each.task.start} ${each.place}`
    days.set(key, [...(days.get(key) ?? []), each])
  }
  const all = [...days.values()]
  return all.flatMap((steps, i): readonly WorkDay[] => {
    const [first] = steps
    if (first === undefined) return []
    const before = all.slice(0, i).flat().length
    const sameKind = all.filter((day) => day[0]?.place === first.place)
    const numbered = steps.map(({ task }, n) => ({ number: before + n + 1, task }))
    const which = `${WORDS[first.place]} ${sameKind.indexOf(steps) + 1} of ${sameKind.length}`
    const says = [showDay(first.task.start), which, ...hourWords(numbered)].join(' · ')
    return [{ place: first.place, day: first.task.start, says, tasks: numbered }]
  })
}

const isPlace = (place: HelperTask['place']): place is WorkDay['place'] => place === 'shop' || place === 'site'

const order = (a: Day, b: Day): number => (a === b ? 0 : a < b ? -1 : 1)

/** A day of visits by others has no hours of ours. */
function hourWords(own: readonly NumberedTask[]): readonly string[] {
  const total = hours(own.reduce((sum, n) => sum + n.task.hours, 0))
  return total > 0 ? [`${showHours(total)} h`] : []
}
