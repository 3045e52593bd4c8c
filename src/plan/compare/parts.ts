import { onHold, type Part } from '../../things/part.ts'
import type { Show } from '../../things/show.ts'
import type { Plan } from '../plan.ts'
import type { Change } from './change.ts'
import { WEIGHTS } from './weights.ts'

/** `18 × 12 15/16 × 3/4`, with the differing end and the number of pieces; `HOLD` while a measurement is missing. */
export function sizeWords(part: Part, show: Show): string {
  if (onHold(part)) return 'HOLD'
  const size = [part.length, part.width, part.thickness].map((l) => show.length(l)).join(' × ')
  const taper = part.taper === undefined ? '' : `, ${part.taper}`
  return part.quantity === 1 ? `${size}${taper}` : `${size}${taper}, ${part.quantity} pieces`
}

/** Parts by id: one line for how many, then each by its mark. */
export function changedParts(before: Plan, after: Plan): readonly Change[] {
  const was = new Map(before.parts.map((p) => [p.id, p]))
  const now = new Set(after.parts.map((p) => p.id))
  const sized = after.parts.flatMap((part): readonly Change[] => {
    const old = was.get(part.id)
    if (old === undefined) return []
    const [a, b] = [sizeWords(old, before.show), sizeWords(part, after.show)]
    return a === b ? [] : [detail(part, `${part.mark} ${part.name} ${a} → ${b}`)]
  })
  const fresh = after.parts.filter((p) => !was.has(p.id)).map((p) => detail(p, `${p.mark} ${p.name} is new`))
  const gone = before.parts.filter((p) => !now.has(p.id)).map((p) => detail(p, `${p.mark} ${p.name} is gone`))
  const moved = after.parts.flatMap((part) => {
    const old = was.get(part.id)
    return old === undefined || old.supply === part.supply ? [] : [part]
  })
  return [
    ...counted(sized.length, 'changes size', 'change size'),
    ...counted(fresh.length, 'is new', 'are new'),
    ...counted(gone.length, 'is gone', 'are gone'),
    ...counted(moved.length, 'changes its maker', 'change their maker'),
    ...sized,
    ...fresh,
    ...gone,
  ]
}

const detail = (part: Part, says: string): Change => ({ weight: WEIGHTS.part, mark: part.mark, says })

const counted = (count: number, one: string, many: string): readonly Change[] =>
  count === 0 ? [] : [{ weight: WEIGHTS.parts, says: count === 1 ? `1 part ${one}` : `${count} parts ${many}` }]
