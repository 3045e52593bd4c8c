import { NOT_MEASURED } from '../things/field.ts'
import { type Bay, type BayKind, namedBays } from '../things/place.ts'
import type { Asking } from './asking.ts'
import { answer, type Entered, refused } from './entered.ts'

const MOST_BAYS = 12
const KINDS: readonly BayKind[] = ['alcove', 'breast', 'flat']
/** Words that only help the ear: `chimney breast`, `flat wall`, `then`. */
const PASSED_OVER = new Set(['chimney', 'wall', 'run', 'and', 'then', 'one', 'a', 'single', 'alone'])
export const BAYS_EXAMPLE = 'alcove breast alcove'
const EXAMPLE = `Type the words in order, like: ${BAYS_EXAMPLE}.`

/** The wall from left to right in words. Bays that stay keep their ids, so their measurements stay with them. */
export function enterBays(text: string, asking: Asking): Entered {
  const typed = text
    .toLowerCase()
    .split(/[\s,;+|>/-]+/)
    .filter((w) => w !== '')
  const words = typed.length > 1 ? typed.filter((w) => !PASSED_OVER.has(w) || (w === 'a' && isInitials(typed))) : typed
  const kinds = words.map(kindOf)
  const strange = words[kinds.indexOf(undefined)]
  if (strange !== undefined)
    return refused(`"${strange.slice(0, 40)}" is not a kind of bay: alcove, breast or flat. ${EXAMPLE}`)
  if (kinds.length === 0) return refused(EXAMPLE)
  if (kinds.length > MOST_BAYS)
    return refused(`${kinds.length} bays are more than one wall has here; ${MOST_BAYS} at most.`)
  const bays = keepIds(
    kinds.filter((k) => k !== undefined),
    baysBefore(asking.answer),
    asking.takenIds,
  )
  return answer(
    bays,
    namedBays(bays)
      .map((b) => b.name)
      .join(' · '),
  )
}

/** `a b a`: every word is one letter. */
const isInitials = (typed: readonly string[]): boolean => typed.every((w) => w.length === 1)

const kindOf = (word: string): BayKind | undefined =>
  KINDS.find((k) => k.startsWith(word) || word === `${k}s`) ??
  (word === 'niche' || word === 'recess' ? 'alcove' : undefined)

const baysBefore = (value: unknown): readonly Bay[] =>
  value === undefined || value === NOT_MEASURED ? [] : (value as readonly Bay[])

/** Old ids along the longest common order of kinds; a new bay gets a letter never used in this job. */
export function keepIds(kinds: readonly BayKind[], before: readonly Bay[], taken: readonly string[]): readonly Bay[] {
  const kept = longestCommon(kinds, before)
  const used = new Set([...taken, ...before.map((b) => b.id)])
  const fresh = letters().filter((id) => !used.has(id))
  let next = 0
  return kinds.map((kind, i) => ({ id: kept.get(i) ?? fresh[next++] ?? 'zz', kind }))
}

/** Index in `kinds` → id of the bay it was, by the longest common subsequence. */
function longestCommon(kinds: readonly BayKind[], before: readonly Bay[]): ReadonlyMap<number, string> {
  const longest = (i: number, j: number): readonly (readonly [number, string])[] => {
    const bay = before[j]
    if (i >= kinds.length || bay === undefined) return []
    const known = seen.get(`${i} ${j}`)
    if (known !== undefined) return known
    const best =
      bay.kind === kinds[i]
        ? ([[i, bay.id], ...longest(i + 1, j + 1)] as const)
        : longerOf(longest(i + 1, j), longest(i, j + 1))
    seen.set(`${i} ${j}`, best)
    return best
  }
  const seen = new Map<string, readonly (readonly [number, string])[]>()
  return new Map(longest(0, 0))
}

const longerOf = <T>(a: readonly T[], b: readonly T[]): readonly T[] => (b.length > a.length ? b : a)

/** `a` … `z`, `aa` … `zz`. */
function letters(): readonly string[] {
  const single = Array.from({ length: 26 }, (_, i) => String.fromCharCode(97 + i))
  return [...single, ...single.flatMap((a) => single.map((b) => a + b))]
}
