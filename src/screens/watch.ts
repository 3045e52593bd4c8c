import type { Watched } from './app.tsx'

/** A value that tells its watchers when it is replaced. */
export function watched<T>(first: T): Watched<T> & { readonly set: (value: T) => void } {
  let now = first
  const watchers = new Set<() => void>()
  return {
    get: () => now,
    set: (value) => {
      now = value
      for (const changed of watchers) changed()
    },
    subscribe: (changed) => {
      watchers.add(changed)
      return () => watchers.delete(changed)
    },
  }
}
