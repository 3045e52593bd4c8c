import type { Plan } from '../plan.ts'
import { subjectOf } from './origin-index.ts'

/** Names what a working was about as the papers do: `L2`, `L-H1`, `left alcove`; the id itself where they have no name. */
export function subjectNames(plan: Plan): (about: string) => string {
  const names = new Map<string, string>([
    ...plan.bays.map((bay) => [bay.id, bay.name] as const),
    ...plan.boxes.boxes.map((box) => [box.id, `box ${box.mark}`] as const),
    ...plan.shelves.shelves.map((shelf) => [shelf.id, `shelf ${shelf.mark}`] as const),
    ...plan.parts.map((part) => [part.id, [part.mark, part.piece ?? part.name].join(' ')] as const),
    ...plan.purchases.map((purchase) => [purchase.id, purchase.item] as const),
    ...plan.calendar.tasks.map((task) => [task.id, task.title] as const),
    ...plan.joints.joints.map((joint) => [joint.id, joint.where] as const),
  ])
  return (about) => names.get(subjectOf(about)) ?? subjectOf(about)
}
