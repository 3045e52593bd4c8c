import { PacketHeld } from '../packet/allowed.ts'
import { DiskProblem, InputUnreadable, JobTooNew, NicheworkError, TemplateBroken } from '../things/failure.ts'
import { EXIT, type ExitCode } from './exit-code.ts'
import { messageText } from './message-text.ts'

/** Words and exit code of a planned failure; undefined for a fault of the program itself. */
export function failureWords(error: unknown): { readonly words: string; readonly code: ExitCode } | undefined {
  if (error instanceof PacketHeld) return heldWords(error)
  if (error instanceof InputUnreadable) return { words: unreadable(error), code: EXIT.unreadable }
  if (error instanceof JobTooNew)
    return { words: `${error.message} Update nichework; the file is untouched.`, code: EXIT.unreadable }
  if (error instanceof TemplateBroken) return { words: error.message, code: EXIT.unreadable }
  if (error instanceof DiskProblem)
    return { words: `${error.message}. What was there before is untouched.`, code: EXIT.cannotWrite }
  // The rest are about how the program was called.
  if (error instanceof NicheworkError) return { words: error.message, code: EXIT.wrongUse }
  return undefined
}

const unreadable = ({ file, faults }: InputUnreadable): string =>
  faults.length === 1
    ? `${file}: ${faults[0]}`
    : `${file} has ${faults.length} faults:\n${faults.map((fault) => `  ${fault}`).join('\n')}`

function heldWords({ held }: PacketHeld): { readonly words: string; readonly code: ExitCode } {
  const { stops, unanswered } = held
  const stopped = stops.length > 0
  const head = stopped
    ? 'Nothing is written: this job has a stop.'
    : 'Nothing is written: confirm these in the interview, or list them under "confirm" in the answers file.'
  return {
    words: [head, ...[...stops, ...unanswered].map(messageText)].join('\n\n'),
    code: stopped ? EXIT.stop : EXIT.unconfirmed,
  }
}
