import type { Confirmation, Job } from '../job/job.ts'
import type { Message } from '../things/message.ts'
import type { Day } from '../units/day.ts'

/** The confirms of a plan that nobody has said yes to, for the numbers they have now. */
export const waitingConfirms = (job: Job, messages: readonly Message[]): readonly Message[] =>
  messages.filter((m) => m.weight === 'confirm' && !isConfirmed(job, m))

/** Whether this confirm was given an explicit yes, for these very numbers. */
export const isConfirmed = (job: Job, message: Message): boolean => confirmationOf(job, message) !== undefined

/** The yes given to this message for the numbers it has now. */
export const confirmationOf = (job: Job, message: Message): Confirmation | undefined =>
  job.confirmed.find((c) => sameMatter(c, message) && sameValues(c.values, message.values))

/** The job with a yes to this message, kept with its day and numbers. */
export const withConfirmation = (job: Job, message: Message, on: Day): Job => ({
  ...job,
  confirmed: [
    ...job.confirmed.filter((c) => !(sameMatter(c, message) && sameValues(c.values, message.values))),
    { code: message.code, about: message.about, on, values: message.values },
  ],
})

const sameMatter = (c: Confirmation, m: Message): boolean => c.code === m.code && c.about === m.about

function sameValues(a: Message['values'], b: Message['values']): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)])
  return [...keys].every((key) => a[key] === b[key])
}
