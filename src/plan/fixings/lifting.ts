import { formula } from '../../things/formula.ts'
import type { UnitSystem } from '../../units/show-length.ts'

/** How the load is held: handles, no handles but a good edge, or neither. */
export type Grip = 'good' | 'fair' | 'poor'

/**
 * One lift: hands out from the ankles, hands above the floor, travel up or down, twist of the body in degrees.
 * Lengths in cm and masses in kg; in inches and pounds for the equation's own US form.
 */
export interface Lift {
  readonly handsOut: number
  readonly handsHeight: number
  readonly travel: number
  readonly twist: number
  readonly grip: Grip
  /** Multiplier for how often it is lifted; 1 = five minutes or more apart, for up to an hour. */
  readonly frequency: number
  /** The equation is printed twice, and the two are not exact conversions: metric where nothing is said. */
  readonly system?: UnitSystem
}

/** What differs between the two printed forms of the equation; lengths in cm or in, the load in kg or lb. */
interface Printed {
  readonly load: number
  readonly nearest: number
  readonly farthest: number
  readonly knuckles: number
  readonly highest: number
  readonly heightFactor: number
  readonly leastTravel: number
  readonly mostTravel: number
  readonly travelShare: number
}

const PRINTED: Readonly<Record<UnitSystem, Printed>> = {
  metric: {
    load: 23,
    nearest: 25,
    farthest: 63,
    knuckles: 75,
    highest: 175,
    heightFactor: 0.003,
    leastTravel: 25,
    mostTravel: 175,
    travelShare: 4.5,
  },
  inch: {
    load: 51,
    nearest: 10,
    farthest: 25,
    knuckles: 30,
    highest: 70,
    heightFactor: 0.0075,
    leastTravel: 10,
    mostTravel: 70,
    travelShare: 1.8,
  },
}
const MOST_TWIST = 135

/**
 * Recommended weight limit of one lift: load constant × HM × VM × DM × AM × FM × CM; kg in the metric form, lb in the US one.
 * Not for one-handed or seated lifts, tight spaces, unstable loads, or carrying more than a step or two.
 */
export const recommendedWeight = formula(
  {
    id: 'lift.recommended',
    plain:
      '23 kg × 25/H × (1 − 0.003 × |V − 75|) × (0.82 + 4.5/D) × (1 − 0.0032 × A) × frequency × grip, H, V, D in cm; or 51 lb × 10/H × (1 − 0.0075 × |V − 30|) × (0.82 + 1.8/D) × …, in inches; A in degrees',
    source: 'Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021',
    gives: 'mass',
    units: { handsOut: 'number', handsHeight: 'number', travel: 'number', twist: 'number', frequency: 'number' },
  },
  ({ handsOut, handsHeight, travel, twist, grip, frequency, system = 'metric' }: Lift): number => {
    const f = PRINTED[system]
    const horizontal = handsOut > f.farthest ? 0 : Math.min(1, f.nearest / handsOut)
    const vertical = handsHeight > f.highest ? 0 : 1 - f.heightFactor * Math.abs(handsHeight - f.knuckles)
    const distance = travel > f.mostTravel ? 0 : travel < f.leastTravel ? 1 : 0.82 + f.travelShare / travel
    const asymmetry = twist > MOST_TWIST ? 0 : 1 - 0.0032 * twist
    const coupling = couplingOf(grip, handsHeight < f.knuckles ? 'low' : 'high')
    return f.load * horizontal * vertical * distance * asymmetry * frequency * coupling
  },
)

function couplingOf(grip: Grip, hands: 'low' | 'high'): number {
  if (grip === 'poor') return 0.9
  return grip === 'fair' && hands === 'low' ? 0.95 : 1
}

/** Lifting index: mass / recommended weight limit. Up to 1 most people lift it; over 3 nearly nobody should alone. */
export const liftingIndex = formula(
  {
    id: 'lift.index',
    plain: 'mass / recommended weight limit',
    source: 'Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021, p. 20',
    gives: 'number',
    units: { mass: 'mass' },
  },
  ({ mass, lift }: { readonly mass: number; readonly lift: Lift }): number => {
    const limit = recommendedWeight(lift)
    return limit > 0 ? mass / limit : Number.POSITIVE_INFINITY
  },
)
