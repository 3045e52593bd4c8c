import { Temporal } from 'temporal-polyfill'
import { type Day, day } from '../../units/day.ts'
import type { Clock } from '../clock.ts'

const MINUTE = 'YYYY-MM-DDTHH:MM'.length

/** The real clock. */
export const nodeClock: Clock = {
  today: (): Day => day(Temporal.Now.plainDateISO().toString()),
  minute: () => `${new Date().toISOString().slice(0, MINUTE)}Z`,
}
