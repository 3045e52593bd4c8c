import { changedOwn, type OwnFigures } from '../figures/own-figures.ts'
import { CHAPTER_NAMES } from '../job/chapters/list.ts'
import { answerOf, type Job } from '../job/job.ts'
import type { Plan } from '../plan/plan.ts'
import { CHAPTERS, NOT_MEASURED, type QuestionKey } from '../things/field.ts'
import type { Message } from '../things/message.ts'
import { askedQuestions, type Question } from './asked.ts'
import { isConfirmed } from './confirmed.ts'
import { showAnswer } from './show-answer.ts'

/** One line of the check-answers page; neighbours of one group have the same word. */
export type ReviewLine =
  | { readonly kind: 'message'; readonly word: string; readonly says: string; readonly message: Message }
  | { readonly kind: 'answer'; readonly word: string; readonly says: string; readonly key: QuestionKey }
  /** The person's figures are not those the job was begun with: Enter takes them. */
  | { readonly kind: 'figures'; readonly word: string; readonly says: string; readonly own: OwnFigures }
  | { readonly kind: 'write'; readonly word: string; readonly says: string }

/**
 * All of a job on one page: stops, then confirms, what is to measure, what is assumed, notes, then every answer by chapter with
 * where it came from; last the line that writes the packet. `own` = the figures in the person's folder as they are now. What stops comes first, so nobody has to hunt for it.
 */
export function reviewOf(job: Job, plan: Plan, own?: OwnFigures): readonly ReviewLine[] {
  const asked = askedQuestions(job, plan.used)
  return [
    ...plan.messages.map((m) => messageLine(job, m)).filter((l) => l.word === 'stop' || l.word === 'confirm'),
    ...asked.filter((q) => isToMeasure(q, job)).map((q) => toMeasureLine(q, plan)),
    ...asked.filter((q) => isAssumed(q, job, plan)).map((q) => answerLine(q, plan, 'assumed')),
    ...plan.messages.map((m) => messageLine(job, m)).filter((l) => l.word === 'note' || l.word === 'confirmed'),
    ...CHAPTERS.flatMap((c) =>
      chapterLines(
        asked.filter((q) => q.field.chapter === c),
        plan,
      ),
    ),
    ...figuresLines(job, own),
    { kind: 'write', word: 'write', says: `Write the packet (revision ${nextRevision(job)})` },
  ]
}

/** `1 stop · 1 to confirm · 2 to measure · 3 assumed`: only what there is. */
export function reviewCounts(lines: readonly ReviewLine[]): string {
  const count = (word: string) => lines.filter((l) => l.word === word).length
  const counted = [
    [count('stop'), count('stop') === 1 ? 'stop' : 'stops'],
    [count('confirm'), 'to confirm'],
    [count('to measure'), 'to measure'],
    [count('assumed'), 'assumed'],
    [count('note'), count('note') === 1 ? 'note' : 'notes'],
  ] as const
  return counted.flatMap(([n, words]) => (n > 0 ? [`${n} ${words}`] : [])).join(' · ') || 'nothing open'
}

export const nextRevision = (job: Job): number => Math.max(0, ...job.issued.map((i) => i.revision)) + 1

/** One line when the person's figures have changed since the job was begun. */
function figuresLines(job: Job, own: OwnFigures | undefined): readonly ReviewLine[] {
  const changed = own === undefined ? [] : changedOwn(job.figures ?? {}, own)
  if (own === undefined || changed.length === 0) return []
  const says = `${changed.length} of your own figures changed since this job was begun (${changed.join(', ')}). Enter takes them as they are now.`
  return [{ kind: 'figures', word: 'figures', says, own }]
}

const messageLine = (job: Job, message: Message): ReviewLine => ({
  kind: 'message',
  word: message.weight === 'confirm' && isConfirmed(job, message) ? 'confirmed' : message.weight,
  says: message.place === '' ? message.short : `${message.place}: ${message.short}`,
  message,
})

const isToMeasure = ({ field, place }: Question, job: Job): boolean => {
  const value = answerOf(job, field, place)
  return field.missing === 'hold' && (value === undefined || value === NOT_MEASURED)
}

const isAssumed = (q: Question, job: Job, plan: Plan): boolean =>
  plan.used.get(q.key)?.origin === 'assumed' && !isToMeasure(q, job)

function toMeasureLine(q: Question, plan: Plan): ReviewLine {
  const waiting = plan.parts.filter((p) => p.waitsFor.includes(q.key)).length
  const hold = waiting === 0 ? 'nothing on HOLD' : `${waiting} ${waiting === 1 ? 'piece' : 'pieces'} on HOLD`
  return { kind: 'answer', word: 'to measure', says: `${placed(q)}: ${hold}`, key: q.key }
}

const chapterLines = (asked: readonly Question[], plan: Plan): readonly ReviewLine[] =>
  asked.map((q) => answerLine(q, plan, CHAPTER_NAMES[q.field.chapter]))

function answerLine(q: Question, plan: Plan, word: string): ReviewLine {
  const value = answerOf(plan.job, q.field, q.place)
  const used = plan.used.get(q.key)
  const shown = value === undefined && used !== undefined ? used.value : value
  const source = value === undefined && used !== undefined ? ` (${used.origin}: ${used.because})` : ''
  return { kind: 'answer', word, says: `${placed(q)}: ${showAnswer(q.field, shown, plan.show)}${source}`, key: q.key }
}

const placed = ({ field, bay }: Question): string => (bay === undefined ? field.short : `${bay.name}, ${field.short}`)
