import { startDay } from '../../job/chapters/job.ts'
import { questionKey } from '../../things/field.ts'
import { type Message, messageKind, raise } from '../../things/message.ts'
import type { DatedTask } from '../../things/task.ts'
import { showDay } from '../../units/day.ts'

export const RECOAT_TOO_LATE = messageKind<{
  readonly coat: string
  readonly next: string
  readonly hours: number
  readonly most: number
  readonly on: string
}>({
  code: 'C11',
  weight: 'confirm',
  source: 'the product’s own sheet; common practice, no source, until it is entered',
  says: ({ coat, next, hours, most, on }) => ({
    short: `${next} follows ${hours} h after ${coat}, its window closes after ${most} h`,
    why: 'Outside its window a coat no longer bites into the one below.',
    todo: `Sand ${coat} before ${next} on ${on}, or take days off or other work out of the days between.`,
  }),
})

/** Coats that come too late on the one before. The dates stay as they are: the person decides. */
export const recoatMessages = (tasks: readonly DatedTask[]): readonly Message[] =>
  tasks.flatMap((coat) => {
    const most = coat.wait.mostClockHours
    const next = tasks.find((t) => t.after.includes(coat.id) && t.work === coat.work)
    if (most === undefined || next === undefined) return []
    const hours = Math.round(next.startsAt - coat.endsAt)
    if (next.startsAt - coat.endsAt <= most) return []
    const values = { coat: coat.title.toLowerCase(), next: next.title, hours, most, on: showDay(next.start) }
    return [raise(RECOAT_TOO_LATE, { about: questionKey('job', startDay), place: 'calendar' }, values)]
  })
