import type { Plan } from '../plan/plan.ts'
import type { QuestionKey } from '../things/field.ts'
import { type QuestionWords, questionWords } from './question-words.ts'

/** One measurement still to take, and all that waits for it. */
export interface Waiting {
  readonly question: QuestionWords
  readonly marks: readonly string[]
  readonly joints: number
}

/** Every measurement something waits for, most waiting first. */
export function waitingFor(plan: Plan): readonly Waiting[] {
  const marked = [...plan.parts, ...plan.fronts.leaves, ...plan.fronts.drawers, ...plan.shelves.shelves]
  const keys = new Set<QuestionKey>([
    ...marked.flatMap((m) => m.waitsFor),
    ...plan.mantel.breasts.flatMap((b) => b.waitsFor),
    ...plan.joints.joints.flatMap((j) => j.waitsFor),
  ])
  return [...keys]
    .map((key) => ({
      question: questionWords(key, plan.bays),
      marks: [...new Set(marked.filter((m) => m.waitsFor.includes(key)).map((m) => m.mark))],
      joints: plan.joints.joints.filter((j) => j.waitsFor.includes(key)).length,
    }))
    .sort((a, b) => b.marks.length - a.marks.length)
}
