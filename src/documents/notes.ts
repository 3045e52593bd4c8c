import type { Plan } from '../plan/plan.ts'
import type { ChapterId } from '../things/field.ts'
import { chapterOf } from './question-words.ts'

/** Something the plan assumed or left simple, with all the places it holds for. */
export interface Noted {
  readonly code: string
  readonly short: string
  readonly places: readonly string[]
}

/** The plan's notes of some chapters; one line for the same words at several places. */
export function notesOf(plan: Plan, chapters: readonly ChapterId[]): readonly Noted[] {
  const notes = plan.messages.filter((m) => m.weight === 'note' && chapters.some((c) => c === chapterOf(m.about)))
  const lines = new Map(notes.map((m) => [`${m.code} ${m.short}`, m]))
  return [...lines].map(([key, { code, short }]) => ({
    code,
    short,
    places: [...new Set(notes.filter((m) => `${m.code} ${m.short}` === key).map((m) => m.place))],
  }))
}
