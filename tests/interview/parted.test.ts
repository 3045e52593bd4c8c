import { expect, it } from 'vitest'
import { joinedComma, joinedFraction, parted } from '../../src/interview/parted.ts'

it('two spaces or a tab part figures, one space does not', () => {
  expect(parted('44  3/16')).toBe('44, 3/16')
  expect(parted('4\t41 1/4\t41 3/8')).toBe('4, 41 1/4, 41 3/8')
  expect(parted('44 3/16')).toBe('44 3/16')
  expect(parted('0,  1/8')).toBe('0,  1/8')
})

it('says why a row came out short when a fraction may have joined a whole figure', () => {
  expect(joinedFraction('44 3/16')).toMatch(/comma/)
  expect(joinedFraction('44')).toBe('')
})

it('says that a comma without a space was read as a decimal mark', () => {
  expect(joinedComma('0,0')).toBe(
    ' The comma in 0,0 was read as a decimal mark: put a space after it between two figures, like 0, 0.',
  )
  expect(joinedComma('44,3/16')).toMatch(/44,3 .*like 44, 3/)
  expect(joinedComma('44, 3/16')).toBe('')
})
