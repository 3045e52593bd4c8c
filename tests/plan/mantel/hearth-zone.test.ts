import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../../src/figures/figures.ts'
import { profilesOf } from '../../../src/kinds/fuel/code-rules.ts'
import { hearthZone } from '../../../src/plan/mantel/hearth-zone.ts'
import { inches } from '../../../src/units/length.ts'

/** IRC R1001.10 (2006 to 2021): under 6 sq ft 16 and 8 in, from 6 sq ft on 20 and 12. */
describe('hearth zone', () => {
  it.each([
    [30, 28, 16, 8],
    [36, 30, 20, 12],
    [36, 24, 20, 12],
  ])('an opening %d × %d in: %d in front, %d at each side', (width, height, front, side) => {
    const figures = figuresIn('inch')
    const zone = hearthZone({
      openingWidth: inches(width),
      openingHeight: inches(height),
      flame: 'open',
      profiles: profilesOf('irc', figures),
      figures,
    })
    expect(zone).toEqual({ front: inches(front), side: inches(side) })
  })
})
