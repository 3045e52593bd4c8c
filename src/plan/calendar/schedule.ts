import { criticalPath } from './critical-path.ts'
import {
  afterWork,
  afterWorkingDays,
  beforeWork,
  beforeWorkingDays,
  MINUTES_A_DAY,
  nextWorked,
  type WorkTime,
  workBetween,
} from './working-days.ts'

/** Work for one pair of hands, and what must pass after it. `after` names items that stand before it in the list. */
export interface Item {
  readonly id: string
  readonly after: readonly string[]
  /** Minutes the hands are busy; 0 = somebody else's, or only a date. */
  readonly minutes: number
  /** Drying: nights and days off count. */
  readonly waitMinutes: number
  /** Delivery or an answer: working days only. */
  readonly waitDays: number
}

/** An item with its moments, in minutes since midnight before the first day. */
export interface Timed {
  readonly id: string
  readonly starts: number
  readonly ends: number
  /** When what waits for it may start. */
  readonly ready: number
  /** Minutes of working time its end may slip without moving the last end. */
  readonly slack: number
  /** The item (its work, wait or delivery) that set this start; `start` for the first. */
  readonly drivenBy: string
}

type Placed = Omit<Timed, 'slack'>

/**
 * Places every item in working time, one at a time: of those that may start, the one with the longest chain still behind it,
 * then the one written first. Items without minutes take no hands. In the order they start.
 */
export function schedule(items: readonly Item[], time: WorkTime): readonly Timed[] {
  const placed = place(items, time)
  const slack = slackOf(items, placed, time)
  return placed
    .map((p) => ({ ...p, slack: slack.get(p.id) ?? 0 }))
    .toSorted((a, b) => a.starts - b.starts || a.ends - b.ends)
}

function place(items: readonly Item[], time: WorkTime): readonly Placed[] {
  const chain = latestStarts(items, time)
  const done = new Map<string, Placed>()
  let waiting = items
  let hands: { readonly free: number; readonly last: string } = { free: nextWorked(time, 0), last: START }
  while (waiting.length > 0) {
    const open = waiting
      .filter((i) => i.after.every((id) => done.has(id)))
      .map((item) => ({ item, ...readyAt(item, done) }))
    const next = pick(open, hands.free, time, chain)
    const busy = next.item.minutes > 0
    const from = nextWorked(time, next.at)
    const starts = busy ? nextWorked(time, Math.max(from, hands.free)) : from
    const ends = afterWork(time, starts, next.item.minutes)
    const drivenBy = busy && starts > from ? hands.last : next.by
    done.set(next.item.id, { id: next.item.id, starts, ends, ready: readyAfter(next.item, ends, time), drivenBy })
    if (busy) hands = { free: ends, last: next.item.id }
    waiting = waiting.filter((i) => i !== next.item)
  }
  return [...done.values()]
}

/** Stands for the first day where nothing comes before. */
export const START = 'start'

interface Open {
  readonly item: Item
  readonly at: number
  readonly by: string
}

/** When all that comes before is done and waited for, and which of it came last. */
function readyAt(item: Item, done: ReadonlyMap<string, Placed>): { readonly at: number; readonly by: string } {
  return item.after.reduce(
    (last, id) => {
      const ready = done.get(id)?.ready ?? 0
      return ready > last.at || last.by === START ? { at: ready, by: id } : last
    },
    { at: 0, by: START },
  )
}

function pick(open: readonly Open[], free: number, time: WorkTime, chain: ReadonlyMap<string, number>): Open {
  const startOf = (o: Open) => Math.max(nextWorked(time, o.at), o.item.minutes > 0 ? free : 0)
  const soonest = Math.min(...open.map(startOf))
  const urgency = (o: Open) => chain.get(o.item.id) ?? 0
  const first = open.filter((o) => startOf(o) === soonest).reduce((best, o) => (urgency(o) < urgency(best) ? o : best))
  return first
}

const readyAfter = (item: Item, ends: number, time: WorkTime): number =>
  Math.max(ends + item.waitMinutes, afterWorkingDays(time, ends, item.waitDays))

/** The longest chain behind an item = its least latest start, work counted at the pace of working days. */
function latestStarts(items: readonly Item[], time: WorkTime): ReadonlyMap<string, number> {
  const pace = MINUTES_A_DAY / time.minutesADay
  const floats = criticalPath(
    items.map((i) => ({
      id: i.id,
      after: i.after,
      span: i.minutes * pace + Math.max(i.waitMinutes, i.waitDays * MINUTES_A_DAY),
    })),
  )
  return new Map([...floats].map(([id, float]) => [id, float.latestStart]))
}

/** Backward pass from the last end, as if there were hands enough. */
function slackOf(items: readonly Item[], placed: readonly Placed[], time: WorkTime): ReadonlyMap<string, number> {
  const end = Math.max(0, ...placed.map((p) => p.ends))
  const ends = new Map(placed.map((p) => [p.id, p.ends]))
  const byId = new Map(items.map((i) => [i.id, i]))
  const latest = new Map<string, number>()
  const slack = new Map<string, number>()
  for (const item of items.toReversed()) {
    const finish = latest.get(item.id) ?? end
    slack.set(item.id, workBetween(time, ends.get(item.id) ?? end, finish))
    const start = beforeWork(time, finish, item.minutes)
    for (const id of item.after) {
      const before = byId.get(id)
      if (before === undefined) continue
      const by = Math.min(start - before.waitMinutes, beforeWorkingDays(time, start, before.waitDays))
      latest.set(id, Math.min(latest.get(id) ?? end, by))
    }
  }
  return slack
}
