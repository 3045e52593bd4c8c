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
    return explain(error, around)
  }
}

async function explain(error: unknown, around: Surroundings): Promise<number> {
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
