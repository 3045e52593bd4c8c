/** What became of a typed text: a value, or the words that say what is wrong with it and what works. */
export type Reading<T> = Read<T> | NotRead

interface Read<T> {
  readonly kind: 'read'
  readonly value: T
}

export interface NotRead {
  readonly kind: 'not-read'
  readonly says: string
}

export const read = <T>(value: T): Reading<T> => ({ kind: 'read', value })

export const notRead = (says: string): NotRead => ({ kind: 'not-read', says })
