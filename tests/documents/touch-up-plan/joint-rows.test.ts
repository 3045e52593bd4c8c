import { describe, expect, it } from 'vitest'
import { forHelper } from '../../../src/documents/for-helper.ts'
import { jointRows } from '../../../src/documents/touch-up-plan/joint-rows.ts'
import type { Length } from '../../../src/units/length.ts'
import { inchPlan } from '../fixture.ts'

const joints = forHelper(inchPlan()).joints

describe('rows of the touch-up plan', () => {
  it('name every joint once', () => {
    const numbers = jointRows(joints).flatMap((row) => row.numbers.split(', ').map(Number))
    expect(numbers).toEqual(joints.map((joint) => joint.number))
  })

  it('join over and under of one edge only while all else is alike', () => {
    const at = joints.findIndex((joint) => joint.where.endsWith(', over'))
    const [over, under] = [joints[at], joints[at + 1]]
    if (over === undefined || under === undefined) throw new Error('no edge with both sides')
    expect(jointRows([over, under])).toHaveLength(1)
    expect(jointRows([over, { ...under, gap1: (under.gap1 * 2) as Length }])).toHaveLength(2)
    expect(jointRows([over, { ...under, passes: under.passes + 1 }])).toHaveLength(2)
    expect(jointRows([under, over])).toHaveLength(2)
  })
})
