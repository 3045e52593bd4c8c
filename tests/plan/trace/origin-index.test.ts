import { describe, expect, it } from 'vitest'
import { originIndex, originOf } from '../../../src/plan/trace/origin-index.ts'
import { formula, recording, within } from '../../../src/things/formula.ts'

const width = formula(
  { id: 'box.width', plain: 'run / boxes', source: 'geometry' },
  (of: { readonly run: number; readonly boxes: number }) => of.run / of.boxes,
)
const limits = formula({ id: 'slot.limits', plain: 'both', source: 'geometry' }, (of: { readonly all: number }) => ({
  left: of.all,
  rows: [{ right: of.all + 1 }],
}))

const notes = recording(() => {
  within('a', () => width({ run: 40, boxes: 2 }))
  within('a/box-1', () => width({ run: 40, boxes: 2 }))
  within('b', () => width({ run: 60, boxes: 3 }))
  within('b', () => limits({ all: 7 }))
}).workings
const index = originIndex(notes)
const find = (about: string, rest: Partial<Parameters<typeof originOf>[1]>) =>
  originOf(index, { name: 'width', value: 20, about, by: '', before: 99, ...rest })?.at

describe('the origin of a number in use', () => {
  it('is of the same subject before an enclosing one, and of an enclosing one before one inside', () => {
    expect(find('a/box-1', {})).toBe(1)
    expect(find('a/box-2', {})).toBe(0)
    expect(find('', {})).toBe(2)
  })

  it('has exactly its value and was worked out before', () => {
    expect(find('a', { value: 21 })).toBeUndefined()
    expect(find('a', { before: 0 })).toBeUndefined()
  })

  it('stands beside it only when the formula says so', () => {
    expect(find('c', {})).toBeUndefined()
    expect(find('c', { name: 'w', from: { id: 'box.width' } })).toBe(2)
  })

  it('goes by the last part of an id or the whole of it', () => {
    expect(find('a', { name: 'boxWidth' })).toBe(0)
    expect(find('a', { name: 'breadth' })).toBeUndefined()
  })

  it('may stand anywhere inside what a formula gives', () => {
    expect(find('b', { name: 'limits', value: 8 })).toBe(3)
    expect(find('b', { name: 'limits', value: 9 })).toBeUndefined()
  })
})
