import { EXIT } from './exit-code.ts'
import { readCommand } from './read-command.ts'
import type { Surroundings } from './surroundings.ts'

/** Runs one command line and gives its exit code; every failure ends here, in words. */
export async function run(words: readonly string[], around: Surroundings): Promise<number> {
  try {
    const asked = readCommand(words)
    if (asked.kind === 'help') around.print((await import('./help.ts')).helpText())
    if (asked.kind === 'version') around.print((await import('./version.ts')).TOOL)
    return asked.kind === 'command' ? await asked.command.run(asked.given, around) : EXIT.done
  } catch (error) {
    // Explaining is loaded only now, and may be what is gone.
    return explain(error, around).catch((fault: unknown) => explainGone(fault, around))
  }
}

async function explain(error: unknown, around: Surroundings): Promise<number> {
  if (isGone(error)) return explainGone(error, around)
  const { failureWords } = await import('./failure-words.ts')
  const planned = failureWords(error)
  if (planned !== undefined) {
    around.say(planned.words)
    return planned.code
  }
  const { noteFault } = await import('./fault-note.ts')
  around.say(await noteFault(error, around))
  return EXIT.fault
}

/** A piece of the program that is loaded late is not there any more: another build has taken its place. */
const isGone = (error: unknown): error is Error =>
  error instanceof Error &&
  'code' in error &&
  error.code === 'ERR_MODULE_NOT_FOUND' &&
  error.message.startsWith('Cannot find module')

function explainGone(error: unknown, around: Surroundings): number {
  if (!isGone(error)) throw error
  around.say('nichework was updated while it was open. Your answers are saved. Start it again: npm start')
  return EXIT.fault
}
