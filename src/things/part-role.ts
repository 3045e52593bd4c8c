import type { Role } from './part.ts'
import { ROLES } from './part.ts'

const MARK = /^([A-Z]\d*(?:\.\d+)?)-([A-Z])\d+$/

/** Role letter of a part mark: `L2-S1` → `S`, `L-T1` → `T`; undefined when the text is no part mark. */
export function roleOf(mark: string): Role | undefined {
  const letter = MARK.exec(mark)?.[2]
  return letter !== undefined && isRole(letter) ? letter : undefined
}

const isRole = (letter: string): letter is Role => letter in ROLES

/** Mark of the box a part belongs to: `L2-S1` → `L2`, `W4.2-K1` → `W4.2`; undefined for a part of the whole run. */
export function boxMarkOf(mark: string): string | undefined {
  const place = MARK.exec(mark)?.[1]
  return place !== undefined && (place.startsWith('W') ? place.includes('.') : /\d/.test(place)) ? place : undefined
}
