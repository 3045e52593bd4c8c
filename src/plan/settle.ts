import { answerOf, type Job } from '../job/job.ts'
import { type Field, type Look, NOT_MEASURED, type QuestionKey, questionKey } from '../things/field.ts'
import { noteRead, type Ref } from '../things/formula.ts'
import type { NamedBay, Place } from '../things/place.ts'
import type { Origin, Used } from '../things/used.ts'

/** What the plan would use without an answer, and why. */
export interface Suggestion<T> {
  readonly value: T
  readonly origin?: Exclude<Origin, 'answered'>
  /** The reason in a few words: `baseboard 5 1/4 + 1/4 to see of the wall`. */
  readonly because: string
  /** The formula or figure the value is, for whoever asks where it is from. */
  readonly from?: Ref
}

/** A measured value, and what it still waits for: the question's key when nobody has measured it yet. */
export interface Measured<T> {
  readonly value: T
  readonly waitsFor: readonly QuestionKey[]
}

/** Reads answers for the plan, and notes what was used for each question. */
export interface Settle {
  /** The answer, or else the suggestion. `bay` undefined = a question of the whole job. */
  readonly choice: <T>(field: Field<T>, bay: NamedBay | undefined, suggest: () => Suggestion<T>) => T
  /** The measurement, or else the stated assumption; a `hold` field then waits for its question. */
  readonly measured: <T>(field: Field<T>, bay: NamedBay | undefined, assume: () => Suggestion<T>) => Measured<T>
  /** The answer when there is one and it applies; nothing is suggested (names, notes). */
  readonly asked: <T>(field: Field<T>, bay: NamedBay | undefined) => T | undefined
  readonly used: ReadonlyMap<QuestionKey, Used>
}

/** A reader of one job's answers. The map `used` fills as the plan's steps read; nothing else changes. */
export function settleFrom(job: Job): Settle {
  const used = new Map<QuestionKey, Used>()
  const applies = (field: Field, bay: NamedBay | undefined) => field.when(lookAt(job, used, bay), bay)
  const answerFor = <T>(field: Field<T>, bay: NamedBay | undefined) => {
    const answer = answerOf(job, field, placeOf(bay))
    return answer !== undefined && applies(field, bay) ? answer : undefined
  }
  const note = <T>(field: Field<T>, bay: NamedBay | undefined, answer: T | undefined, s: Suggestion<T>): T => {
    const key = questionKey(placeOf(bay), field)
    const suggestedOrigin = s.origin ?? 'rule'
    const value = answer ?? s.value
    used.set(key, {
      key,
      value,
      origin: answer === undefined ? suggestedOrigin : 'answered',
      suggested: s.value,
      suggestedOrigin,
      because: s.because,
    })
    noteRead(() => ({
      ...questionRead(field, bay, value),
      source: answer === undefined ? `${suggestedOrigin}: ${s.because}` : 'answered',
      ...(answer === undefined && s.from !== undefined
        ? { inputs: { suggested: value }, from: { suggested: s.from } }
        : {}),
    }))
    return value
  }
  return {
    used,
    choice: (field, bay, suggest) => {
      const answer = answerFor(field, bay)
      return note(field, bay, answer === NOT_MEASURED ? undefined : answer, suggest())
    },
    measured: (field, bay, assume) => {
      const answer = answerFor(field, bay)
      const value = note(field, bay, answer === NOT_MEASURED ? undefined : answer, { origin: 'assumed', ...assume() })
      const missing = answer === undefined || answer === NOT_MEASURED
      return { value, waitsFor: missing && field.missing === 'hold' ? [questionKey(placeOf(bay), field)] : [] }
    },
    asked: (field, bay) => {
      const answer = answerFor(field, bay)
      if (answer === undefined || answer === NOT_MEASURED) return undefined
      noteRead(() => ({ ...questionRead(field, bay, answer), source: 'answered' }))
      return answer
    },
  }
}

const questionRead = (field: Pick<Field, 'id' | 'short'>, bay: NamedBay | undefined, result: unknown) => ({
  kind: 'question' as const,
  id: field.id,
  about: placeOf(bay),
  plain: field.short,
  result,
})

const placeOf = (bay: NamedBay | undefined): Place => bay?.id ?? 'job'

/** What is known of another field seen from a bay: what the plan used, or else the bare answer, there or for the job. */
export function lookAt(job: Job, used: ReadonlyMap<QuestionKey, Used>, bay: NamedBay | undefined): Look {
  return <T>(field: Field<T>): T | undefined => {
    const place = field.each === 'job' ? 'job' : (bay?.id ?? 'job')
    const found = used.get(questionKey(place, field))
    if (found !== undefined) return found.value as T
    const answer = answerOf(job, field, place)
    return answer === NOT_MEASURED ? undefined : answer
  }
}
