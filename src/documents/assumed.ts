import { showAnswer } from '../interview/show-answer.ts'
import { fieldById } from '../job/fields.ts'
import type { Plan } from '../plan/plan.ts'
import type { ChapterId, Field } from '../things/field.ts'
import type { Used } from '../things/used.ts'

/** Values the plan assumed where nobody measured, one line for all that are checked in the same way. */
export interface Assumed {
  /** How they are checked: `caliper`, `sheet`, `look`. */
  readonly word: string
  readonly says: string
}

interface AssumedValue {
  readonly used: Used
  readonly field: Field
}

/** What was assumed in some chapters: thicknesses, makers' figures, the rest. What holds parts stands under "measure first", what a message asks about stands there. */
export function assumedOf(plan: Plan, chapters: readonly ChapterId[]): readonly Assumed[] {
  const said = new Set(plan.messages.map((message) => message.about))
  const values = [...plan.used.values()].flatMap((used): readonly AssumedValue[] => {
    const field = fieldById(used.key.slice(used.key.indexOf('.') + 1))
    const mine = field !== undefined && used.origin === 'assumed' && field.missing !== 'hold'
    return mine && !said.has(used.key) && chapters.includes(field.chapter) ? [{ used, field }] : []
  })
  const thicknesses = values.filter(({ field }) => field.id.endsWith('Thickness'))
  const sheets = values.filter((v) => !thicknesses.includes(v) && v.field.chapter === 'hardware')
  const others = values.filter((v) => !thicknesses.includes(v) && !sheets.includes(v))
  return [
    ...line('caliper', 'Put the caliper on, three places, before the first cut', thicknesses, plan),
    ...line('sheet', 'Check against the maker’s sheet', sheets, plan),
    ...line('look', 'Assumed until somebody looks', others, plan),
  ]
}

const line = (word: string, before: string, values: readonly AssumedValue[], plan: Plan): readonly Assumed[] =>
  values.length === 0 ? [] : [{ word, says: `${before}: ${sameTogether(values, plan).join('; ')}.` }]

/** `shelf skins 1/4`, `crown none (left alcove, right alcove)`: one value of several bays is said once. */
function sameTogether(values: readonly AssumedValue[], plan: Plan): readonly string[] {
  const said = values.map(({ used, field }) => ({
    what: `${field.short} ${showAnswer(field, used.value, plan.show)}`,
    bay: plan.bays.find((bay) => used.key.startsWith(`${bay.id}.`))?.name,
  }))
  return [...new Set(said.map((s) => s.what))].map((what) => {
    const bays = said.flatMap((s) => (s.what === what && s.bay !== undefined ? [s.bay] : []))
    return bays.length === 0 ? what : `${what} (${bays.join(', ')})`
  })
}
