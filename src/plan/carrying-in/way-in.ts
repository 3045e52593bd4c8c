import { type Corner, longestRoundCorner } from '../../geometry/round-corner.ts'
import { type Rectangle, throughOpening } from '../../geometry/through-opening.ts'
import { hallway, narrowTurn, smallestDoor } from '../../job/chapters/carrying.ts'
import { formula } from '../../things/formula.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'

/** What a piece is carried through: each only where somebody measured it, with play on both sides taken off. */
export interface WayIn {
  readonly door: Rectangle | undefined
  readonly turn: Corner | undefined
  readonly hall: Rectangle | undefined
}

/** Room a piece has in a door, hallway or turn: the measured width less play at each side. */
export const clearWay = formula<{ measured: Length; play: Length }, Length>(
  {
    id: 'carry.clear-way',
    plain: 'measured width − play each side',
    source: 'common practice, no source',
    from: { measured: [smallestDoor, narrowTurn, hallway], play: { id: 'carry.door-clear' } },
  },
  ({ measured, play }) => less(measured, times(play, 2)),
)

/** The way in as it was measured. */
export function wayIn({ settle, figures }: PlanContext): WayIn {
  const play = figures.length('carry.door-clear')
  const pair = (field: typeof smallestDoor): readonly [Length, Length] | undefined => {
    const [a, b] = settle.asked(field, undefined) ?? []
    return a === undefined || b === undefined
      ? undefined
      : [clearWay({ measured: a, play }), clearWay({ measured: b, play })]
  }
  const [door, turn, hall] = [pair(smallestDoor), pair(narrowTurn), pair(hallway)]
  return {
    door: door === undefined ? undefined : { width: door[0], height: door[1] },
    turn: turn === undefined ? undefined : { first: turn[0], second: turn[1] },
    hall: hall === undefined ? undefined : { width: hall[0], height: hall[1] },
  }
}

/** Outside of a piece as it is carried, longest side first. */
export type Sides = readonly [long: Length, middle: Length, short: Length]

export type Passing = 'straight' | 'tipped' | 'round the corner' | 'not'

/** How a rigid piece comes in: straight, tipped, round the corner, or not at all; the worst place decides. */
export const passing = formula<{ sides: Sides; way: WayIn }, Passing>(
  {
    id: 'carry.passing',
    plain:
      'its end through door and hallway, straight or tipped; round a corner its length as it lies, stands on edge or on end: length ≤ (first · cos a + second · sin a − thickness) ÷ (sin a · cos a) for every angle a',
    source: 'geometry',
  },
  ({ sides, way }) => howItComesIn(sides, way),
)

function howItComesIn(sides: Sides, way: WayIn): Passing {
  const [, middle, short] = sides
  const end = { width: short, height: middle }
  const through = [way.door, way.hall].map((gap) => (gap === undefined ? 'straight' : throughOpening(end, gap)))
  if (through.includes('not')) return 'not'
  if (way.turn !== undefined && !turns(sides, way, way.turn)) return 'not'
  if (through.includes('tilted')) return 'tipped'
  return way.turn === undefined ? 'straight' : 'round the corner'
}

/** Whether one of the three ways to hold it goes round: seen from above it is a rectangle, the third side stands up. */
function turns([long, middle, short]: Sides, { hall }: WayIn, turn: Corner): boolean {
  const onEdge = [long, short, middle] as const
  const flat = [long, middle, short] as const
  const onEnd = [middle, short, long] as const
  // Where nobody measured the ceiling a piece is not stood on end.
  const held = hall === undefined ? [onEdge, flat] : [onEdge, flat, onEnd]
  return held.some(
    ([along, across, upright]) =>
      (hall === undefined || upright <= hall.height) &&
      (along <= longestRoundCorner(turn, across) || slidesRound(turn, along, across)),
  )
}

/** Without turning: lengthways out of one way, sideways into the other. */
const slidesRound = ({ first, second }: Corner, along: Length, across: Length): boolean =>
  (across <= first && along <= second) || (across <= second && along <= first)

/** The largest one side may be for the piece to come in, the other two as they are; down to the cut step, 0 when none does. */
export function largestSide(context: PlanContext, sides: Sides, which: 0 | 1 | 2, way: WayIn): Length {
  const { cut } = context
  const passes = (size: Length): boolean =>
    howItComesIn(longestFirst(...([0, 1, 2] as const).map((i) => (i === which ? size : sides[i]))), way) !== 'not'
  const search = (low: Length, high: Length): Length => {
    const half = cut.down(over(sum(low, high), 2))
    if (half <= low || half >= high) return low
    return passes(half) ? search(half, high) : search(low, half)
  }
  return passes(cut.step) ? search(cut.step, sides[which]) : ZERO
}

/** The three outer sizes of a piece, the longest first. */
export function longestFirst(...sizes: readonly Length[]): Sides {
  const [long = ZERO, middle = ZERO, short = ZERO] = sizes.toSorted((a, b) => b - a)
  return [long, middle, short]
}
