import { bandMetres } from '../boxes/prefinished.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { ORDERS } from './office.ts'
import { marksOf, type Workload } from './workload.ts'

/** Edge band on the panels of prefinished boxes, before they are put together. */
export function edgeBanding({ context, built }: Workload): TaskDraft {
  const metres = bandMetres(context, built.boxes.boxes, built.parts)
  const banded = built.parts.filter((p) => p.supply === 'made' && p.details.some((d) => d.startsWith('edge band')))
  return {
    id: 'W2',
    title: 'Edge band on the front edges of the boxes',
    after: ['W1', ORDERS.hardware],
    needed: metres > 0,
    efforts: [effort('edge-band', metres)],
    place: 'shop',
    work: 'boxes',
    marks: marksOf(banded),
    tools: ['edge iron or edge bander', 'roller', 'trimming knife', 'fine file'],
    checks: ['Band tight along its whole length, trimmed flush on both faces; no glue on the face.'],
    cautions: ['The iron and the glue are hot: gloves, and nothing that burns under it.'],
  }
}
