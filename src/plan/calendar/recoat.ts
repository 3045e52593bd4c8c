import { startDay } from '../../job/chapters/job.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { DatedTask } from '../../things/task.ts'
import { showDay } from '../../units/day.ts'

/** Coats that come too late on the one before; one question for the calendar. */
export const recoatTooLate = messageKind<{ readonly what: string; readonly coats: string }>({
  code: 'C11',
  weight: 'confirm',
  source: 'the product’s own sheet; common practice, no source, until it is entered',
  says: ({ what, coats }) => ({
    short: `${what} after the window of the coat below has closed.`,
    why: `Outside its window a coat no longer bites into the one below. ${coats}.`,
    todo: 'Sand the coat below before the next one, or take days off or other work out of the days between.',
  }),
})

/** Coats that come too late on the one before. The dates stay as they are: the person decides. */
export function recoatMessages(tasks: readonly DatedTask[]): readonly Message[] {
  const late = tasks.flatMap((coat) => {
    const most = coat.wait.mostClockHours
    const next = tasks.find((t) => t.after.includes(coat.id) && t.work === coat.work)
    if (most === undefined || next === undefined || next.startsAt - coat.endsAt <= most) return []
    return [
      `${next.title} on ${showDay(next.start)}: ${Math.round(next.startsAt - coat.endsAt)} h after ${coat.title.toLowerCase()}, ${most} h at most`,
    ]
  })
  if (late.length === 0) return []
  const what = late.length === 1 ? 'A coat follows' : `${late.length} coats follow`
  const where = { about: questionKey('job', startDay), place: 'calendar' }
  return [raise(recoatTooLate, where, { what, coats: late.join('; ') })]
}
