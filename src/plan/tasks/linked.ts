import type { TaskDraft } from './draft.ts'

/**
 * The needed drafts with `after` naming only needed ones: a dropped draft passes through what it waited for,
 * the name of a repeated task (`D3`) stands for its last repeat (`D3.2`), and what another one already waits for is left out.
 */
export function linked(drafts: readonly TaskDraft[]): readonly TaskDraft[] {
  const byId = new Map(drafts.map((d) => [d.id, d]))
  const needed = drafts.filter((d) => d.needed)
  const lastRepeats = new Map(needed.flatMap(({ id }) => namesOver(id).map((name) => [name, id])))
  const resolve = (id: string): readonly string[] => {
    const repeat = lastRepeats.get(id)
    if (repeat !== undefined) return [repeat]
    const draft = byId.get(id)
    if (draft === undefined) return []
    return draft.needed ? [id] : draft.after.flatMap(resolve)
  }
  return shortest(needed.map((d) => ({ ...d, after: [...new Set(d.after.flatMap(resolve))] })))
}

/** `D3` over `D3.2`: the names that stand for a repeat. */
const namesOver = (id: string): readonly string[] =>
  [...id].flatMap((letter, at) => (letter === '.' ? [id.slice(0, at)] : []))

/** Without the predecessors that stand before another predecessor anyway. */
function shortest(drafts: readonly TaskDraft[]): readonly TaskDraft[] {
  const before = new Map<string, ReadonlySet<string>>()
  return drafts.map((d) => {
    const further = new Set<string>()
    for (const id of d.after) for (const earlier of before.get(id) ?? []) further.add(earlier)
    before.set(d.id, new Set([...further, ...d.after]))
    return { ...d, after: d.after.filter((id) => !further.has(id)) }
  })
}
