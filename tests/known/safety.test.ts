import { describe, expect, it } from 'vitest'
import { figuresIn } from '../../src/figures/figures.ts'
import { boxKind } from '../../src/job/chapters/cabinets.ts'
import { bow, wallKind } from '../../src/job/chapters/wall.ts'
import { devices } from '../../src/job/chapters/wall-devices.ts'
import { makePlan } from '../../src/plan/plan.ts'
import { disturbedArea } from '../../src/plan/strip-out/old-paint.ts'
import { SQUARE_METRES_PER_SQUARE_FOOT, squareMetres } from '../../src/units/area.ts'
import { ZERO } from '../../src/units/length.ts'
import { in_ } from '../plan/run-for-test.ts'
import { inchAlcove } from './worked-alcoves.ts'

describe('an electrical box behind new wood (NEC 314.20, 2008 to 2017: no set-back in a combustible surface, as printed by electricallicenserenewal.com)', () => {
  it('1/4 in back panel, 3/4 in off the plaster: the box is brought forward 1 in', () => {
    // A hump of 5/8 in and 1/8 in of air before it: the back stands 3/4 in off the wall.
    const job = inchAlcove.put(bow, 'a', [ZERO, in_(0, 5, 8)]).put(devices, 'a', [
      {
        what: 'outlet',
        wall: 'back',
        x: in_(9),
        z: in_(14),
        width: in_(2, 3, 4),
        height: in_(4, 1, 2),
        fate: 'keep',
      },
    ])
    const plan = makePlan(job.job, 'quick')
    expect(plan.devices.trades.map((t) => t.says)).toEqual([
      expect.stringContaining('extend the box to the new face by 1 in'),
    ])
  })
})

describe('lead paint (40 CFR 745.83: up to 6 sq ft a room inside is minor; a removed component counts its whole area; epa.gov)', () => {
  const feet = (squareFeet: number) => squareMetres(squareFeet * SQUARE_METRES_PER_SQUARE_FOOT)
  const alcove = ((41 + 15.5 + 15.5) * 5.25) / 144
  const minor = figuresIn('inch').number('lead.minor-area')

  it('baseboard off two alcoves of a room is 5.25 sq ft: under 6', () => {
    const area = disturbedArea({ trim: feet(2 * alcove), pieces: feet(0), earlier: feet(0) })
    expect(area / SQUARE_METRES_PER_SQUARE_FOOT).toBeCloseTo(5.25, 9)
    expect(area).toBeLessThanOrEqual(minor)
  })
  it('with 1.5 sq ft of an old mantel in the same month it is 6.75: the rule applies', () => {
    const area = disturbedArea({ trim: feet(2 * alcove), pieces: feet(1.5), earlier: feet(0) })
    expect(area / SQUARE_METRES_PER_SQUARE_FOOT).toBeCloseTo(6.75, 9)
    expect(area).toBeGreaterThan(minor)
  })
})

describe('tip-over (ASTM F2057-23, § 1.1, 1.2: units to be permanently fixed are outside it, so they have to be fixed; standards.iteh.ai)', () => {
  it('a box on a hollow wall without studs is not built in: the blocking has to be confirmed', () => {
    for (const kind of ['base', 'tall'] as const) {
      const plan = makePlan(inchAlcove.put(wallKind, 'a', 'hollow').put(boxKind, 'a', kind).job, 'quick')
      expect(plan.messages.filter((m) => m.code === 'C5' && m.weight === 'confirm').length, kind).toBeGreaterThan(0)
    }
  })
  it('the step that stands the boxes says so before doors go on', () => {
    const fit = makePlan(inchAlcove.job, 'quick').calendar.tasks.filter((t) => t.id.startsWith('F4'))
    expect(fit.flatMap((t) => t.cautions).join(' ')).toMatch(/fixed to studs or masonry before doors/)
  })
})
