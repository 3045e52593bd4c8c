import { waitingConfirms } from '../../interview/confirmed.ts'
import { makePlan } from '../../plan/plan.ts'
import type { Given } from '../command.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { checkedText } from '../message-text.ts'
import { messageJson } from '../plan-json.ts'
import { readJob } from '../read-input.ts'
import type { Surroundings } from '../surroundings.ts'

/** `check JOB`: the messages of the plan. Ends with 3 for a stop, 6 for a confirm without an answer, 0 when clean. */
export async function check(given: Given, around: Surroundings): Promise<ExitCode> {
  const job = await readJob(given, around)
  const { messages } = makePlan(job, 'thorough')
  const unanswered = waitingConfirms(job, messages)
  if (given.json) {
    around.print(
      JSON.stringify(
        {
          format: 'nichework-check',
          version: 1,
          messages: messages.map((m) => ({
            ...messageJson(m),
            confirmed: m.weight === 'confirm' ? !unanswered.includes(m) : undefined,
          })),
        },
        undefined,
        2,
      ),
    )
  } else {
    for (const message of messages) around.print(`${checkedText(job, message)}\n`)
    around.say(`${messages.length} messages, ${unanswered.length} to confirm.`)
  }
  if (messages.some((m) => m.weight === 'stop')) return EXIT.stop
  return unanswered.length > 0 ? EXIT.unconfirmed : EXIT.done
}
