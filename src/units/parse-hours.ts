import { type Hours, hours } from './hours.ts'
import { plainMarks } from './plain-marks.ts'
import { type NotRead, notRead, type Reading, read } from './reading.ts'

const MINUTES = 60

/** Working hours: `7 1/2`, `7.5`, `7,5 h`, `7:30`, `7h30`, `7 h 30 min`, `450 min`. */
export function parseHours(typed: string): Reading<Hours> {
  const text = plainMarks(typed)
  return clock(text) ?? minutesAlone(text) ?? fractions(text) ?? decimal(text) ?? notHours(typed)
}

function clock(text: string): Reading<Hours> | undefined {
  const [, h, m] = /^(\d{1,4}) ?(?::|h|hrs?|hours?) ?(\d{1,2}) ?(?:m|min|mins|minutes)?$/.exec(text) ?? []
  if (h === undefined || m === undefined) return undefined
  return Number(m) < MINUTES
    ? read(hours(Number(h) + Number(m) / MINUTES))
    : notRead(`An hour has 60 minutes; ${m} stands there.`)
}

function minutesAlone(text: string): Reading<Hours> | undefined {
  const [, m] = /^(\d{1,6}) ?(?:m|min|mins|minutes)$/.exec(text) ?? []
  return m === undefined ? undefined : read(hours(Number(m) / MINUTES))
}

function fractions(text: string): Reading<Hours> | undefined {
  const [, h = '0', top, bottom] = /^(?:(\d{1,4})(?: +|-))?(\d{1,3})\/(\d{1,3}) ?(?:h|hrs?|hours?)?$/.exec(text) ?? []
  if (top === undefined || bottom === undefined) return undefined
  if (Number(bottom) === 0) return notRead(`${text} divides by 0. Type it like 7 1/2 or 7:30.`)
  return read(hours(Number(h) + Number(top) / Number(bottom)))
}

function decimal(text: string): Reading<Hours> | undefined {
  const [, figure] = /^(\d{1,6}(?:[.,]\d{1,6})?) ?(?:h|hrs?|hours?)?$/.exec(text) ?? []
  return figure === undefined ? undefined : read(hours(Number(figure.replace(',', '.'))))
}

const notHours = (typed: string): NotRead =>
  notRead(`"${typed.trim().slice(0, 40)}" is not a number of hours. Type it like 7 1/2, 7.5, 7:30 or 450 min.`)
