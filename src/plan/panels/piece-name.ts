import type { Direction } from './saw-tree.ts'

const LETTERS = 26
const A = 'A'.charCodeAt(0)

/**
 * What the saw sheet calls a piece that is sawn on, the `at`-th of those its parent falls into: strips of the sheet are
 * A, B, C; pieces of strip B are B1, B2; pieces of B2 are B2a, B2b. Letters and numbers take turns, so every name is read in one way.
 */
export function pieceName(parent: string, at: number): string {
  if (parent === '') return letters(at)
  return /[A-Za-z]$/.test(parent) ? `${parent}${at + 1}` : `${parent}${letters(at).toLowerCase()}`
}

/** A … Z, then AA, AB. */
const letters = (at: number): string =>
  (at < LETTERS ? '' : letters(Math.floor(at / LETTERS) - 1)) + String.fromCharCode(A + (at % LETTERS))

/** `strip B, 12 3/16 wide`, `piece B1, 18 long`: how the line of a piece begins. */
export const pieceWords = (name: string, cutFree: Direction, size: string): string =>
  cutFree === 'along' ? `strip ${name}, ${size} wide` : `piece ${name}, ${size} long`
