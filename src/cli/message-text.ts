import { confirmationOf } from '../interview/confirmed.ts'
import type { Job } from '../job/job.ts'
import type { Message } from '../things/message.ts'

/** A message as the command line prints it: weight and place, the short line, why, what to do, the rule. */
export const messageText = (message: Message): string =>
  [
    `${message.weight} · ${message.place} · ${message.short}`,
    ...[message.why, message.todo].filter((line) => line !== '').map((line) => `  ${line}`),
    `  Rule: ${message.source}`,
    `  Question: ${message.about} · name: ${message.code}@${message.about}`,
  ].join('\n')

/** The same as `check` lists it: a confirm that has its yes says so, with its day. */
export function checkedText(job: Job, message: Message): string {
  const given = message.weight === 'confirm' ? confirmationOf(job, message) : undefined
  const text = messageText(message)
  return given === undefined ? text : text.replace(/^confirm/, `confirmed ${given.on}`)
}
