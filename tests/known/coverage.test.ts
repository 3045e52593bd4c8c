import { describe, expect, it } from 'vitest'
import { coverageLitres, filmLitres, spreadingRate, wetFilm } from '../../src/plan/coating/coat-litres.ts'
import { LITRES_PER_US_GALLON, litres } from '../../src/units/volume.ts'

const MICRONS_PER_MIL = 25.4
const SQUARE_FEET_PER_SQUARE_METRE = 1 / 0.09290304
/** ft² a US gallon from m² a litre. */
const perGallon = (perLitre: number) => perLitre * LITRES_PER_US_GALLON * SQUARE_FEET_PER_SQUARE_METRE

describe('1604 rule: sq ft per US gallon = 1604 × volume solids / dry mils', () => {
  it('231 cu in spread 1 mil thick cover 1604.1667 sq ft exactly', () => {
    const rate = spreadingRate({ solids: 1, dryMicrons: MICRONS_PER_MIL, transfer: 1 })
    expect(perGallon(rate)).toBeCloseTo((231 * 1000) / 144, 6)
  })

  it.each([
    // Printed with 1604: trade data sheets, scribd 343849341; paintcenter.org, October 2003.
    ['65 % solids at 5.0 mil', { solids: 0.65, dryMicrons: 5 * MICRONS_PER_MIL, transfer: 1 }, 208.52],
    ['52 % at 1.5 mil, 30 % transfer', { solids: 0.52, dryMicrons: 1.5 * MICRONS_PER_MIL, transfer: 0.3 }, 166.816],
  ])('%s', (_, given, printed) => {
    expect(Math.abs(perGallon(spreadingRate(given)) / printed - 1)).toBeLessThan(0.0002)
  })

  it('65 % at 125 µm: 5.2 m² a litre (trade data sheet, scribd 343849341)', () => {
    expect(spreadingRate({ solids: 0.65, dryMicrons: 125, transfer: 1 })).toBeCloseTo(5.2, 12)
  })
})

describe('wet film (computed from the same rule)', () => {
  it('1.5 dry mil at 38 %: 3.947368 mil wet', () => {
    const wet = wetFilm({ dryMicrons: 1.5 * MICRONS_PER_MIL, solids: 0.38, thinner: 0 })
    expect(wet / MICRONS_PER_MIL).toBeCloseTo(3.947368, 6)
  })

  it('thinned 10 % by volume: 4.342105 mil wet', () => {
    const wet = wetFilm({ dryMicrons: 1.5 * MICRONS_PER_MIL, solids: 0.38, thinner: 0.1 })
    expect(wet / MICRONS_PER_MIL).toBeCloseTo(4.342105, 6)
  })
})

describe('litres of a coat', () => {
  it('16.7 m² at 40 µm dry, 38 % solids, half of it lost: 3.515789 l (computed)', () => {
    const film = wetFilm({ dryMicrons: 40, solids: 0.38, thinner: 0 })
    expect(filmLitres({ area: 16.7, coats: 1, wetFilm: film, transfer: 0.5, residue: 0 })).toBeCloseTo(3.515789, 6)
  })

  it('180 sq ft at 1.5 mil dry, 38 %, half lost: 0.885943 US gal with 1604 (computed)', () => {
    const film = wetFilm({ dryMicrons: 1.5 * MICRONS_PER_MIL, solids: 0.38, thinner: 0 })
    const area = 180 * 0.09290304
    const gallons = filmLitres({ area, coats: 1, wetFilm: film, transfer: 0.5, residue: 0 }) / LITRES_PER_US_GALLON
    expect(Math.abs(gallons / 0.885943 - 1)).toBeLessThan(0.0002)
  })

  it('two coats and what stays in the pot: the residue once, not a coat', () => {
    const one = { area: 10, coats: 1, wetFilm: 100, transfer: 0.5, residue: 0 }
    expect(filmLitres({ ...one, coats: 2, residue: 0.4 })).toBeCloseTo(2 * filmLitres(one) + 0.4, 12)
  })

  it('brick face 40 sq ft × 1.4 rough, two coats at 350 sq ft a gallon: 0.32 gal (computed)', () => {
    expect(coverageLitres({ area: 40 * 1.4, coats: 2, coverage: 350 })).toBeCloseTo(litres(0.32), 12)
  })
})
