import { inches, type Length, millimetres } from '../units/length.ts'

const WRITTEN = /^(?:(\d+(?:\.\d+)?) ?)?(?:(?<=^| )(\d+)\/([1-9]\d*) ?)?(in|mm)$/

/** A length as the figure files write it: `1 1/4 in`, `3/8 in`, `12.7 mm`; undefined when it is not one. */
export function lengthWritten(text: string): Length | undefined {
  const match = WRITTEN.exec(text)
  if (match === null || (match[1] === undefined && match[2] === undefined)) return undefined
  const value = Number(match[1] ?? 0) + Number(match[2] ?? 0) / Number(match[3] ?? 1)
  return match[4] === 'in' ? inches(value) : millimetres(value)
}

/** The same, of a file that was checked. Throws on anything else. */
export function readFigureLength(text: string): Length {
  const length = lengthWritten(text)
  if (length === undefined) throw new Error(`"${text}" is not a length as the figure files write it.`)
  return length
}
