import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Piece, paginate } from '../../../src/documents/write/piece.ts'

const piece = (height: number, more: Partial<Piece> = {}): Piece => ({
  height,
  before: 0,
  group: undefined,
  draw: () => undefined,
  ...more,
})

describe('pages are filled from the top', () => {
  it('nothing that fits a page stands over its foot, nothing is lost, order is kept', () => {
    const heights = fc.array(fc.record({ h: fc.integer({ min: 0, max: 100 }), g: fc.integer({ min: 0, max: 3 }) }))
    const groups = [undefined, {}, {}, {}]
    fc.assert(
      fc.property(heights, (rows) => {
        const pieces = rows.map(({ h, g }) => piece(h, { before: 5, group: groups[g] }))
        const pages = paginate(pieces, 100)
        const placed = pages.flat()
        return (
          placed.map((p) => p.piece).every((p, i) => p === pieces[i]) &&
          placed.length === pieces.length &&
          placed.every(({ piece: p, y }) => y + p.height <= 100.01)
        )
      }),
    )
  })

  it('a group that fits on a page is not split', () => {
    const step = {}
    const pages = paginate([piece(80), piece(15, { group: step }), piece(15, { group: step })], 100)
    expect(pages.map((page) => page.length)).toEqual([1, 2])
  })

  it('a heading never stands last', () => {
    const pages = paginate([piece(85), piece(10, { leads: true }), piece(20)], 100)
    expect(pages.map((page) => page.length)).toEqual([1, 2])
  })

  it('the head of a table is drawn again on the next page', () => {
    const head = piece(10)
    const pages = paginate([head, ...Array.from({ length: 5 }, () => piece(30, { head }))], 100)
    expect(pages.map((page) => page[0]?.piece)).toEqual([head, head])
  })
})
