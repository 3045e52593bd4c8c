import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../../src/figures/figures.ts'
import type { FrontKind } from '../../../src/kinds/front/contract.ts'
import { FRONTS } from '../../../src/kinds/front/list.ts'
import { millimetres as mm, sum } from '../../../src/units/length.ts'

const figures = figuresIn('metric')
const kinds: readonly FrontKind[] = Object.values(FRONTS)
/** The sizes are given: where they are from does not change a piece. */
const from = { width: { id: 'fronts.leaf-width' }, height: { id: 'fronts.face-height' } }
const leaf = fc.record({
  width: fc.integer({ min: 200, max: 600 }).map(mm),
  height: fc.integer({ min: 300, max: 2400 }).map(mm),
  frame: fc.integer({ min: 40, max: 70 }).map(mm),
})

describe.each(kinds.map((kind) => [kind.id, kind] as const))('a %s front', (_id, kind) => {
  it('has each piece inside the outline of its leaf, and none longer rough than it says', () => {
    fc.assert(
      fc.property(leaf, (size) => {
        for (const piece of kind.pieces({ ...size, thickness: mm(18), from, figures })) {
          const upright = piece.lies === 'upright'
          const [dx, dz] = upright ? [piece.width, piece.length] : [piece.length, piece.width]
          expect(piece.at.x).toBeGreaterThanOrEqual(0)
          expect(piece.at.z).toBeGreaterThanOrEqual(0)
          expect(sum(piece.at.x, dx)).toBeLessThanOrEqual(size.width)
          expect(sum(piece.at.z, dz)).toBeLessThanOrEqual(size.height)
          expect(piece.roughLength).toBe(sum(piece.length, piece.leftLong))
        }
      }),
    )
  })

  it('has one piece at each edge that carries hinges or a handle', () => {
    const pieces = kind.pieces({ width: mm(400), height: mm(700), thickness: mm(18), frame: mm(60), from, figures })
    for (const side of ['left edge', 'right edge'])
      expect(pieces.filter((p) => p.carries === side || p.carries === 'whole')).toHaveLength(1)
  })
})
