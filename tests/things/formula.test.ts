import { describe, expect, it } from 'vitest'
import { formula, noteRead, recording, within } from '../../src/things/formula.ts'

const twice = formula(
  { id: 'made-up.twice', plain: 'a number, two times', source: 'arithmetic', gives: 'number' },
  ({ of }: { readonly of: number }) => 2 * of,
)
const fourTimes = formula(
  { id: 'made-up.four-times', plain: 'twice, two times', source: 'arithmetic', from: { half: twice } },
  ({ half }: { readonly half: number }) => twice({ of: half }),
)

describe('a formula', () => {
  it('is called like the bare function and has its name', () => {
    expect([twice({ of: 4 }), twice.id]).toEqual([8, 'made-up.twice'])
  })

  it('notes nothing outside a recording, and inside it each call in order, inner before outer', () => {
    twice({ of: 1 })
    const { result, workings } = recording(() => fourTimes({ half: twice({ of: 3 }) }))
    expect(result).toBe(12)
    expect(workings.map((w) => [w.id, w.inputs, w.result])).toEqual([
      ['made-up.twice', { of: 3 }, 6],
      ['made-up.twice', { of: 6 }, 12],
      ['made-up.four-times', { half: 6 }, 12],
    ])
    expect(workings[2]?.from.half).toBe(twice)
    expect(recording(() => 0).workings).toEqual([])
  })

  it('is about what it was worked out within, also after one inside it failed', () => {
    const { workings } = recording(() =>
      within('a', () => {
        expect(() =>
          within('a/box-1', () => {
            twice({ of: 1 })
            throw new RangeError('made up')
          }),
        ).toThrow('made up')
        twice({ of: 2 })
      }),
    )
    expect(workings.map((w) => w.about)).toEqual(['a/box-1', 'a'])
  })

  it('stops noting when the work fails', () => {
    expect(() =>
      recording(() => {
        throw new RangeError('made up')
      }),
    ).toThrow()
    let read = false
    noteRead(() => {
      read = true
      return { kind: 'figure', id: 'x', about: '', plain: '', source: '', result: 1 }
    })
    expect(read).toBe(false)
  })
})
