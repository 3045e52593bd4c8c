/** A bay of the wall, left to right: a recess, the chimney breast, or a flat run. Ids (`a`, `b` …) never change once given. */
export type BayId = string
export type BayKind = 'alcove' | 'breast' | 'flat'

export interface Bay {
  readonly id: BayId
  readonly kind: BayKind
}

/** A bay with the words and letter the papers use for it: `left alcove`, `L`. */
export interface NamedBay extends Bay {
  readonly letter: string
  readonly name: string
  readonly index: number
}

/** What a question or part stands at: the whole job, or one bay. */
export type Place = 'job' | BayId

/**
 * Letters by count of bays: one M · two L R · three L M R · four and more W1, W2 … (seen from the room).
 * Names say the kind too: `left alcove`, `breast`, `right flat wall`.
 */
export function namedBays(bays: readonly Bay[]): readonly NamedBay[] {
  return bays.map((bay, index) => ({ ...bay, index, letter: letterOf(bays.length, index), name: nameOf(bays, index) }))
}

const LETTERS: Readonly<Record<number, readonly string[]>> = { 1: ['M'], 2: ['L', 'R'], 3: ['L', 'M', 'R'] }
const SIDES: Readonly<Record<string, string>> = { L: 'left', M: 'middle', R: 'right' }
const KINDS: Readonly<Record<BayKind, string>> = { alcove: 'alcove', breast: 'breast', flat: 'flat wall' }

const letterOf = (count: number, index: number): string => LETTERS[count]?.[index] ?? `W${index + 1}`

function nameOf(bays: readonly Bay[], index: number): string {
  const bay = bays[index]
  if (bay === undefined) throw new RangeError(`There is no bay ${index}.`)
  const word = KINDS[bay.kind]
  if (bays.filter((b) => b.kind === bay.kind).length === 1) return word
  const letter = letterOf(bays.length, index)
  return `${SIDES[letter] ?? letter} ${word}`
}
