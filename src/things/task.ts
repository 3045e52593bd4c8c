import type { Day } from '../units/day.ts'
import type { Hours } from '../units/hours.ts'

export type TaskPlace = 'office' | 'shop' | 'site' | 'away'

/** One step of the work: what it waits for, how long it takes, what to set out, check and mind. */
export interface Task {
  readonly id: string
  readonly title: string
  readonly after: readonly string[]
  /** Hours paid for: of both people where two are needed. */
  readonly hours: Hours
  readonly people: 1 | 2
  readonly place: TaskPlace
  /** What must pass after it before the next may start: drying in clock hours, or lead time in working days. */
  readonly wait: {
    readonly clockHours: number
    readonly workingDays: number
    readonly says: string
    /** The next coat must be on within this; absent when there is no such limit. */
    readonly mostClockHours?: number
  }
  /** Marks of the parts it handles. */
  readonly marks: readonly string[]
  readonly tools: readonly string[]
  /** Numbers to set out, one sentence each. */
  readonly setOut: readonly string[]
  readonly checks: readonly string[]
  readonly cautions: readonly string[]
  /** Kind of work for the labour price and for learning from closed jobs: `boxes`, `shelves`, `paint` … */
  readonly work: string
}

/** A task with its dates. `finish` is the end of the work; `ready` is when what waits for it may start. */
export interface DatedTask extends Task {
  readonly start: Day
  readonly finish: Day
  readonly ready: Day
  /** Clock hours since midnight before the calendar's first day. */
  readonly startsAt: number
  readonly endsAt: number
  /** Working hours the finish may slip without moving the end of the job. */
  readonly slack: number
  /** What set its start: id of the task (its work, wait or delivery) before it; `start` for the first. */
  readonly drivenBy: string
}
