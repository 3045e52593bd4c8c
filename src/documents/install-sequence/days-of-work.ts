import { type Day, showDay } from '../../units/day.ts'
import { hours, showHours } from '../../units/hours.ts'
import type { HelperTask } from '../audience-fields.ts'

/** The steps that begin on one day at one place, numbered through the whole place. */
export interface WorkDay {
  readonly place: 'shop' | 'site'
  readonly day: Day
  /** `Wed 2 Dec · site day 3 of 7` */
  readonly says: string
  readonly under: string
  readonly tasks: readonly NumberedTask[]
}

export interface NumberedTask {
  readonly number: number
  readonly task: HelperTask
}

/** Workshop days, then site days, each in the order of the calendar. */
export const daysOfWork = (tasks: readonly HelperTask[]): readonly WorkDay[] => [
  ...daysAt('shop', tasks),
  ...daysAt('site', tasks),
]

function daysAt(place: WorkDay['place'], all: readonly HelperTask[]): readonly WorkDay[] {
  const tasks = all.filter((t) => t.place === place).toSorted((a, b) => a.startsAt - b.startsAt)
  const numbered = tasks.map((task, i) => ({ number: i + 1, task }))
  const days = [...new Set(tasks.map((t) => t.start))].sort()
  return days.map((day, i) => {
    const own = numbered.filter((n) => n.task.start === day)
    const word = place === 'site' ? 'site day' : 'workshop day'
    return { place, day, says: `${showDay(day)} · ${word} ${i + 1} of ${days.length}`, under: underOf(own), tasks: own }
  })
}

function underOf(own: readonly NumberedTask[]): string {
  const total = own.reduce((sum, n) => sum + n.task.hours, 0)
  const people = own.some((n) => n.task.people === 2) ? 'two people for part of it' : 'one person'
  return `${own.map((n) => n.task.title).join(' · ')} · ${showHours(hours(total))} h · ${people}`
}
