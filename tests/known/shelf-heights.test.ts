import { expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { evenHeights } from '../../src/plan/shelves/shelf-heights.ts'
import { in_, inInches } from '../plan/run-for-test.ts'

it('four shelves from a mantel line at 48 to 84 stand 12 apart (geometry; worked by hand)', () => {
  const heights = evenHeights({ first: in_(48), last: in_(84), count: 4, near: (z) => z })
  expect(heights.map(inInches)).toEqual([48, 60, 72, 84])
})

it('a step is needed above what a short woman grips: 71.1 in, 5th percentile (Pheasant, Bodyspace, 1996, as given by studylib.net 5669461)', () => {
  const most = inInches(figuresIn('inch').length('shelf.step-needed'))
  expect(most).toBe(71)
  expect(most).toBeLessThanOrEqual(71.1)
})
