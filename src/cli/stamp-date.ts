import { Temporal } from 'temporal-polyfill'
import type { Clock } from '../ports/clock.ts'
import { WrongUse } from '../things/failure.ts'
import { type Day, day } from '../units/day.ts'
import type { Surroundings } from './surroundings.ts'

const MOST_SECONDS = 253_402_300_799
const MILLISECONDS = 1000

/**
 * Date printed on a packet: SOURCE_DATE_EPOCH (seconds since 1970, UTC, as reproducible-builds.org specifies it), else
 * today. Throws WrongUse when the variable holds anything else.
 */
export function stampDate({ env }: Pick<Surroundings, 'env'>, clock: Clock): Day {
  const given = env.SOURCE_DATE_EPOCH
  if (given === undefined || given === '') return clock.today()
  const seconds = /^\d{1,12}$/.test(given) ? Number(given) : Number.NaN
  if (!(seconds <= MOST_SECONDS)) {
    throw new WrongUse(
      `SOURCE_DATE_EPOCH is "${given}": it takes whole seconds since 1970, like 1764028800. Set it so, or take it out to print today's date.`,
    )
  }
  const zoned = Temporal.Instant.fromEpochMilliseconds(seconds * MILLISECONDS).toZonedDateTimeISO('UTC')
  return day(zoned.toPlainDate().toString())
}
