import type { Working } from '../../things/formula.ts'
import { type Noted, type OriginIndex, originOf } from './origin-index.ts'
import { sizesWanted } from './trace-parts.ts'
import { inputsOf } from './trace-tree.ts'
import type { Tracing } from './tracing.ts'

/** A number that cannot say where it comes from. */
export interface MissingLink {
  /** The formula whose input it is, or the part whose size it is. */
  readonly of: string
  readonly input: string
  readonly about: string
  readonly value: unknown
}

/** Sizes of parts without a working of exactly that value, and inputs in their trees without an origin. */
export function missingLinks({ plan, index }: Tracing): readonly MissingLink[] {
  const roots = plan.parts.flatMap((part) =>
    sizesWanted(part).map((size) => {
      const use = { ...size, by: '', before: Number.POSITIVE_INFINITY }
      return { part, size, found: size.from === undefined ? undefined : originOf(index, use) }
    }),
  )
  return [
    ...roots.flatMap(({ part, size, found }) =>
      found === undefined ? [{ of: part.id, input: size.name, about: part.id, value: size.value }] : [],
    ),
    ...reached(
      index,
      roots.flatMap(({ found }) => (found === undefined ? [] : [found])),
    ).flatMap((one) => openInputs(index, one)),
  ]
}

/** Every working under these, themselves among them. */
function reached(index: OriginIndex, roots: readonly Noted[]): readonly Noted[] {
  const seen = new Map<number, Noted>()
  const open = [...roots]
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (seen.has(one.at)) continue
    seen.set(one.at, one)
    open.push(...originsOf(index, one))
  }
  return [...seen.values()]
}

/** The workings a working leans on. */
export const originsOf = (index: OriginIndex, one: Noted): readonly Noted[] =>
  numbersIn(index, one).flatMap((use) => {
    const found = originOf(index, use)
    return found === undefined ? [] : [found]
  })

/** The numbers a working leans on, those in lists one by one; 0 leans on nothing. */
const numbersIn = (index: OriginIndex, one: Noted) =>
  inputsOf(index.noted, one).flatMap((use) =>
    (Array.isArray(use.value) ? use.value : [use.value])
      .filter((value) => typeof value === 'number' && value !== 0)
      .map((value: unknown) => ({ ...use, value })),
  )

const openInputs = (index: OriginIndex, one: Noted): readonly MissingLink[] =>
  numbersIn(index, one)
    .filter((use) => !isGiven(one.working, use.name) && originOf(index, use) === undefined)
    .map((use) => ({ of: one.working.id, input: use.name, about: one.working.about, value: use.value }))

const isGiven = ({ units }: Working, input: string): boolean => units[input] !== undefined
