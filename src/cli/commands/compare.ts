import { withTyped } from '../../interview/answers.ts'
import { askedQuestions } from '../../interview/asked.ts'
import type { Job } from '../../job/job.ts'
import { itemized } from '../../plan/compare/itemized.ts'
import { makePlan, type Plan } from '../../plan/plan.ts'
import { WrongUse } from '../../things/failure.ts'
import type { Given } from '../command.ts'
import { compareText } from '../compare-text.ts'
import { EXIT, type ExitCode } from '../exit-code.ts'
import { messageJson } from '../plan-json.ts'
import { readJob } from '../read-input.ts'
import type { Surroundings } from '../surroundings.ts'

/** `compare A B`, `compare JOB --with QUESTION=ANSWER`: what differs between two plans. Neither job is written to. */
export async function compare(given: Given, around: Surroundings): Promise<ExitCode> {
  const [first = '-', second] = given.files
  if ((second === undefined) === (given.with.length === 0)) throw new WrongUse(ONE_OR_THE_OTHER)
  if (first === '-' && second === '-') throw new WrongUse('Only one of the two jobs can come from standard input.')
  const job = await readJob(given, around)
  const other =
    second === undefined ? given.with.reduce(changed, job) : await readJob({ ...given, files: [second] }, around)
  const [before, after] = [makePlan(job, 'thorough'), makePlan(other, 'thorough')]
  if (second === undefined) for (const note of notAsked(given.with, after)) around.say(note)
  const found = itemized(before, after)
  if (given.json) {
    const { came, went } = found.messages
    const messages = { came: came.map(messageJson), went: went.map(messageJson) }
    const document = {
      format: 'nichework-compare',
      version: 1,
      currencies: [before.show.currency, after.show.currency],
      ...found,
      messages,
    }
    around.print(JSON.stringify(document, undefined, 2))
  } else around.print(compareText(found, { before, after }))
  return EXIT.done
}

const ONE_OR_THE_OTHER =
  'compare takes two jobs, or one job and an answer that is changed: nichework compare A B, nichework compare JOB --with a.boxKind=tall'

/** `a.boxKind=tall`: the question's name, and what one would type there; `;` parts the rows of a table. */
function changed(job: Job, text: string): Job {
  const [key, typed] = partedAt(text)
  if (typed === undefined)
    throw new WrongUse(`--with is written QUESTION=ANSWER, such as a.boxKind=tall; this is "${text.slice(0, 60)}".`)
  const read = withTyped(job, { key, typed })
  if (read.faults.length > 0) throw new WrongUse(read.faults.join('\n'))
  return read.job
}

function partedAt(text: string): readonly [key: string, typed: string | undefined] {
  const at = text.indexOf('=')
  return at < 0 ? [text, undefined] : [text.slice(0, at).trim(), text.slice(at + 1).trim()]
}

/** An answer to a question that is not asked in this job is kept and not used: said, so that "no difference" is understood. */
function notAsked(changes: readonly string[], { job, used }: Plan): readonly string[] {
  const asked = new Set<string>(askedQuestions(job, used).map((question) => question.key))
  return changes
    .map((text) => partedAt(text)[0])
    .filter((key) => !asked.has(key))
    .map((key) => `note: ${key} is not asked in this job as it stands, so its answer changes nothing.`)
}
