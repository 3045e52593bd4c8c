import type { Day } from '../units/day.ts'

/** The time, asked for only at the edge of the program. */
export interface Clock {
  /** Today where the person is. */
  readonly today: () => Day
  /** This minute in UTC: `2026-11-25T20:41Z`. */
  readonly minute: () => string
}
