import { formula } from '../../things/formula.ts'
import type { Purchase } from '../../things/supplies.ts'
import { kilograms, type Mass } from '../../units/mass.ts'
import { roundMoney } from '../../units/money.ts'
import { litres, type Volume } from '../../units/volume.ts'
import type { PlanContext } from '../context.ts'
import { priceKnown } from '../price-known.ts'
import type { OldPiece } from './old-piece.ts'
import type { OldTrim } from './old-trim.ts'

/** What has to leave the house: loose volume, mass, and the bags or skips it goes in. */
export interface Waste {
  readonly volume: Volume
  readonly mass: Mass
  readonly bags: number
  /** Skips instead of bags, where there would be too many bags; else 0. */
  readonly skips: number
}

/** Loose volume in a bag or skip, litres: solid volume × bulking. */
export const looseVolume = formula<{ solid: Volume; bulking: number }, Volume>(
  {
    id: 'waste.volume',
    plain: 'solid volume of all that comes off × bulking',
    source: 'common practice, no source',
    gives: 'volume',
    units: { solid: 'volume', bulking: 'number' },
  },
  ({ solid, bulking }) => litres(solid * bulking),
)

/** Bags: by room or by mass, whichever asks for more, up to whole ones. */
export const wasteBags = formula<{ volume: Volume; mass: Mass; bag: number; bagMass: number }, number>(
  {
    id: 'waste.bags',
    plain: 'the larger of volume ÷ room of a bag and mass ÷ most mass of a bag, up',
    source: 'common practice, no source',
    gives: 'count',
    units: { mass: 'mass', bag: 'volume', bagMass: 'mass' },
  },
  ({ volume, mass, bag, bagMass }) => Math.max(0, Math.ceil(Math.max(volume / bag, mass / bagMass) - HAIR)),
)

/** Skips: volume over the room of one, up to whole ones. */
export const wasteSkips = formula<{ volume: Volume; skip: number }, number>(
  {
    id: 'waste.skips',
    plain: 'volume ÷ room of a skip, up',
    source: 'common practice, no source',
    gives: 'count',
    units: { skip: 'volume' },
  },
  ({ volume, skip }) => Math.ceil(volume / skip - HAIR),
)
const HAIR = 1e-9

/** Trim and pieces together, in bags, or in skips where the bags would be too many. */
export function wasteOf({ figures }: PlanContext, trim: OldTrim, pieces: readonly OldPiece[]): Waste {
  const solid = litres(trim.volume + pieces.reduce((l, p) => l + p.volume, 0))
  const mass = kilograms(trim.mass + pieces.reduce((kg, p) => kg + p.mass * p.quantity, 0))
  const volume = looseVolume({ solid, bulking: figures.number('waste.bulking') })
  const bags = wasteBags({ volume, mass, bag: figures.number('waste.bag'), bagMass: figures.number('waste.bag-mass') })
  if (bags <= figures.number('waste.bags-most')) return { volume, mass, bags, skips: 0 }
  return { volume, mass, bags, skips: wasteSkips({ volume, skip: figures.number('waste.skip') }) }
}

/** Getting rid of it: bags or skips, at invented prices. */
export function wastePurchases({ figures }: PlanContext, { bags, skips }: Waste): readonly Purchase[] {
  const inSkips = skips > 0
  const count = inSkips ? skips : bags
  return [
    {
      id: inSkips ? 'waste.skip' : 'waste.bag',
      item: inSkips ? 'skip for waste, hired and emptied' : 'rubble bags, with getting rid of them',
      use: 'what comes off the wall',
      shop: 'sundries',
      need: count,
      unit: 'piece',
      packSize: 1,
      packs: count,
      spare: '',
      priceEach: roundMoney(figures.number(inSkips ? 'price.skip' : 'price.waste-bag')),
      priceKnown: priceKnown(figures, inSkips ? 'price.skip' : 'price.waste-bag'),
      firstUsedBy: 'R4',
    },
  ]
}
