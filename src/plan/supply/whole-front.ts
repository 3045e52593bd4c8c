import type { Part } from '../../things/part.ts'
import { sum } from '../../units/length.ts'
import { type Front, isOfFront } from '../fronts/front.ts'
import type { FrontPlan } from '../fronts/fronts.ts'
import { mdf } from '../materials.ts'

/**
 * Parts with the pieces of each leaf and drawer front put together again as one part of the front's own size, where its first
 * piece stood. The box behind a drawer front stays in its pieces.
 */
export function withWholeFronts(
  parts: readonly Part[],
  { leaves, drawers }: Pick<FrontPlan, 'leaves' | 'drawers'>,
): readonly Part[] {
  const fronts: readonly Front[] = [...leaves, ...drawers]
  const byMark = new Map(fronts.map((front) => [front.mark, front]))
  const placed = new Set<string>()
  return parts.flatMap((part) => {
    const front = byMark.get(part.mark)
    if (front === undefined || !isOfFront(part, front)) return [part]
    if (placed.has(front.id)) return []
    placed.add(front.id)
    return [wholeFront(front, part, parts)]
  })
}

/** One front as one part, painted on both faces and all edges like the blank it looks like. */
function wholeFront(front: Front, first: Part, parts: readonly Part[]): Part {
  const { piece: _piece, taper: _taper, ...rest } = first
  const pieces = parts.filter((part) => isOfFront(part, front))
  return {
    ...rest,
    id: front.id,
    name: first.piece === undefined ? first.name : first.name.slice(0, -` ${first.piece}`.length),
    quantity: 1,
    length: front.height,
    width: front.width,
    thickness: front.thickness,
    roughLength: front.height,
    roughWidth: front.width,
    leaveLong: '',
    material: mdf(front.thickness),
    grain: 'none',
    shows: 'both faces',
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(front.box.run.wall.originX, front.x),
      y: first.placement.y,
      z: front.z,
      dx: front.width,
      dy: front.thickness,
      dz: front.height,
    },
    cutOuts: pieces.flatMap((piece) => piece.cutOuts),
    waitsFor: [...new Set([...front.waitsFor, ...pieces.flatMap((piece) => piece.waitsFor)])],
    from: { length: front.from.height, width: front.from.width, thickness: { id: 'frontThickness' } },
  }
}
