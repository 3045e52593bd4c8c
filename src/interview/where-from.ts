import { type TraceRow, traceRows } from '../plan/trace/trace-rows.ts'
import { traceables, tracesNamed } from '../plan/trace/traceable.ts'
import { tracing } from '../plan/trace/tracing.ts'
import { reviewOf } from './review.ts'
import { messageOn, type Page, type Session, type WhereFromPage } from './session.ts'

/** A line as it is seen: its place among all lines, and whether those under it are folded away. */
export interface SeenRow extends TraceRow {
  readonly at: number
  readonly folded: boolean
}

/** Lines deeper than this are folded away until they are asked for. */
const OPEN_DEPTH = 2

/** Where the number under the cursor comes from: an answer, the part a message is about, at the write line the price. */
export function whereFromShown(session: Session): Session {
  const { page } = session
  const name = nameUnder(session, page)
  if (page.kind === 'where-from' || name === undefined) return session
  const [trace] = tracesNamed(traceables(tracing(session.job)), name)
  if (trace === undefined) return session
  const rows = traceRows(trace.nodes)
  const folded = rows.flatMap((row, at) => (row.depth >= OPEN_DEPTH && row.under > 0 ? [at] : []))
  const shown: WhereFromPage = {
    kind: 'where-from',
    title: trace.title,
    says: trace.says,
    rows,
    folded,
    line: 0,
    onward: page,
  }
  return { ...session, page: shown, said: { kind: 'nothing' } }
}

function nameUnder(session: Session, page: Page): string | undefined {
  if (page.kind === 'question' || page.kind === 'help') return page.key
  if (page.kind === 'message') {
    const message = messageOn(page, session.plan)
    return message?.part ?? message?.about
  }
  if (page.kind !== 'review') return undefined
  const line = reviewOf(session.job, session.plan, session.ownFigures)[page.line]
  switch (line?.kind) {
    case 'answer':
      return line.key
    case 'message':
      return line.message.part ?? line.message.about
    case 'write':
      return 'price'
    default:
      return undefined
  }
}

/** The lines that are seen: none under a folded one. */
export function seenRows({ rows, folded }: WhereFromPage): readonly SeenRow[] {
  const hidden = new Set(folded.flatMap((at) => Array.from({ length: rows[at]?.under ?? 0 }, (_, i) => at + 1 + i)))
  return rows.flatMap((row, at) => (hidden.has(at) ? [] : [{ ...row, at, folded: folded.includes(at) }]))
}

/** Enter on a line opens or closes what is under it. */
export function foldHere(session: Session): Session {
  const { page } = session
  if (page.kind !== 'where-from') return session
  const row = seenRows(page)[page.line]
  if (row === undefined || row.under === 0) return session
  const folded = row.folded ? page.folded.filter((at) => at !== row.at) : [...page.folded, row.at]
  return { ...session, page: { ...page, folded } }
}

/** Up or down among the lines that are seen. */
export function moveAmongRows(session: Session, by: number): Session {
  const { page } = session
  if (page.kind !== 'where-from') return session
  const last = seenRows(page).length - 1
  return { ...session, page: { ...page, line: Math.max(0, Math.min(last, page.line + by)) } }
}
