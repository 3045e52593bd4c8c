import { formula } from '../../things/formula.ts'

/** How the load is held: handles, no handles but a good edge, or neither. */
export type Grip = 'good' | 'fair' | 'poor'

/** One lift, in kg, cm and degrees: hands out from the ankles, hands above the floor, travel up or down, twist of the body. */
export interface Lift {
  readonly handsOut: number
  readonly handsHeight: number
  readonly travel: number
  readonly twist: number
  readonly grip: Grip
  /** Multiplier for how often it is lifted; 1 = five minutes or more apart, for up to an hour. */
  readonly frequency: number
}

const LOAD_CONSTANT = 23
const NEAREST = 25
const FARTHEST = 63
const KNUCKLES = 75
const HIGHEST = 175
const LEAST_TRAVEL = 25
const MOST_TRAVEL = 175
const MOST_TWIST = 135

/**
 * Recommended weight limit of one lift, kg: 23 × HM × VM × DM × AM × FM × CM, metric equation.
 * Not for one-handed or seated lifts, tight spaces, unstable loads, or carrying more than a step or two.
 */
export const recommendedWeight = formula(
  {
    id: 'lift.recommended',
    plain:
      '23 × 25/H × (1 − 0.003 × |V − 75|) × (0.82 + 4.5/D) × (1 − 0.0032 × A) × frequency × grip; H, V, D in cm, A in degrees',
    source: 'Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021',
  },
  ({ handsOut, handsHeight, travel, twist, grip, frequency }: Lift): number => {
    const horizontal = handsOut > FARTHEST ? 0 : Math.min(1, NEAREST / handsOut)
    const vertical = handsHeight > HIGHEST ? 0 : 1 - 0.003 * Math.abs(handsHeight - KNUCKLES)
    const distance = travel > MOST_TRAVEL ? 0 : travel < LEAST_TRAVEL ? 1 : 0.82 + 4.5 / travel
    const asymmetry = twist > MOST_TWIST ? 0 : 1 - 0.0032 * twist
    return LOAD_CONSTANT * horizontal * vertical * distance * asymmetry * frequency * couplingOf(grip, handsHeight)
  },
)

function couplingOf(grip: Grip, handsHeight: number): number {
  if (grip === 'poor') return 0.9
  return grip === 'fair' && handsHeight < KNUCKLES ? 0.95 : 1
}

/** Lifting index: mass / recommended weight limit. Up to 1 most people lift it; over 3 nearly nobody should alone. */
export const liftingIndex = formula(
  {
    id: 'lift.index',
    plain: 'mass / recommended weight limit',
    source: 'Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021, p. 20',
  },
  ({ mass, lift }: { readonly mass: number; readonly lift: Lift }): number => {
    const limit = recommendedWeight(lift)
    return limit > 0 ? mass / limit : Number.POSITIVE_INFINITY
  },
)
