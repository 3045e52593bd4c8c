import { ZERO } from '../../units/length.ts'
import type { FrontKind, LeafPiece, LeafSize } from './contract.ts'

/** A leaf that is one blank, sawn at its finished size. */
export const blankOf = (leaf: LeafSize, details: LeafPiece['details']): LeafPiece => ({
  id: 'blank',
  carries: 'whole',
  length: leaf.height,
  width: leaf.width,
  thickness: leaf.thickness,
  roughLength: leaf.height,
  leftLong: ZERO,
  details,
  at: { x: ZERO, y: ZERO, z: ZERO },
  lies: 'upright',
  from: { length: leaf.from.height, width: leaf.from.width, thickness: { id: 'frontThickness' } },
})

export const slabFront = {
  id: 'slab',
  says: 'slab, plain',
  door: 'door',
  rate: 'leaf-slab',
  asksFrame: false,
  pieces: (leaf) => [blankOf(leaf, [])],
  field: () => undefined,
  handleIn: ({ figures }) => figures.length('handle.slab-in'),
} as const satisfies FrontKind
