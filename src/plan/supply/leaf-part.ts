import type { Part } from '../../things/part.ts'
import { sum } from '../../units/length.ts'
import type { Leaf } from '../fronts/fronts.ts'
import { mdf } from '../materials.ts'

/** Parts with the pieces of each leaf put together again as one part of the leaf's own size, where the first piece stood. */
export function withWholeLeaves(parts: readonly Part[], leaves: readonly Leaf[]): readonly Part[] {
  const leafOf = new Map(leaves.map((leaf) => [leaf.mark, leaf]))
  const placed = new Set<string>()
  return parts.flatMap((part) => {
    const leaf = leafOf.get(part.mark)
    if (leaf === undefined) return [part]
    if (placed.has(leaf.mark)) return []
    placed.add(leaf.mark)
    return [leafPart(leaf, part, parts)]
  })
}

/** One leaf as one part, painted on both faces and all edges like the blank it looks like. */
function leafPart(leaf: Leaf, first: Part, parts: readonly Part[]): Part {
  const { piece: _piece, taper: _taper, ...rest } = first
  const pieces = parts.filter((part) => part.mark === leaf.mark)
  return {
    ...rest,
    id: leaf.id,
    name: 'door',
    quantity: 1,
    length: leaf.height,
    width: leaf.width,
    thickness: leaf.thickness,
    roughLength: leaf.height,
    roughWidth: leaf.width,
    leaveLong: '',
    material: mdf(leaf.thickness),
    grain: 'none',
    shows: 'both faces',
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(leaf.box.run.wall.originX, leaf.x),
      y: first.placement.y,
      z: leaf.z,
      dx: leaf.width,
      dy: leaf.thickness,
      dz: leaf.height,
    },
    cutOuts: pieces.flatMap((piece) => piece.cutOuts),
    waitsFor: [...new Set([...leaf.waitsFor, ...pieces.flatMap((piece) => piece.waitsFor)])],
  }
}
