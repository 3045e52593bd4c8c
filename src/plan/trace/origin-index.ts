import type { Ref, Working } from '../../things/formula.ts'

/** A working and when it was noted: what it leans on came before. */
export interface Noted {
  readonly working: Working
  readonly at: number
}

/** Workings by id, and by the names an input can have to mean them. */
export interface OriginIndex {
  readonly noted: readonly Noted[]
  readonly byId: ReadonlyMap<string, readonly Noted[]>
  readonly byName: ReadonlyMap<string, readonly Noted[]>
}

export function originIndex(workings: readonly Working[]): OriginIndex {
  const noted = workings.map((working, at) => ({ working, at }))
  return {
    noted,
    byId: grouped(noted, ({ working }) => [working.id]),
    byName: grouped(noted, ({ working }) => namesOf(working.id)),
  }
}

function grouped(
  noted: readonly Noted[],
  keysOf: (one: Noted) => readonly string[],
): ReadonlyMap<string, readonly Noted[]> {
  const groups = new Map<string, Noted[]>()
  for (const one of noted)
    for (const key of keysOf(one)) {
      const group = groups.get(key)
      if (group === undefined) groups.set(key, [one])
      else group.push(one)
    }
  return groups
}

/** `box.inside-width` is meant by `insideWidth` and `boxInsideWidth`; the question `boxHeight` by `boxHeight`. */
const namesOf = (id: string): readonly string[] => {
  const last = kebab(id.slice(id.lastIndexOf('.') + 1))
  const whole = kebab(id.replaceAll('.', '-'))
  return last === whole ? [last] : [last, whole]
}

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

/** A number as it stands in a formula or on a paper, and where it is used. */
export interface InUse {
  readonly name: string
  readonly value: unknown
  /** What was being worked out when it was used. */
  readonly about: string
  /** Id of the formula that uses it; empty for a paper. */
  readonly by: string
  readonly before: number
  readonly from?: Ref | readonly Ref[] | undefined
}

/**
 * Where a number in use comes from: declared, or of its name; of exactly its value; the same subject before an enclosing one
 * before one inside it (declared origins: before any other); what was worked out or answered before a bare figure; then the
 * user's own family of formulas; then the last before use.
 */
export function originOf(index: OriginIndex, use: InUse): Noted | undefined {
  const candidates =
    use.from === undefined
      ? (index.byName.get(kebab(use.name)) ?? [])
      : refsOf(use.from).flatMap(({ id }) => index.byId.get(id) ?? [])
  let best: { readonly one: Noted; readonly rank: readonly number[] } | undefined
  for (const one of candidates) {
    if (one.at >= use.before || !holds(one.working.result, use.value)) continue
    const rank = rankOf(one, use)
    if (rank !== undefined && (best === undefined || outranks(rank, best.rank))) best = { one, rank }
  }
  return best?.one
}

const refsOf = (from: Ref | readonly Ref[]): readonly Ref[] => ('id' in from ? [from] : from)

const DEEPEST = 4
/** Whether a result is this value, or a table or list with this value in it. */
const holds = (result: unknown, value: unknown, depth = DEEPEST): boolean =>
  result === value ||
  (depth > 0 && typeof result === 'object' && result !== null
    ? Object.values(result).some((inner) => holds(inner, value, depth - 1))
    : false)

const INSIDE = -1
const ELSEWHERE = -2

/** Compared from the first number on, larger is better. Undefined: not in sight. */
function rankOf({ working, at }: Noted, use: InUse): readonly number[] | undefined {
  const near = nearness(subjectOf(working.about), subjectOf(use.about))
  if (near === ELSEWHERE && use.from === undefined) return undefined
  const exact = working.result === use.value ? 1 : 0
  const settled = working.kind === 'figure' ? 0 : 1
  const family = working.id.split('.')[0] === use.by.split('.')[0] ? 1 : 0
  return [near, exact, settled, family, at]
}

/** The whole job is the empty subject: it encloses all others. */
export const subjectOf = (about: string): string => (about === 'job' ? '' : about)

function nearness(subject: string, from: string): number {
  if (encloses(subject, from)) return subject.length
  return encloses(from, subject) ? INSIDE : ELSEWHERE
}

const encloses = (outer: string, inner: string): boolean =>
  outer === '' || outer === inner || inner.startsWith(`${outer}/`)

function outranks(rank: readonly number[], other: readonly number[]): boolean {
  const at = rank.findIndex((n, i) => n !== other[i])
  return at >= 0 && (rank[at] ?? 0) > (other[at] ?? 0)
}
