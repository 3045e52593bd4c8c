import { fieldById } from '../job/fields.ts'
import type { ChapterId, QuestionKey } from '../things/field.ts'
import type { NamedBay } from '../things/place.ts'

/** A question as the papers name it. */
export interface QuestionWords {
  readonly key: QuestionKey
  /** `right alcove, studs` */
  readonly short: string
  /** The question in full: what to measure. */
  readonly asks: string
}

/** The words of a question at its place; the key itself when the question is no longer asked. */
export function questionWords(key: QuestionKey, bays: readonly NamedBay[]): QuestionWords {
  const { place, id } = partsOf(key)
  const field = fieldById(id)
  const bay = bays.find((b) => b.id === place)
  if (field === undefined) return { key, short: key, asks: key }
  return { key, short: bay === undefined ? field.short : `${bay.name}, ${field.short}`, asks: field.asks(bay) }
}

/** The chapter a question stands in. */
export const chapterOf = (key: QuestionKey): ChapterId | undefined => fieldById(partsOf(key).id)?.chapter

function partsOf(key: QuestionKey): { readonly place: string; readonly id: string } {
  const dot = key.indexOf('.')
  return { place: key.slice(0, dot), id: key.slice(dot + 1) }
}
