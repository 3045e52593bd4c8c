import type { Message } from '../things/message.ts'

/** A message as the command line prints it: weight and place, the short line, why, what to do, the rule. */
export const messageText = (message: Message): string =>
  [
    `${message.weight} · ${message.place} · ${message.short}`,
    ...[message.why, message.todo].filter((line) => line !== '').map((line) => `  ${line}`),
    `  Rule: ${message.source}`,
    `  Question: ${message.about} · name: ${message.code}@${message.about}`,
  ].join('\n')
