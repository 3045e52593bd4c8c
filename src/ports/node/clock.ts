import type { Day } from '../../units/day.ts'
import type { Clock } from '../clock.ts'

const MINUTE = 'YYYY-MM-DDTHH:MM'.length

/** The real clock. */
export const nodeClock: Clock = {
  today: () => localDay(new Date()),
  minute: () => `${new Date().toISOString().slice(0, MINUTE)}Z`,
}

/** The system's calendar has only days that exist: none is checked, so the first screen need not wait for a calendar library. */
const localDay = (now: Date): Day =>
  [String(now.getFullYear()), String(now.getMonth() + 1).padStart(2, '0'), String(now.getDate()).padStart(2, '0')].join(
    '-',
  ) as Day
