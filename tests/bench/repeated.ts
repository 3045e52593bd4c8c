import { type Answers, baysOf, type Job } from '../../src/job/job.ts'

const LETTERS = 'abcdefghijklmnopqrstuvwxyz'

/** Ids as the interview gives them: a … z, then aa, ab … */
const idAt = (i: number): string =>
  i < LETTERS.length ? (LETTERS[i] ?? '') : `${idAt(Math.floor(i / LETTERS.length) - 1)}${idAt(i % LETTERS.length)}`

/** The job with all bays of its wall, and what was answered at each, standing `times` over from left to right. */
export function repeated(job: Job, times: number): Job {
  const own = baysOf(job)
  const copies = Array.from({ length: times * own.length }, (_, i) => ({ id: idAt(i), from: own[i % own.length] }))
  const spread = (answers: Answers): Answers => ({
    ...(answers.job === undefined ? {} : { job: answers.job }),
    ...Object.fromEntries(copies.map(({ id, from }) => [id, answers[from?.id ?? ''] ?? {}])),
  })
  const facts = spread(job.facts)
  const bays = copies.map(({ id, from }) => ({ id, kind: from?.kind }))
  return { ...job, facts: { ...facts, job: { ...facts.job, bays } }, choices: spread(job.choices) }
}
