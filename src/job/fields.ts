import { CHAPTERS, type Field } from '../things/field.ts'
import type { BayKind } from '../things/place.ts'
import { CHAPTER_FIELDS } from './chapters/list.ts'

/** Every question, in the order it is asked. */
export const FIELDS: readonly Field[] = CHAPTERS.flatMap((chapter) => CHAPTER_FIELDS[chapter])

const BY_ID: ReadonlyMap<string, Field> = new Map(FIELDS.map((f) => [f.id, f]))

/** The question with this id, or undefined. */
export const fieldById = (id: string): Field | undefined => BY_ID.get(id)

/** Whether a question is asked at a bay of this kind (`job` = once for the whole job). */
export const askedAt = (field: Pick<Field, 'each'>, kind: BayKind | 'job'): boolean =>
  field.each === 'job' ? kind === 'job' : kind !== 'job' && field.each.includes(kind)
