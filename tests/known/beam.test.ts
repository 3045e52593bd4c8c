import { describe, expect, it } from 'vitest'
import { beamDeflection, withCreep } from '../../src/kinds/shelf/beam.ts'
import { gluedSkinsMoment, looseSkinsMoment, rectangleMoment } from '../../src/kinds/shelf/second-moment.ts'

/** ANSI A208.2, MDF grade 130: 2400 N/mm², in psi. */
const MDF_PSI = 348_091
/** EN 1995-1-1 table 3.2 (as quoted for UNI EN 622-5:2010): MDF, service class 1. */
const MDF_CREEP = 2.25
const psf = (load: number) => load / 144

describe('a single span with simple ends (Wood Handbook, table 9-1: 5/384)', () => {
  /** Architectural Woodwork Standards, 1st edition 2009, p. 279: longest shelf at L/144; limit p. 253. */
  it.each([
    [950_000, 3 / 4, 40, 40.026025, 40],
    [950_000, 3 / 4, 50, 37.15687, 37],
    [950_000, 1, 40, 53.368033, 53],
    [950_000, 1, 50, 49.542493, 49],
    [1_800_000, 3 / 4, 40, 49.528909, 49],
    [1_800_000, 3 / 4, 50, 45.978566, 46],
    [1_800_000, 1, 40, 66.038545, 66],
    [1_800_000, 1, 50, 61.304755, 61],
    [1_820_000, 3 / 4, 40, 49.711674, 49],
    [1_820_000, 3 / 4, 50, 46.14823, 46],
    [1_820_000, 1, 40, 66.282232, 66],
    [1_820_000, 1, 50, 61.530973, 61],
  ])('E %d psi, %d in, %d lb/sq ft: bends L/144 at %d in, printed %d', (E, t, load, span, printed) => {
    const sag = beamDeflection({
      bending: 'uniform, simple ends',
      totalLoad: psf(load) * span,
      span,
      stiffness: E,
      secondMoment: rectangleMoment(1, t),
    })
    expect(sag).toBeCloseTo(span / 144, 6)
    expect(Math.abs(span - printed)).toBeLessThan(1)
  })

  it('36 × 11 × 3/4 in MDF at 15 lb/sq ft bends 0.186158 in, under 1/16 in a foot (ANSI/KCMA A161.1, 5.1)', () => {
    const sag = beamDeflection({
      bending: 'uniform, simple ends',
      totalLoad: psf(15) * 11 * 36,
      span: 36,
      stiffness: MDF_PSI,
      secondMoment: rectangleMoment(11, 3 / 4),
    })
    expect(sag).toBeCloseTo(0.186158, 6)
    expect(sag).toBeLessThan((1 / 16) * 3)
  })

  it('800 × 250 × 18 mm MDF at 0.75 kN/m²: 3.429355 mm, 11.145405 with creep (computed from the same equation)', () => {
    const sag = beamDeflection({
      bending: 'uniform, simple ends',
      totalLoad: 0.00075 * 250 * 800,
      span: 800,
      stiffness: 2400,
      secondMoment: rectangleMoment(250, 18),
    })
    expect(sag).toBeCloseTo(3.429355, 6)
    expect(withCreep(sag, MDF_CREEP)).toBeCloseTo(11.145405, 5)
  })
})

/** Worked example, invented, computed by hand from Wood Handbook table 9-1. */
describe('a hollow shelf 41 × 15 in, 2 1/2 thick, skins 1/2, front strip 3/4 × 1 1/2, 20 lb/sq ft', () => {
  const load = { bending: 'uniform, simple ends', totalLoad: psf(20) * 15 * 41, span: 41, stiffness: MDF_PSI } as const

  it('glued: I 15.5234375 in⁴, 0.0141857 in, 0.0461037 with creep', () => {
    const secondMoment = gluedSkinsMoment(15, 1 / 2, 2.5) + rectangleMoment(3 / 4, 1.5)
    expect(gluedSkinsMoment(15, 1 / 2, 2.5)).toBeCloseTo(15.3125, 10)
    expect(secondMoment).toBeCloseTo(15.5234375, 10)
    const sag = beamDeflection({ ...load, secondMoment })
    expect(sag).toBeCloseTo(0.0141857, 7)
    expect(withCreep(sag, MDF_CREEP)).toBeCloseTo(0.0461037, 6)
    expect(withCreep(sag, MDF_CREEP)).toBeLessThan(41 / 360)
  })

  it('skins loose: I 0.3125, 2.2902 in with creep: the stiffness comes from the glue', () => {
    const sag = beamDeflection({ ...load, secondMoment: looseSkinsMoment(15, 1 / 2) })
    expect(sag).toBeCloseTo(0.704677, 6)
    expect(withCreep(sag, MDF_CREEP)).toBeCloseTo(2.2902, 5)
  })
})

describe('a cantilever (Wood Handbook, table 9-1: 1/8)', () => {
  it('bends 9.6 times a simple span of the same length and load', () => {
    const beam = { totalLoad: 1, span: 1, stiffness: 1, secondMoment: 1 }
    const free = beamDeflection({ ...beam, bending: 'uniform, cantilever' })
    expect(free / beamDeflection({ ...beam, bending: 'uniform, simple ends' })).toBeCloseTo(9.6, 12)
  })
})
