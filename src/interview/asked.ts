import { CHAPTER_FIELDS } from '../job/chapters/list.ts'
import { askedAt } from '../job/fields.ts'
import { baysOf, type Job } from '../job/job.ts'
import { lookAt } from '../plan/settle.ts'
import { CHAPTERS, type Field, type QuestionKey, questionKey } from '../things/field.ts'
import type { NamedBay, Place } from '../things/place.ts'
import type { Used } from '../things/used.ts'

/** One question at one place. */
export interface Question {
  readonly key: QuestionKey
  readonly field: Field
  readonly place: Place
  /** The bay it is asked at; undefined = once for the job. */
  readonly bay: NamedBay | undefined
}

/** The questions that are asked now, in order: those of `everyQuestion` whose `when` holds for what the plan used. */
export const askedQuestions = (job: Job, used: ReadonlyMap<QuestionKey, Used>): readonly Question[] =>
  everyQuestion(job).filter(({ field, bay }) => field.when(lookAt(job, used, bay), bay))

/**
 * Every question of the job's wall, asked now or not, in order: chapter by chapter; neighbouring questions of a bay are asked
 * for one bay, then for the next, as one stands in front of it with the tape.
 */
export function everyQuestion(job: Job): readonly Question[] {
  const bays = baysOf(job)
  return CHAPTERS.flatMap((chapter) => stretches(CHAPTER_FIELDS[chapter]).flatMap((fields) => atPlaces(fields, bays)))
}

/** A chapter's fields cut where "once for the job" and "at each bay" change over. */
function stretches(fields: readonly Field[]): readonly (readonly Field[])[] {
  const onceForJob = (f: Field | undefined) => f?.each === 'job'
  const starts = fields.flatMap((f, i) => (i === 0 || onceForJob(f) !== onceForJob(fields[i - 1]) ? [i] : []))
  return starts.map((start, i) => fields.slice(start, starts[i + 1]))
}

function atPlaces(fields: readonly Field[], bays: readonly NamedBay[]): readonly Question[] {
  if (fields[0]?.each === 'job') return fields.map((field) => questionAt(field, undefined))
  return bays.flatMap((bay) => fields.filter((f) => askedAt(f, bay.kind)).map((field) => questionAt(field, bay)))
}

function questionAt(field: Field, bay: NamedBay | undefined): Question {
  const place = bay?.id ?? 'job'
  return { key: questionKey(place, field), field, place, bay }
}
