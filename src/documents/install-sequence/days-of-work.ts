import { type Day, showDay } from '../../units/day.ts'
import { hours, showHours } from '../../units/hours.ts'
import type { HelperTask } from '../audience-fields.ts'

/** The steps that begin on one day at one place, numbered through the whole place. */
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
    const says = [showDay(day), `${word} ${i + 1} of ${days.length}`, ...hourWords(own)].join(' · ')
    return { place, day, says, tasks: own }
  })
}

/** A day of visits by others has no hours of ours. */
function hourWords(own: readonly NumberedTask[]): readonly string[] {
  const total = hours(own.reduce((sum, n) => sum + n.task.hours, 0))
  return total > 0 ? [`${showHours(total)} h`] : []
}
