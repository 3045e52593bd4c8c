import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { hingeCount } from '../../src/plan/fronts/hinges.ts'
import { inches, type Length, millimetres } from '../../src/units/length.ts'
import { kilograms } from '../../src/units/mass.ts'

const figures = figuresIn('inch')
const count = (height: Length, mass = 1, width = millimetres(450)) =>
  hingeCount({ height, width, mass: kilograms(mass), figures })

// The published tables disagree, and no standards body's table was found: the larger of the count by height and the count
// by mass is taken, and the hinge's own sheet governs. So the program never hangs a leaf on fewer than these.
describe('hinges by height', () => {
  it('2 up to 900 mm (a retailer’s buying guide)', () => expect(count(millimetres(900))).toBe(2))
  it.each([
    ['under 40 in', inches(39), 2],
    ['40 in', inches(40), 3],
    ['59 in', inches(59), 3],
    ['64 in', inches(64), 4],
    ['79 in', inches(79), 4],
    ['84 in', inches(84), 5],
  ])('%s: at least %s (homelyville.com)', (_, height, least) => expect(count(height)!).toBeGreaterThanOrEqual(least))
  it('between 60 in and 1600 mm that guide asks for 4 and the program for 3: left to the hinge’s sheet', () =>
    expect(count(millimetres(1590))).toBe(3))
})

describe('hinges by mass', () => {
  it.each([
    [6, 2],
    [6.1, 3],
    [12, 3],
  ])('%s kg: %s (a hinge maker’s planning page, leaves up to 600 mm wide)', (mass, hinges) =>
    expect(count(millimetres(600), mass)).toBe(hinges),
  )
  it('one more over 600 mm wide (same page)', () => expect(count(millimetres(600), 4, millimetres(640))).toBe(3))
  it.each([
    [13, 4],
    [15, 4],
    [18, 5],
    [22, 5],
  ])('%s kg: at least %s (homitwirl.com)', (mass, least) =>
    expect(count(millimetres(600), mass)!).toBeGreaterThanOrEqual(least),
  )
  it('a leaf 30 in high of 5.49 kg: 2 by height and 2 by mass', () => expect(count(inches(30), 5.492_72)).toBe(2))
})
