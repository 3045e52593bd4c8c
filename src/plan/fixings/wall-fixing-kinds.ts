import type { Length } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import type { WallFixing } from '../survey/survey.ts'
import { along } from './along.ts'

/** What a kind of wall answers wherever something is fixed to it. */
export interface WallHold {
  readonly fastener: 'screw' | 'anchor'
  /** Centres of what holds a screw, from the bay's left end. */
  readonly studs: readonly Length[]
  /** Whether it holds at any place. */
  readonly anywhere: boolean
}

/** How a wall holds. Every kind of wall is here and nowhere else. */
export function wallHold(fixing: WallFixing): WallHold {
  switch (fixing.kind) {
    case 'studs':
      return { fastener: 'screw', studs: fixing.centres, anywhere: false }
    case 'masonry':
      return { fastener: 'anchor', studs: [], anywhere: true }
    case 'hollow':
      return { fastener: 'screw', studs: [], anywhere: false }
  }
}

/** A piece along the back wall, in the bay's own x. */
export interface AlongBack {
  readonly from: Length
  readonly to: Length
}

/** Fasteners of one piece: how many go in, how many of them hold, and whether the wall holds it at two places. */
export interface Held {
  readonly bought: number
  /** Only what stands in a stud or in masonry carries. */
  readonly holding: number
  readonly atTwoPlaces: boolean
}

const studsIn = ({ studs }: WallHold, { from, to }: AlongBack): number =>
  studs.filter((centre) => centre >= from && centre <= to).length

/** Fewest fasteners of a piece at the wall, or it turns. */
const LEAST = 2

/** A back cleat: a row of anchors along it; or at each stud one screw, two in a high cleat, two in all at least. */
export function backCleatHeld(
  { figures }: PlanContext,
  fixing: WallFixing,
  cleat: AlongBack & { readonly length: Length; readonly height: Length },
): Held {
  const hold = wallHold(fixing)
  if (hold.anywhere) {
    const row = cleatRow({ figures }, cleat.length)
    return { bought: row, holding: row, atTwoPlaces: true }
  }
  const studs = studsIn(hold, cleat)
  const holding = studs * (cleat.height >= figures.length('cleat.two-screws') ? 2 : 1)
  return { bought: Math.max(LEAST, holding), holding, atTwoPlaces: studs >= 2 }
}

/** A cleat on a return: a row along it. */
export const cleatRow = ({ figures }: Pick<PlanContext, 'figures'>, length: Length): number =>
  along({ length, end: figures.length('screw.cleat-end'), pitch: figures.length('screw.top-pitch') })

/** One nailer of a box: a row of anchors over the box's width, or two screws at each stud behind it. */
export function nailerHeld(
  { figures }: PlanContext,
  fixing: WallFixing,
  box: AlongBack & { readonly width: Length },
): Held & { readonly studs: number } {
  const hold = wallHold(fixing)
  const studs = studsIn(hold, box)
  if (hold.anywhere) {
    const [end, pitch] = [figures.length('screw.top-end'), figures.length('screw.anchor-pitch')]
    const row = along({ length: box.width, end, pitch })
    return { bought: row, holding: row, atTwoPlaces: true, studs }
  }
  return { bought: Math.max(LEAST, 2 * studs), holding: 2 * studs, atTwoPlaces: studs >= 2, studs }
}
