import type { Part } from '../../things/part.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { PieceByFire } from '../mantel/clearance.ts'
import type { BesideFire } from './beside-fire.ts'

/** A part that stands further out than the masonry face beside it. */
export interface StandingOut {
  readonly part: Part
  /** As the fire sees it: x from the breast's left edge. */
  readonly seen: PieceByFire
}

/** The parts of the bay beside a fire that stand out past the masonry face. */
export const standingOut = (here: BesideFire, parts: readonly Part[]): readonly StandingOut[] =>
  parts
    .filter((part) => part.bay === here.beside.bay.id && frontOf(part) > here.faceY)
    .map((part) => ({ part, seen: seenBy(here, part) }))

const frontOf = ({ placement }: Part): Length => sum(placement.y, placement.dy)

function seenBy({ breast, faceY }: BesideFire, part: Part): PieceByFire {
  const { x, z, dx, dz } = part.placement
  return {
    what: `${part.name} ${part.mark}`,
    at: { x: less(x, breast.originX), z, width: dx, height: dz },
    standsOut: less(frontOf(part), faceY),
  }
}
