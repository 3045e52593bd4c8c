import type { QuestionKey } from './field.ts'
import type { PartId } from './part.ts'

/** stop: the packet is not written · confirm: needs an explicit yes, kept with its date · note: worth knowing. */
export type Weight = 'stop' | 'confirm' | 'note'

/** Words of a message: the short line first, then why, then what to do (the nearest thing that works, computed). */
export interface Words {
  readonly short: string
  readonly why: string
  readonly todo: string
}

/** A change of answers that clears the message; applied by one key. */
export interface Fix {
  readonly says: string
  readonly answers: readonly { readonly key: QuestionKey; readonly value: unknown }[]
}

export interface Message extends Words {
  readonly weight: Weight
  readonly code: string
  /** The question that can change it, and the part it names when there is one. */
  readonly about: QuestionKey
  readonly part?: PartId
  /** The place in the person's words: `left alcove`, `box 2`. */
  readonly place: string
  /** Numbers of the condition; a confirmation is good only while they stay the same. */
  readonly values: Readonly<Record<string, number | string>>
  readonly fixes: readonly Fix[]
  /** Rule with its citation, or `common practice, no source`. */
  readonly source: string
}

/** What one kind of message is: its code, weight and source, and its words built from typed values. */
export interface MessageKind<V> {
  readonly code: string
  readonly weight: Weight
  readonly source: string
  readonly says: (values: V) => Words
}

/** Declares a kind of message beside the step that raises it; `plan/catalogue.ts` lists them all. */
export const messageKind = <V>(kind: MessageKind<V>): MessageKind<V> => kind

/** One message of a kind, with its words filled in. */
export function raise<V extends Readonly<Record<string, number | string>>>(
  kind: MessageKind<V>,
  where: {
    readonly about: QuestionKey
    readonly place: string
    readonly part?: PartId
    readonly fixes?: readonly Fix[]
  },
  values: V,
): Message {
  return {
    weight: kind.weight,
    code: kind.code,
    source: kind.source,
    fixes: [],
    ...where,
    values,
    ...kind.says(values),
  }
}
