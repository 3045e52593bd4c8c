import { everyQuestion, type Question } from '../interview/asked.ts'
import { cleanText } from '../interview/clean-text.ts'
import type { Kept, Session } from '../interview/session.ts'
import { title } from '../job/chapters/job.ts'
import { CHAPTER_NAMES } from '../job/chapters/list.ts'
import { answerOf, type Job } from '../job/job.ts'
import { fitCells } from './cells.ts'

const MOST_TITLE = 24

/** `Fernhollow parlor · Wall · left alcove · 4 of 11`. */
export function placeOf(session: Session, question: Question): string {
  const chapter = session.asked.filter((q) => q.field.chapter === question.field.chapter)
  const number = chapter.findIndex((q) => q.key === question.key) + 1
  return [
    jobName(session.job),
    CHAPTER_NAMES[question.field.chapter],
    ...(question.bay === undefined ? [] : [question.bay.name]),
    `${number} of ${chapter.length}`,
  ].join(' · ')
}

/** Where a kept interview stands, for the list of jobs: `Wall, left alcove, ceiling`. */
export function whereOf({ job, at }: Kept): string {
  if (at === 'review') return 'Check answers'
  const question = everyQuestion(job).find((q) => q.key === at)
  if (question === undefined) return 'at the start'
  const { field, bay } = question
  return [CHAPTER_NAMES[field.chapter], ...(bay === undefined ? [] : [bay.name]), field.short].join(', ')
}

/** The job's name, short and safe to draw; DEMO before it when it is one. */
export function jobName(job: Job): string {
  const name = answerOf(job, title, 'job')
  const text = typeof name === 'string' ? fitCells(cleanText(name).text, MOST_TITLE).trim() : 'a new job'
  return job.demo === true ? `DEMO ${text}` : text
}

export const savedWords = (session: Session): string => (session.underway === undefined ? session.saved : 'saving')
