import type { Length } from './length.ts'
import { plainMarks } from './plain-marks.ts'
import { type NotRead, notRead, type Reading, read } from './reading.ts'
import { type ScannedLength, scanLength } from './scan-length.ts'
import type { UnitSystem } from './show-length.ts'

/** One length as people write it; the job's unit is taken when none is written. `parseLength("3' 5 1/4\"", 'inch')` = 41 1/4 in. */
export function parseLength(typed: string, units: UnitSystem): Reading<Length> {
  const many = parseLengths(typed, units)
  if (many.kind === 'not-read') return many
  const [first, ...others] = many.value
  if (first === undefined) return notRead('A length is needed, like 41 1/4 or 1048 mm.')
  return others.length === 0 ? read(first.value) : notRead(`One length is needed; ${many.value.length} stand there.`)
}

/** All lengths of a line, in order, parted by spaces, semicolons, line ends or comma and space. */
export function parseLengths(typed: string, units: UnitSystem): Reading<readonly ScannedLength[]> {
  const line = plainMarks(typed)
  const found: ScannedLength[] = []
  let at = 0
  for (;;) {
    at = afterGap(line, at)
    if (at >= line.length) return read(found)
    const next = scanLength(line, at, units)
    if (next === undefined || (next.kind === 'length' && !endsHere(line, next.end))) return notALength(line, at)
    if (next.kind === 'not-read') return next
    found.push(next)
    at = next.end
  }
}

/** Position of the next figure or word: spaces and the signs people part figures with are passed over. */
export function afterGap(line: string, from: number): number {
  const gap = /(?:[\s;•|]|,(?=\s|$))+/y
  gap.lastIndex = from
  return from + (gap.exec(line)?.[0].length ?? 0)
}

/** Whether a figure ends at this position: a letter or a figure glued to it would make it something else. */
export const endsHere = (line: string, at: number): boolean => at >= line.length || /[\s;•|,]/.test(line[at] ?? '')

function notALength(line: string, at: number): NotRead {
  const [word = ''] = line.slice(at, at + 40).split(' ')
  return notRead(`"${word}" is not a length. Type it like 41 1/4, 3' 5 1/4", 1048 mm or 104.8 cm.`)
}
