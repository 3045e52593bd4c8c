import { fieldById } from '../job/fields.ts'
import type { Plan } from '../plan/plan.ts'
import { lookAt } from '../plan/settle.ts'
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
    ...openMeasurements(plan),
  ])
  return [...keys]
    .map((key) => ({
      question: questionWords(key, plan.bays),
      marks: [...new Set(marked.filter((m) => m.waitsFor.includes(key)).map((m) => m.mark))],
      joints: plan.joints.joints.filter((j) => j.waitsFor.includes(key)).length,
    }))
    .sort((a, b) => b.marks.length - a.marks.length)
}

/** Questions that hold, asked here and not measured: some rest no part on them, only a check against a rule. */
const openMeasurements = (plan: Plan): readonly QuestionKey[] =>
  [...plan.used.values()]
    .filter(({ key, origin }) => {
      const field = fieldById(key.slice(key.indexOf('.') + 1))
      const bay = plan.bays.find((b) => key.startsWith(`${b.id}.`))
      return field?.missing === 'hold' && origin !== 'answered' && field.when(lookAt(plan.job, plan.used, bay), bay)
    })
    .map(({ key }) => key)
