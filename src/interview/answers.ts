import * as z from 'zod'
import { type OwnFigures, ownFiguresSchema } from '../figures/own-figures.ts'
import { emptyJob, type Job, withAnswer, withOwnFigures } from '../job/job.ts'
import { makePlan } from '../plan/plan.ts'
import type { Message } from '../things/message.ts'
import { nearestWords } from '../things/nearest.ts'
import { type Day, day } from '../units/day.ts'
import { everyQuestion, type Question } from './asked.ts'
import { askingOf } from './asking.ts'
import { withConfirmation } from './confirmed.ts'
import { enter } from './enter.ts'

/** What reading an answers file gives: the job as far as it could be read, and every fault in words with its key. */
export interface AnswersRead {
  readonly job: Job
  readonly faults: readonly string[]
}

export const ANSWERS_SCHEMA = 'answers-1'

const typedText = z.union([z.string(), z.number(), z.array(z.string())])

const answersFile = z.strictObject({
  schema: z.literal(ANSWERS_SCHEMA),
  id: z
    .string()
    .regex(/^[a-z0-9-]{4,40}$/)
    .optional(),
  created: z.iso.date().optional(),
  demo: z.boolean().optional(),
  figures: ownFiguresSchema.optional(),
  answers: z.record(z.string(), typedText),
  confirm: z.array(z.string()).or(z.record(z.string(), z.string())).optional(),
})
type AnswersFile = z.infer<typeof answersFile>

/** Whether a JSON document calls itself an answers file. */
export const isAnswersFile = (document: unknown): boolean =>
  typeof document === 'object' && document !== null && 'schema' in document && document.schema === ANSWERS_SCHEMA

/**
 * Reads an answers file: a question's key → the text one would type there (a list of texts for the rows of a table).
 * Units, money and the wall are read first, so that the order in the file does not matter. `fallback` stands in for an id
 * and a day the file does not give, and `figures` for the person's own where it says nothing of one. `confirm` lists `code@question` for each caution that gets a yes.
 */
export function readAnswers(
  document: unknown,
  fallback: { readonly id: string; readonly today: Day; readonly figures?: OwnFigures },
): AnswersRead {
  const file = answersFile.safeParse(document)
  if (!file.success)
    return { job: emptyJob(fallback.id, fallback.today), faults: file.error.issues.map((i) => shapeFault(i)) }
  const empty = emptyJob(file.data.id ?? fallback.id, file.data.created ?? fallback.today)
  const begun = withOwnFigures(empty, { ...fallback.figures, ...file.data.figures })
  const job = file.data.demo === undefined ? begun : { ...begun, demo: file.data.demo }
  const answered = readAll(file.data, { job, faults: [] })
  return confirmAll(answered, file.data)
}

const shapeFault = (issue: z.core.$ZodIssue): string =>
  issue.path[0] === 'figures' && issue.path.length > 1
    ? `figures ${issue.path.slice(1).join('.')}: ${issue.message}`
    : issue.code === 'unrecognized_keys'
      ? `${issue.keys.join(', ')}: an answers file has schema, id, created, demo, figures, answers and confirm; questions stand under "answers".`
      : `${issue.path.join('.') || 'the file'}: ${SHAPES[String(issue.path[0])] ?? 'an answers file is a JSON object.'}`

const SHAPES: Readonly<Record<string, string>> = {
  schema: `"${ANSWERS_SCHEMA}" stands here.`,
  id: 'small letters, figures and hyphens, 4 to 40 of them.',
  created: 'a day like 2026-12-10.',
  demo: 'true or false.',
  figures: 'your own figures for this job: {"filler.nominal": {"inch": "1 1/4 in", "because": "…"}}.',
  answers: 'the text one would type at the question, in quotes; a list of texts for the rows of a table.',
  confirm: 'a list of "code@question" in quotes.',
}

/** What other answers are read by: figures by the units, amounts by the currency, the bays by the wall. */
const FIRST = ['job.units', 'job.currency', 'job.bays']

function readAll(file: AnswersFile, begun: AnswersRead): AnswersRead {
  const keys = Object.keys(file.answers)
  const order = [...FIRST.filter((k) => keys.includes(k)), ...keys.filter((k) => !FIRST.includes(k))]
  const typedOf = (key: string) => ({ key, typed: file.answers[key] ?? '' })
  const settings = order
    .filter((k) => FIRST.includes(k))
    .reduce((read, key) => readOne(typedOf(key), read, contextOf(read.job)), begun)
  const rest = order.filter((k) => !FIRST.includes(k))
  const context = contextOf(settings.job)
  return rest.reduce((read, key) => readOne(typedOf(key), read, context), settings)
}

interface ReadContext {
  readonly plan: Pick<ReturnType<typeof makePlan>, 'show' | 'used'>
  readonly questions: ReadonlyMap<string, Question>
}

const contextOf = (job: Job): ReadContext => ({
  plan: makePlan(job, 'quick'),
  questions: new Map(everyQuestion(job).map((q) => [q.key, q])),
})

/** A question's key with what one would type there. */
export interface Typed {
  readonly key: string
  readonly typed: z.infer<typeof typedText>
}

/** The job with one answer as it is typed at its question; faults name the question, the text and what is allowed. */
export const withTyped = (job: Job, one: Typed): AnswersRead => readOne(one, { job, faults: [] }, contextOf(job))

function readOne({ key, typed }: Typed, read: AnswersRead, context: ReadContext): AnswersRead {
  const question = context.questions.get(key)
  if (question === undefined) return withFault(read, unknownKey(key, [...context.questions.keys()]))
  const text = Array.isArray(typed) ? typed.join('\n') : String(typed ?? '')
  const entered = enter(text, askingOf(question, read.job, context.plan, day(read.job.created)))
  return entered.kind === 'answer'
    ? { ...read, job: withAnswer(read.job, question.field, question.place, entered.value) }
    : withFault(read, `${key} (${wordsOf(question)}): "${text.slice(0, 60)}": ${entered.says}${choices(question)}`)
}

/** The list a person at the screen would see. */
const choices = ({ field }: Question): string =>
  field.entry.kind === 'choice'
    ? ` One of: ${field.entry.options.map((o, i) => `${i + 1} ${o.says}`).join(' · ')}.`
    : ''

const withYes = (read: AnswersRead, message: Message): AnswersRead => ({
  job: withConfirmation(read.job, message, day(read.job.created)),
  faults: read.faults,
})

const withFault = (read: AnswersRead, fault: string): AnswersRead => ({ ...read, faults: [...read.faults, fault] })

const wordsOf = ({ field, bay }: Question): string => (bay === undefined ? field.short : `${bay.name}, ${field.short}`)

function unknownKey(key: string, known: readonly string[]): string {
  const near = nearestWords(key, known)
  const hint =
    near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ' The wall has no such bay, or there is no such question.'
  return `${key}: no question has this name.${hint}`
}

function confirmAll(read: AnswersRead, file: AnswersFile): AnswersRead {
  const names = Array.isArray(file.confirm) ? file.confirm : Object.keys(file.confirm ?? {})
  if (names.length === 0) return read
  const open = makePlan(read.job, 'quick').messages.filter((m) => m.weight === 'confirm')
  return names.reduce((now, name) => {
    const message = open.find((m) => `${m.code}@${m.about}` === name)
    if (message !== undefined) return withYes(now, message)
    const asked = open.map((m) => `${m.code}@${m.about}`).join(', ') || 'nothing'
    return withFault(now, `confirm ${name}: this job does not ask it. It asks: ${asked}.`)
  }, read)
}
