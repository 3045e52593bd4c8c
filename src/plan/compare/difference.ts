/** One thing that is in two plans with another value, or in one of them only. */
export interface Difference<T> {
  readonly id: string
  readonly says: string
  /** Undefined: new. */
  readonly was: T | undefined
  /** Undefined: gone. */
  readonly now: T | undefined
}

/** A thing of one plan under the id it keeps in another. */
export interface Listed<T> {
  readonly id: string
  readonly says: string
  readonly value: T
}

/** What differs between two lists, in the order of the later one; what is gone stands last. `words` says when two values are the same. */
export function differencesIn<T>(
  before: readonly Listed<T>[],
  after: readonly Listed<T>[],
  words: (value: T) => string,
): readonly Difference<T>[] {
  const was = new Map(before.map((item) => [item.id, item]))
  const now = new Set(after.map((item) => item.id))
  const same = (a: T | undefined, b: T) => a !== undefined && words(a) === words(b)
  return [
    ...after
      .filter((item) => !same(was.get(item.id)?.value, item.value))
      .map(({ id, says, value }) => ({ id, says, was: was.get(id)?.value, now: value })),
    ...before
      .filter((item) => !now.has(item.id))
      .map(({ id, says, value }) => ({ id, says, was: value, now: undefined })),
  ]
}
