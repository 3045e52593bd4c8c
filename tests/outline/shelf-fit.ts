import { shelfDepth } from '../../src/job/chapters/shelves.ts'
import type { Job } from '../../src/job/job.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Shelf } from '../../src/plan/shelves/shelves.ts'
import { type Board, endGap, gapFaults, seatFaults, slidesIn } from './board-fit.ts'
import { lowestCeiling, partsOf, reading, solidOf } from './placed.ts'
import { recessOf } from './recess.ts'

/** The shelf's body as a board. Its middle moves over the depth with the middle of the recess. */
export const boardOf = (shelf: Shelf): Board => ({
  x: shelf.x,
  back: shelf.backLength,
  front: shelf.frontLength,
  shift: (shelf.offsetLeft + shelf.offsetRight) / 2 - (shelf.frontLength - shelf.backLength) / 2,
  depth: shelf.depth,
  from: shelf.z - shelf.thickness,
  to: shelf.z,
})

const shelvesIn = (plan: Plan, bay: string): readonly Shelf[] => plan.shelves.shelves.filter((s) => s.bay.id === bay)

/** What of the floating shelves of an alcove does not fit: on the way in, seated, or by what its joints say. */
export function shelfFaults(job: Job, plan: Plan, bay: string, step: number): readonly string[] {
  const recess = recessOf(job, bay)
  if (recess === undefined) return []
  return shelvesIn(plan, bay).flatMap((shelf) => {
    const board = boardOf(shelf)
    const proud =
      recess.mouth !== undefined && reading(job, shelfDepth, bay) === undefined && shelf.depth > recess.mouth
    return [
      ...seatFaults(recess, board, shelf.id),
      ...(slidesIn(recess, board) ? [] : [`${shelf.id} jams on its way in`]),
      ...(proud ? [`${shelf.id} stands proud of its recess`] : []),
      ...(shelf.z > lowestCeiling(job, bay) ? [`${shelf.id} stands in the ceiling`] : []),
      ...jointFaults(plan, shelf, (side, y) => endGap(recess, board, side, y), step),
      ...skinFaults(plan, shelf),
    ]
  })
}

type Found = (side: 'left' | 'right', y: number) => readonly [number, number]

/** Both ends' gaps, front and back; a loose end strip closes what caulk cannot, and leaves a scribed joint. */
function jointFaults(plan: Plan, shelf: Shelf, found: Found, step: number): readonly string[] {
  const strips = plan.messages.some((m) => m.code === 'C6' && m.about.startsWith(`${shelf.bay.id}.`))
  return (['left', 'right'] as const).flatMap((side) => {
    const joint = plan.joints.joints.find((j) => j.id === `${shelf.id}/${side}-over`)
    if (joint === undefined) return [`${shelf.id} has no joint at its ${side} end`]
    if (strips) return []
    return [
      ...gapFaults({ says: `${joint.id} front`, said: joint.gap1, step }, found(side, shelf.depth)),
      ...gapFaults({ says: `${joint.id} back`, said: joint.gap2, step }, found(side, 0)),
    ]
  })
}

const skinFaults = (plan: Plan, shelf: Shelf): readonly string[] =>
  plan.parts.some((p) => p.id === `${shelf.id}/skin` && p.length !== Math.max(shelf.backLength, shelf.frontLength))
    ? [`${shelf.id}/skin is not as long as the shelf`]
    : []

/** What of the cleats does not lie in the void: between the skins, behind the front edge, clear of one another and of the ends. */
export function cleatFaults(job: Job, plan: Plan, bay: string): readonly string[] {
  return shelvesIn(plan, bay).flatMap((shelf) => {
    const own = partsOf(plan, bay).filter((p) => p.id.startsWith(`${shelf.id}/`))
    const skin = own.find((p) => p.piece === 'skin')
    const edge = own.find((p) => p.piece === 'edge')
    const cleats = own.filter((p) => p.id.includes('/cleat-')).map((p) => solidOf(job, p))
    if (skin === undefined || edge === undefined) return []
    const [low, high] = [shelf.z - shelf.thickness + skin.thickness, shelf.z - skin.thickness]
    const back = cleats.find((c) => c.id.endsWith('cleat-back'))
    const sides = cleats.filter((c) => !c.id.endsWith('cleat-back'))
    return [
      ...cleats.filter((c) => c.z0 <= low || c.z1 >= high).map((c) => `${c.id} leaves no slip between the skins`),
      ...cleats.filter((c) => c.y1 > shelf.depth - edge.thickness).map((c) => `${c.id} meets the front edge`),
      ...sides
        .filter((c) => back !== undefined && c.x0 < back.x1 && back.x0 < c.x1)
        .map((c) => `${c.id} runs through the back cleat`),
    ]
  })
}
