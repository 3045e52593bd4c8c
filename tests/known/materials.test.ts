import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { beadSection, beadVolume } from '../../src/plan/joints/bead.ts'
import { millimetres as mm, nanometres, ZERO } from '../../src/units/length.ts'

const figures = figuresIn('metric')

describe('figures that stand in for a reading lie inside what is published', () => {
  it.each([
    ['density of MDF, kg/m³', 'density.mdf', 700, 800, 'IS 14587 table, standard MDF, on a board seller’s page'],
    [
      'MDF in bending, N/mm²',
      'stiffness.mdf',
      2400,
      3600,
      'ANSI A208.2 grade 130, at least 2400; measured 3000 to 3600',
    ],
    [
      'creep of MDF',
      'creep.mdf',
      2.25,
      2.25,
      'EN 1995-1-1 table 3.2, service class 1, as quoted for UNI EN 622-5:2010',
    ],
    ['HVLP', 'transfer.hvlp', 0.5, 0.6, 'pfonline.com, a primer on transfer efficiency: 50 to 60 %'],
    ['airless', 'transfer.airless', 0.4, 0.5, 'pfonline.com, a primer on transfer efficiency: 40 to 50 %'],
    ['one person lifts, kg', 'lift.alone', 0, 23, 'DHHS (NIOSH) 94-110, load constant'],
  ])('%s (%s) from %d to %d: %s', (_, id, least, most) => {
    expect(figures.number(id)).toBeGreaterThanOrEqual(least)
    expect(figures.number(id)).toBeLessThanOrEqual(most)
  })
})

describe('a 290 ml cartridge, no waste (computed from the section)', () => {
  const metres = (section: number) =>
    0.29 / beadVolume({ length: nanometres(1e9), sectionOne: section, sectionOther: section, waste: 0 })

  it('5 × 5 mm lays 11.6 m', () =>
    expect(metres(beadSection({ gap: mm(5), depth: mm(5), fillet: ZERO }))).toBeCloseTo(11.6, 6))
  it('a 3 mm fillet lays 64.444 m', () =>
    expect(metres(beadSection({ gap: ZERO, depth: ZERO, fillet: mm(3) }))).toBeCloseTo(64.444, 3))
})
