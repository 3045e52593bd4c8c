import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { countOf, marksOf, sized, type Workload } from './workload.ts'

/** Pieces added by hand: when everything they lean on stands, before holes are filled. */
export function extraFitting(load: Workload): TaskDraft {
  const pieces = load.loose('Z')
  return {
    id: 'F11',
    title: 'Fit the pieces of your own',
    after: ['F4', 'F5', 'F6', 'F8', 'F10', 'W9'],
    needed: pieces.length > 0,
    efforts: [effort('extra', countOf(pieces))],
    place: 'site',
    work: 'boxFitting',
    marks: marksOf(pieces),
    tools: ['saw', 'plane', 'driver', 'pin gun', 'glue'],
    setOut: pieces.map(
      (p) =>
        `${sized(p, load.show)}, ${p.name}${p.quantity === 1 ? '' : `, ${p.quantity} of it`}: where and how is yours.`,
    ),
    checks: ['Held in place dry first: size, doors and drawers clear of it.'],
    cautions: ['Screws of your own choice into what carries; nothing of these pieces was checked for load.'],
  }
}
