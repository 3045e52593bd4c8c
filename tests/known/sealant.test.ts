import { describe, expect, it } from 'vitest'
import { caulk } from '../../src/kinds/joint/caulk.ts'
import type { GapLimits } from '../../src/kinds/joint/contract.ts'
import { allPasses, beadSection, beadVolume, passesFor, rodDiameter } from '../../src/plan/joints/bead.ts'
import { joints } from '../../src/plan/joints/joints.ts'
import { inches, type Length, nanometres, ZERO } from '../../src/units/length.ts'
import { LITRES_PER_US_FLUID_OUNCE } from '../../src/units/volume.ts'
import { contextFor } from '../plan/context-for-test.ts'

/** 10.1 US fl oz; 1 US fl oz = 231/128 cu in (NIST SP 811, appendix B.8). */
const CARTRIDGE = 10.1 * LITRES_PER_US_FLUID_OUNCE
const FEET_PER_METRE = 1 / 0.3048

const limits = (fillet: number): GapLimits => ({
  filletOnly: inches(0, 1, 32),
  caulkMost: inches(0, 1, 2),
  rodMost: inches(0, 1, 2),
  fillet: inches(fillet),
  beadLeast: ZERO,
  beadMost: inches(1),
})
/** Feet one cartridge lays at a section, no waste. */
const feet = (section: number) => {
  const perMetre = beadVolume({ length: nanometres(1e9), sectionOne: section, sectionOther: section, waste: 0 })
  return (CARTRIDGE / perMetre) * FEET_PER_METRE
}
const sectionIn = (gap: Length, given: GapLimits) =>
  beadSection({ gap, depth: caulk.depth(gap, given), fillet: given.fillet })
const square = (gap: number) => sectionIn(inches(gap), limits(0))
const triangle = (leg: number) => sectionIn(ZERO, limits(leg))

describe('feet of bead from 10.1 fl oz, no waste (231/128 cu in a fluid ounce; computed from the section)', () => {
  it.each([
    ['1/8 × 1/8 square', square(1 / 8), 97.2125],
    ['1/8 triangular fillet', triangle(1 / 8), 194.425],
    ['3/16 × 3/16 square', square(3 / 16), 43.2056],
    ['3/16 triangle', triangle(3 / 16), 86.4111],
    ['1/4 × 1/4 square', square(1 / 4), 24.303125],
    ['1/4 triangle', triangle(1 / 4), 48.60625],
    ['3/8 × 3/8 square', square(3 / 8), 10.801389],
  ])('%s', (_, section, printed) => {
    expect(feet(section)).toBeCloseTo(printed, 3)
  })

  it('a supplier’s yield page prints 18.3 cu in for 10.1 fl oz: 18.227 exactly', () => {
    expect(CARTRIDGE / 0.016387064).toBeCloseTo(18.22734375, 6)
  })

  it('tapering joint: 142 in, gap 1/8 to 3/16, 1/8 deep, waste × 1.25 takes 3.466797 cu in = 0.190198 cartridge (worked by hand)', () => {
    const shallow = { ...limits(0), beadMost: inches(0, 1, 8) }
    const section = (gap: number) => sectionIn(inches(gap), shallow)
    const sections = { sectionOne: section(1 / 8), sectionOther: section(3 / 16) }
    const litres = beadVolume({ length: inches(142), ...sections, waste: 0.25 })
    expect(litres / 0.016387064).toBeCloseTo(3.466797, 6)
    expect(litres / CARTRIDGE).toBeCloseTo(0.190198, 6)
  })
})

describe('passes: hollow after n is depth × 0.30ⁿ, stop at 1/64 in (30 %: ASTM C834, from memory; worked by hand)', () => {
  it.each([
    [1 / 8, 2],
    [3 / 16, 3],
    [1 / 4, 3],
    [3 / 64, 1],
    [1 / 64, 1],
  ])('depth %d in: %d', (depth, passes) => {
    expect(passesFor({ depth: inches(depth), visible: inches(0, 1, 64), shrinkage: 0.3 })).toBe(passes)
  })

  it('≤ is exact: a depth of visible / 0.3 to the nanometre takes one pass, one nanometre more takes two', () => {
    const at = (depth: number) => passesFor({ depth: nanometres(depth), visible: nanometres(300_000), shrinkage: 0.3 })
    expect([at(1_000_000), at(1_000_001)]).toEqual([1, 2])
  })

  it('a caulk that does not shrink takes one pass; one that shrinks away never stays flush', () => {
    const depth = inches(0, 1, 4)
    const visible = inches(0, 1, 64)
    expect(passesFor({ depth, visible, shrinkage: 0 })).toBe(1)
    expect(passesFor({ depth, visible, shrinkage: 1 })).toBeUndefined()
  })

  it('three passes take 1 + 0.3 + 0.09 of the first', () => {
    expect(allPasses({ passes: 3, shrinkage: 0.3 })).toBeCloseTo(1.39, 12)
  })
})

it('backer rod for a 3/8 in gap: 0.46875 in (ASTM C1193 practice, 25 % over, from memory)', () => {
  expect(rodDiameter({ gap1: inches(0, 3, 8), gap2: inches(0, 1, 8), over: 1.25 })).toBe(inches(0.46875))
})

it('tape: 38 joints of 1450 in together, 3 in over at each end, 10 % waste, are 0.854537 of a 60 yd roll (common practice; worked by hand)', () => {
  const drafts = Array.from({ length: 38 }, (_, n) => ({
    id: `a/${n}`,
    bay: 'a',
    where: `joint ${n}`,
    length: inches(n === 0 ? 1450 - 37 * 38 : 38),
    gap1: inches(0, 1, 32),
    gap2: inches(0, 1, 32),
    ends: ['left', 'right'] as const,
    colour: 'wall' as const,
    twoColours: true,
    waitsFor: [],
  }))
  expect(joints(contextFor('inch'), drafts).tape / (2160 * 0.0254)).toBeCloseTo(0.854537, 6)
})
