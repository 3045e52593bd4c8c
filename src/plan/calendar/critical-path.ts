/** One activity of a network. `after` names activities that stand before it in the list. */
export interface Activity {
  readonly id: string
  readonly after: readonly string[]
  readonly span: number
}

/** Times of one activity when nothing but its predecessors holds it up. */
export interface Float {
  readonly earliestStart: number
  readonly earliestFinish: number
  readonly latestStart: number
  readonly latestFinish: number
  /** How far it may slip without moving the end. */
  readonly total: number
  /** How far it may slip without moving what follows. */
  readonly free: number
}

/**
 * Critical path: earliest start = largest earliest finish of what comes before; latest finish = least latest start of what follows;
 * total float = latest − earliest start; free float = least earliest start of what follows − earliest finish.
 * Throws when an activity names one that does not stand before it.
 */
export function criticalPath(network: readonly Activity[]): ReadonlyMap<string, Float> {
  const starts = earliestStarts(network)
  const startOf = (id: string) => starts.get(id) ?? 0
  const end = Math.max(0, ...network.map((a) => startOf(a.id) + a.span))
  const latest = latestFinishes(network, end)
  const freeUntil = leastOver(network, (a) => startOf(a.id))
  return new Map(
    network.map((a) => {
      const earliestStart = startOf(a.id)
      const latestFinish = latest.get(a.id) ?? end
      return [
        a.id,
        {
          earliestStart,
          earliestFinish: earliestStart + a.span,
          latestStart: latestFinish - a.span,
          latestFinish,
          total: latestFinish - a.span - earliestStart,
          free: (freeUntil.get(a.id) ?? end) - earliestStart - a.span,
        },
      ]
    }),
  )
}

function earliestStarts(network: readonly Activity[]): ReadonlyMap<string, number> {
  const starts = new Map<string, number>()
  const finishes = new Map<string, number>()
  for (const a of network) {
    const before = a.after.map((id) => {
      const finish = finishes.get(id)
      if (finish === undefined) throw new Error(`${a.id} comes after ${id}, which does not stand before it.`)
      return finish
    })
    const start = Math.max(0, ...before)
    starts.set(a.id, start)
    finishes.set(a.id, start + a.span)
  }
  return starts
}

function latestFinishes(network: readonly Activity[], end: number): ReadonlyMap<string, number> {
  const latest = new Map<string, number>()
  for (const a of network.toReversed()) {
    const start = (latest.get(a.id) ?? end) - a.span
    for (const before of a.after) latest.set(before, Math.min(latest.get(before) ?? end, start))
  }
  return latest
}

/** For each activity, the least value over the activities that follow it. */
function leastOver(network: readonly Activity[], value: (a: Activity) => number): ReadonlyMap<string, number> {
  const least = new Map<string, number>()
  for (const a of network) {
    for (const before of a.after) least.set(before, Math.min(least.get(before) ?? value(a), value(a)))
  }
  return least
}
