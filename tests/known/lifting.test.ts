import { describe, expect, it } from 'vitest'
import { type Lift, liftingIndex, recommendedWeight } from '../../src/plan/fixings/lifting.ts'

/** Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021, metric: LC 23 kg, lengths in cm. */
const lift = (given: Partial<Lift>): Lift => ({
  handsOut: 25,
  handsHeight: 75,
  travel: 25,
  twist: 0,
  grip: 'good',
  frequency: 1,
  ...given,
})

describe('revised NIOSH lifting equation, metric', () => {
  it('12 kg, H 25, V 55, D 95, FM 0.88, fair: printed 23×1×.94×.87×.88×.95 = 15.72 kg, index 0.76 (homeworksource.com)', () => {
    const one = lift({ handsHeight: 55, travel: 95, grip: 'fair', frequency: 0.88 })
    expect(recommendedWeight(one)).toBeCloseTo(15.677094, 5)
    expect(Math.abs(recommendedWeight(one) - 15.72)).toBeLessThan(0.05)
    expect(liftingIndex({ mass: 12, lift: one })).toBeCloseTo(0.765448, 5)
  })

  it('sheet of 39.6 kg, H 40, V 50, D 65, A 30, poor grip: 9.62 kg, index 4.116 (computed from the equation)', () => {
    const sheet = lift({ handsOut: 40, handsHeight: 50, travel: 65, twist: 30, grip: 'poor' })
    expect(recommendedWeight(sheet)).toBeCloseTo(9.619999, 5)
    expect(liftingIndex({ mass: 39.6, lift: sheet })).toBeCloseTo(4.116425, 5)
  })

  it('the best lift there is carries the load constant, 23 kg', () => {
    expect(recommendedWeight(lift({}))).toBe(23)
  })

  it.each([
    ['hands nearer than 25 cm count as 25', lift({ handsOut: 20 }), 23],
    ['hands farther than 63 cm', lift({ handsOut: 64 }), 0],
    ['hands above 175 cm', lift({ handsHeight: 176 }), 0],
    ['less than 25 cm up counts as nothing', lift({ travel: 10 }), 23],
    ['more than 175 cm up', lift({ travel: 176 }), 0],
    ['twisted more than 135°', lift({ twist: 136 }), 0],
    ['fair grip above 75 cm is no worse than good', lift({ grip: 'fair' }), 23],
    ['poor grip', lift({ grip: 'poor' }), 23 * 0.9],
  ])('limits of the equation: %s', (_, given, limit) => {
    expect(recommendedWeight(given)).toBeCloseTo(limit, 9)
  })

  it('nothing may be lifted past the limits', () => {
    expect(liftingIndex({ mass: 1, lift: lift({ handsOut: 70 }) })).toBe(Number.POSITIVE_INFINITY)
  })
})
