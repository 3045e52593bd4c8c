import type { KindOfShelf, ShelfPlace } from '../../kinds/shelf/contract.ts'
import { formula } from '../../things/formula.ts'
import { inches, type Length, longest, over, ratio, shortest } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'

/** Figures of the thicknesses offered, thinnest first. */
export const OFFERED_THICKNESSES = [
  { id: 'shelf.thickness-1' },
  { id: 'shelf.thickness-2' },
  { id: 'shelf.thickness-3' },
  { id: 'shelf.thickness-4' },
] as const

/** Thicknesses offered, thinnest first. */
export const offeredThicknesses = ({ figures }: PlanContext): readonly Length[] =>
  OFFERED_THICKNESSES.map(({ id }) => figures.length(id))

/** Load on a shelf, Pa. */
export const shelfPressure = ({ figures }: PlanContext, load: 'books' | 'ornaments'): number =>
  figures.number(`load.${load}`)

/** Most a shelf of this front length may bend: L/300, never more than is seen. */
export const sagLimit = formula(
  {
    id: 'shelf.sag-limit',
    plain: 'the lesser of front length / 300 and the most that is not seen',
    source: 'common practice, no source',
    from: { front: { id: 'body.length' }, spanOver: { id: 'sag.shelf' }, seen: { id: 'shelf.sag-most' } },
  },
  (of: { readonly front: Length; readonly spanOver: number; readonly seen: Length }): Length =>
    shortest(over(of.front, of.spanOver), of.seen),
)

const limitFor = ({ figures }: PlanContext, front: Length): Length =>
  sagLimit({ front, spanOver: figures.number('sag.shelf'), seen: figures.length('shelf.sag-most') })

export interface CarriedShelf {
  readonly place: ShelfPlace
  readonly make: KindOfShelf
  readonly pressure: number
  /** Screws that hold the back cleat: those in studs or masonry. */
  readonly screws: number
}

export type Strength =
  | { readonly kind: 'spans'; readonly sag: Length; readonly limit: Length; readonly passes: boolean }
  | { readonly kind: 'hangs'; readonly pull: number; readonly holds: number; readonly passes: boolean }

/** Between two walls a shelf spans from side cleat to side cleat; with a free end it hangs on its back cleat. */
export function strengthOf(context: PlanContext, { place, make, pressure, screws }: CarriedShelf): Strength {
  if (place.left === 'wall' && place.right === 'wall') {
    const sag = make.kind.sag(place, make, pressure)
    const limit = limitFor(context, place.front)
    return { kind: 'spans', sag, limit, passes: sag <= limit }
  }
  const pull = make.kind.pull(place, make, pressure) / Math.max(1, screws)
  const holds = screwHolds(context)
  return { kind: 'hangs', pull, holds, passes: screws > 0 && pull <= holds }
}

/** 1 lbf = 4.448 221 615 260 5 N exactly (NIST SP 811, appendix B.8). */
const NEWTONS_PER_POUND_FORCE = 4.4482216152605

/** A force in pounds or newtons, up to the next whole one. */
export const forceWords = ({ figures }: PlanContext, newtons: number): string =>
  figures.units === 'inch' ? `${Math.ceil(newtons / NEWTONS_PER_POUND_FORCE)} lb` : `${Math.ceil(newtons)} N`

/** What one cleat screw holds against withdrawal from a spruce stud, N: 2850 · G² · D · length (lb, in). */
export const screwHolds = ({ figures }: PlanContext): number =>
  withdrawal({
    constant: figures.number('screw.withdrawal'),
    gravity: figures.number('gravity.spruce'),
    diameter: ratio(figures.length('screw.diameter-eight'), INCH),
    inWood: ratio(figures.length('screw.in-stud'), INCH),
  }) * NEWTONS_PER_POUND_FORCE

const INCH = inches(1)

/** Allowable withdrawal of a wood screw from side grain, lb. */
export const withdrawal = formula<{ constant: number; gravity: number; diameter: number; inWood: number }, number>(
  {
    id: 'screw.withdrawal-allowed',
    plain: '2850 × G² × diameter × length in the wood; pounds and inches',
    source: 'NDS, wood screws in withdrawal',
    gives: 'number',
    from: { constant: { id: 'screw.withdrawal' }, gravity: { id: 'gravity.spruce' } },
    units: { diameter: 'number', inWood: 'number' },
  },
  ({ constant, gravity, diameter, inWood }) => constant * gravity ** 2 * diameter * inWood,
)

/** The thinnest thickness offered that carries the load; the thickest when none does. */
export function thinnestThatCarries(
  context: PlanContext,
  carried: CarriedShelf,
): { readonly thickness: Length; readonly passes: boolean } {
  const offered = offeredThicknesses(context).filter((t) => t >= carried.make.kind.leastThickness(carried.make))
  const passing = offered.find((thickness) => strengthOf(context, withThickness(carried, thickness)).passes)
  const thickest = longest(carried.make.kind.leastThickness(carried.make), ...offered)
  return { thickness: passing ?? thickest, passes: passing !== undefined }
}

const withThickness = (carried: CarriedShelf, thickness: Length): CarriedShelf => ({
  ...carried,
  make: { ...carried.make, thickness },
})
