import type { Change } from './change.ts'

/**
 * As many changes, most important first, as the room holds: `left alcove: run 38 → 39 1/4, 2 boxes of 19 5/8; sheets 5 → 4`.
 * Each stands whole or not at all; what must be announced keeps its room. Only one that is alone and too long is not whole.
 */
export function effectLine(changes: readonly Change[], fits: (text: string) => boolean): string {
  const kept = changes.reduce<readonly Change[]>((chosen, change) => {
    const more = changes.filter((c) => c === change || chosen.includes(c))
    return chosen.includes(change) || !fits(joined(more)) ? chosen : more
  }, announced(changes))
  return joined(kept.length === 0 ? changes.slice(0, 1) : kept)
}

const announced = (changes: readonly Change[]): readonly Change[] => changes.filter((c) => c.announce === true)

/** Half sentences are parted by a semicolon, whole ones stand as they are. */
const joined = (changes: readonly Change[]): string =>
  changes.reduce((text, { says }) => (text === '' ? says : `${text}${text.endsWith('.') ? ' ' : '; '}${says}`), '')
