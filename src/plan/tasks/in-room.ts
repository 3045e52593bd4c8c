import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { ORDERS } from './office.ts'
import type { Workload } from './workload.ts'

/** Boxes that do not come in whole are put together in the room from their panels. */
export function boxesInRoom(load: Workload): TaskDraft {
  const boxes = load.built.boxes.boxes.filter((b) => load.built.carryingIn.builtInRoom.has(b.mark))
  const { show } = load
  return {
    id: 'F0',
    title: 'Put together in the room what does not come in whole',
    after: ['F1', 'W9', 'B4', ORDERS.hardware],
    needed: boxes.length > 0,
    efforts: [effort('box-on-site', boxes.length)],
    place: 'site',
    work: 'boxes',
    marks: boxes.map((b) => b.mark),
    tools: ['driver', 'clamps', 'square', 'pin gun', 'glue', 'blankets'],
    setOut: boxes.map(
      (b) => `${b.mark}: ${show.length(b.width)} × ${show.length(b.height)} × ${show.length(b.depth)} outside.`,
    ),
    checks: ['Panels carried in wrapped; diagonals of each box equal before the back goes on.'],
    cautions: [CAUTIONS.sawDust],
  }
}
