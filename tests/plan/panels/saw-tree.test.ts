import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Block } from '../../../src/plan/panels/block.ts'
import { pack } from '../../../src/plan/panels/pack.ts'
import { sawOrder } from '../../../src/plan/panels/saw-order.ts'
import { leavesOf, type SawPiece, sawTree } from '../../../src/plan/panels/saw-tree.ts'
import { showIn } from '../../../src/things/show.ts'
import { millimetres } from '../../../src/units/length.ts'

const MM = 1_000_000
const KERF = 3 * MM

/** Follows the tree as a saw would: each piece of a row begins one kerf after the last, and spans the other way. */
function sawnRight(piece: SawPiece): boolean {
  if (piece.kind !== 'sawn') return true
  const [from, size, otherFrom, otherSize] =
    piece.direction === 'across' ? (['x', 'length', 'y', 'width'] as const) : (['y', 'width', 'x', 'length'] as const)
  let at = piece[from]
  for (const child of piece.into) {
    if (child[from] !== at || child[otherFrom] !== piece[otherFrom] || child[otherSize] !== piece[otherSize])
      return false
    at = child[from] + child[size] + KERF
  }
  return at - KERF <= piece[from] + piece[size] && piece.into.every(sawnRight)
}

describe('the saw order of a sheet', () => {
  it('frees every part at its own size by straight cuts, whatever was laid', () => {
    const sizes = fc.array(
      fc.record({ length: fc.integer({ min: 40, max: 900 }), width: fc.integer({ min: 40, max: 600 }) }),
      {
        minLength: 1,
        maxLength: 30,
      },
    )
    fc.assert(
      fc.property(sizes, (all) => {
        const blocks = all.map(
          (s, id): Block => ({ id, mayTurn: true, length: s.length * MM + KERF, width: s.width * MM + KERF }),
        )
        const bed = { length: 2430 * MM + KERF, width: 1210 * MM + KERF }
        for (const sheet of pack(blocks, bed, { effort: 'quick', least: 1 })) {
          const spots = sheet.map((s) => ({ ...s, length: s.length - KERF, width: s.width - KERF }))
          const tree = sawTree(
            spots,
            { x: 0, y: 0, length: 2430 * MM, width: 1210 * MM },
            { kerf: KERF, first: 'largest-waste' },
          )
          expect(tree).toBeDefined()
          if (tree === undefined) return
          expect(sawnRight(tree)).toBe(true)
          const freed = leavesOf(tree, 'part').map(({ x, y, length, width }) => `${x} ${y} ${length} ${width}`)
          expect(freed.toSorted()).toEqual(spots.map((s) => `${s.x} ${s.y} ${s.length} ${s.width}`).toSorted())
        }
      }),
      { numRuns: 40 },
    )
  })

  it('is read from the tree: trim first, then row by row, with what is left', () => {
    const spot = (block: number, x: number, y: number, length: number, width: number) => ({
      block,
      x: x * MM,
      y: y * MM,
      length: length * MM,
      width: width * MM,
      turned: false,
    })
    // Two strips of 700 across; the first is ripped into 300 and 200, the second holds one piece of 300.
    const spots = [spot(0, 0, 0, 700, 300), spot(1, 0, 303, 700, 200), spot(2, 703, 0, 700, 300)]
    const whole = { x: 0, y: 0, length: 2000 * MM, width: 1000 * MM }
    const tree = sawTree(spots, whole, { kerf: KERF, first: 'across' })
    expect(tree).toBeDefined()
    if (tree === undefined) return
    const names = { show: showIn('metric', 'EUR'), markOf: (b: number) => `L1-S${b + 1}`, trim: millimetres(5) }
    const order = sawOrder(tree, names)
    expect(order.lines).toEqual([
      { first: 1, last: 4, says: 'trim 5 off all four edges' },
      { first: 5, last: 6, says: 'across A 700, B 700; 594 is left' },
      { first: 7, last: 8, says: 'piece A, 700 long: rip 300, 200; 494 is left' },
      { first: 9, last: 9, says: 'piece B, 700 long: rip 300; 697 is left' },
    ])
    expect(order.cuts.map((c) => c.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    expect(order.cuts[6]?.says).toBe('piece A, 700 long: rip at 300: L1-S1')
  })

  it('a light sheet is parted so that the larger piece of waste stays whole', () => {
    const piece = (block: number, x: number) => ({
      block,
      x: x * MM,
      y: 0,
      length: 900 * MM,
      width: 300 * MM,
      turned: false,
    })
    const whole = { x: 0, y: 0, length: 2000 * MM, width: 1000 * MM }
    const firstOf = (first: 'across' | 'largest-waste') => {
      const tree = sawTree([piece(0, 0), piece(1, 903)], whole, { kerf: KERF, first })
      return tree?.kind === 'sawn' ? tree.direction : undefined
    }
    expect([firstOf('across'), firstOf('largest-waste')]).toEqual(['across', 'along'])
  })

  it('says that a pinwheel cannot be sawn', () => {
    const pin = (block: number, x: number, y: number, length: number, width: number) => ({
      block,
      x,
      y,
      length,
      width,
      turned: false,
    })
    const spots = [pin(0, 0, 0, 20, 10), pin(1, 20, 0, 10, 20), pin(2, 10, 20, 20, 10), pin(3, 0, 10, 10, 20)]
    expect(sawTree(spots, { x: 0, y: 0, length: 30, width: 30 }, { kerf: 0, first: 'across' })).toBeUndefined()
  })
})
