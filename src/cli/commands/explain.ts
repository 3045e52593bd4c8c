import type { Trace } from '../../plan/trace/trace-node.ts'
import { traceables, tracesNamed } from '../../plan/trace/traceable.ts'
import { tracing } from '../../plan/trace/tracing.ts'
import { lookOf } from '../../screens/look.ts'
import { WrongUse } from '../../things/failure.ts'
import { nearestWords } from '../../things/nearest.ts'
import type { Given } from '../command.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { readJob } from '../read-input.ts'
import type { Surroundings } from '../surroundings.ts'
import { traceText } from '../trace-text.ts'

/** `explain JOB MARK`: where the numbers of a part, a total or a question come from. */
export async function explain(given: Given, around: Surroundings): Promise<ExitCode> {
  const mark = given.words.join(' ')
  const known = traceables(tracing(await readJob(given, around)))
  const traces = tracesNamed(known, mark)
  if (traces.length === 0)
    throw new WrongUse(
      unknownMark(
        mark,
        known.flatMap(({ names }) => names),
      ),
    )
  around.print(given.json ? traceJson(mark, traces) : traceText(traces, lookOf(around.env)))
  return EXIT.done
}

const traceJson = (mark: string, traces: readonly Trace[]): string =>
  JSON.stringify({ format: 'nichework-explain', version: 1, mark, traces }, undefined, 2)

const unknownMark = (mark: string, names: readonly string[]): string => {
  const near = nearestWords(mark, [...new Set(names)]).join(', ')
  return `Nothing in this job is called "${mark}".${near === '' ? '' : ` Near to it: ${near}.`} A mark (L2-S1), a total (price, hours, finish, sheets), a question (job.boxHeight), a purchase, a task or a formula can be asked about.`
}
