import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxMark, boxPartMark, parseMark, printMark, runPartMark } from '../../src/plan/marks.ts'
import { ROLES, type Role } from '../../src/things/part.ts'
import { namedBays } from '../../src/things/place.ts'

const roles = Object.keys(ROLES) as Role[]

describe('part marks', () => {
  it('read place, box, role, number', () => {
    const [left] = namedBays([
      { id: 'a', kind: 'alcove' },
      { id: 'b', kind: 'breast' },
      { id: 'c', kind: 'alcove' },
    ])
    expect([boxMark(left!, 2), boxPartMark(left!, 2, 'S', 1), runPartMark(left!, 'P', 1)]).toEqual([
      'L2',
      'L2-S1',
      'L-P1',
    ])
  })

  it('put a dot between the number of a bay and that of a box', () => {
    expect(printMark({ bay: 'W4', box: 2, role: 'S', number: 1 })).toBe('W4.2-S1')
  })

  it('come back as they were written', () => {
    const number = fc.integer({ min: 1, max: 99 })
    const bay = fc.oneof(
      fc.constantFrom('L', 'M', 'R'),
      fc.integer({ min: 1, max: 12 }).map((n) => `W${n}`),
    )
    fc.assert(
      fc.property(
        bay,
        fc.option(number),
        fc.option(fc.tuple(fc.constantFrom(...roles), number)),
        (letter, box, part) => {
          const mark = {
            bay: letter,
            ...(box === null ? {} : { box }),
            ...(part === null ? {} : { role: part[0], number: part[1] }),
          }
          expect(parseMark(printMark(mark))).toEqual(mark)
        },
      ),
    )
  })

  it.each(['', 'X1', 'L2-Q1', 'L2S1', 'L02-S1', 'L2-S0', 'W4-2'])('"%s" is none', (text) => {
    expect(parseMark(text)).toBeUndefined()
  })
})
