import type { QuestionKey } from './field.ts'

/** Where a value used by the plan came from. */
export type Origin = 'answered' | 'rule' | 'source' | 'yours' | 'assumed'

/** What the plan used for one question: the answer, or the suggestion with its reason. */
export interface Used {
  readonly key: QuestionKey
  readonly value: unknown
  readonly origin: Origin
  /** What would be used without the answer; absent when only a measurement can tell. */
  readonly suggested?: unknown
  /** Origin of the suggestion, and its reason in a few words: `baseboard 5 1/4 + 1/4 to see of the wall`. */
  readonly suggestedOrigin?: Origin
  readonly because: string
}
