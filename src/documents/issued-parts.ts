import type { Job } from '../job/job.ts'
import type { ForHelper } from './audience.ts'

/** What is kept of each part when a packet is handed out, so that the next revision can say what changed: size in words by mark. */
export function issuedParts(view: Pick<ForHelper, 'parts' | 'show'>): Readonly<Record<string, string>> {
  const { show } = view
  return Object.fromEntries(
    view.parts.map((part) => {
      const size = `${show.length(part.length)} × ${show.length(part.width)} × ${show.length(part.thickness)}`
      const name = part.piece === undefined ? part.mark : `${part.mark} ${part.piece}`
      return [name, part.waitsFor.length > 0 ? 'HOLD' : part.taper === undefined ? size : `${size}, ${part.taper}`]
    }),
  )
}

/** One part that is not what it was when the last packet was handed out. */
export interface PartChange {
  readonly mark: string
  readonly says: string
}

/** The changes since the newest packet before `revision`; undefined = there was none. */
export function partChanges(
  view: Pick<ForHelper, 'parts' | 'show'> & { readonly issued: Job['issued'] },
  revision: number,
): readonly PartChange[] | undefined {
  const before = view.issued
    .filter((issue) => issue.revision < revision)
    .reduce<Job['issued'][number] | undefined>(
      (newest, issue) => (newest === undefined || issue.revision > newest.revision ? issue : newest),
      undefined,
    )
  if (before === undefined) return undefined
  const now = issuedParts(view)
  return [...new Set([...Object.keys(before.parts), ...Object.keys(now)])].flatMap((mark) =>
    changeOf(mark, before.parts[mark], now[mark]),
  )
}

function changeOf(mark: string, was: string | undefined, is: string | undefined): readonly PartChange[] {
  if (was === is) return []
  if (is === undefined) return [{ mark, says: `no longer needed (was ${was ?? ''})` }]
  if (was === undefined) return [{ mark, says: `new: ${is}` }]
  return [{ mark, says: `was ${was}, now ${is}` }]
}
