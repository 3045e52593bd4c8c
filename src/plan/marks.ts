import { ROLES, type Role } from '../things/part.ts'
import type { NamedBay } from '../things/place.ts'

/** A part mark taken apart: `L2-S1` = bay L, box 2, role S, number 1. */
export interface Mark {
  /** `L`, or `W4` on a wall of four bays and more. */
  readonly bay: string
  /** Box counted from the left; absent for a part of the whole run. */
  readonly box?: number
  readonly role?: Role
  readonly number?: number
}

/** `L2`: mark of a box; after W and the bay's number stands a dot: `W4.2`. */
export const boxMark = (bay: Pick<NamedBay, 'letter'>, box: number): string => printMark({ bay: bay.letter, box })

/** `L-P1`: mark of a part of the whole run. */
export const runPartMark = (bay: Pick<NamedBay, 'letter'>, role: Role, number: number): string =>
  printMark({ bay: bay.letter, role, number })

/** `L2-S1`: mark of a part of a box. */
export const boxPartMark = (bay: Pick<NamedBay, 'letter'>, box: number, role: Role, number: number): string =>
  printMark({ bay: bay.letter, box, role, number })

/** The mark as written on the piece. */
export function printMark({ bay, box, role, number }: Mark): string {
  const dot = /\d$/.test(bay) ? '.' : ''
  const place = box === undefined ? bay : `${bay}${dot}${box}`
  return role === undefined ? place : `${place}-${role}${number ?? ''}`
}

const WRITTEN = /^(?:(W[1-9]\d*)(?:\.([1-9]\d*))?|([LMR])([1-9]\d*)?)(?:-([A-Z])([1-9]\d*))?$/

/** Reads a mark; undefined when it is none. `parseMark(printMark(m))` gives m. */
export function parseMark(text: string): Mark | undefined {
  const match = WRITTEN.exec(text)
  if (match === null) return undefined
  const [, wide, wideBox, side, sideBox, role, number] = match
  const bay = wide ?? side
  const box = wideBox ?? sideBox
  if (bay === undefined || (role !== undefined && !isRole(role))) return undefined
  return {
    bay,
    ...(box === undefined ? {} : { box: Number(box) }),
    ...(role === undefined ? {} : { role, number: Number(number) }),
  }
}

const isRole = (letter: string): letter is Role => letter in ROLES
