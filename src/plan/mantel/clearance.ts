import { type FaceRectangle, separationOf, topOf } from '../../geometry/face-rectangle.ts'
import { rootDown, squaredDistance, type WoodPiece, type WoodRule } from '../../kinds/fuel/wood-rule.ts'
import { messageKind } from '../../things/message.ts'
import { type Length, less, longest, nanometres, sum } from '../../units/length.ts'

/** A piece of wood as the fire sees it: in the plane of the breast's face, and how far it stands out of it. */
export interface PieceByFire {
  readonly what: string
  readonly at: FaceRectangle
  readonly standsOut: Length
}

/** A piece a rule stops, with the rule that leaves it least. */
export interface TooClose {
  readonly piece: PieceByFire
  readonly rule: WoodRule
  readonly distance: Length
  readonly mostOut: Length | 'none'
}

export const woodTooClose = messageKind<{
  piece: string
  out: string
  distance: string
  most: string
  rule: string
  nearest: string
}>({
  code: 'S14',
  weight: 'stop',
  source:
    'the code chosen or the appliance’s manual, as named in the message; local code, the appliance manual and licensed practice govern',
  says: (v) => ({
    short: `The ${v.piece} stands out ${v.out}, ${v.distance} from the opening; allowed there: ${v.most}.`,
    why: `Wood near a fire chars and catches. Rule: ${v.rule}.`,
    todo: v.nearest,
  }),
})

/** The pieces some rule stops, each with the rule that allows it least. */
export const piecesTooClose = (
  opening: FaceRectangle,
  pieces: readonly PieceByFire[],
  rules: readonly WoodRule[],
): readonly TooClose[] =>
  pieces.flatMap((piece) => {
    const near = woodPiece(opening, piece)
    const [worst] = rules
      .filter((rule) => !rule.allows(near))
      .map((rule) => ({ rule, mostOut: limitOf(rule, near) }))
      .toSorted((a, b) => rank(a.mostOut) - rank(b.mostOut))
    return worst === undefined
      ? []
      : [{ piece, ...worst, distance: nanometres(Number(rootDown(squaredDistance(near)))) }]
  })

/** The lowest underside at which every piece passes every rule; pieces are given as they stand at `underside`. */
export function lowestUnderside(
  opening: FaceRectangle,
  at: { readonly underside: Length; readonly pieces: readonly PieceByFire[] },
  rules: readonly WoodRule[],
): Length | undefined {
  const needed = at.pieces.flatMap((piece) =>
    rules.map((rule) => {
      const above = rule.leastAbove(woodPiece(opening, piece))
      return above === undefined ? undefined : less(sum(topOf(opening), above), less(piece.at.z, at.underside))
    }),
  )
  const known = needed.filter((z) => z !== undefined)
  return known.length < needed.length ? undefined : longest(topOf(opening), ...known)
}

const woodPiece = (opening: FaceRectangle, piece: PieceByFire): WoodPiece => ({
  ...separationOf(opening, piece.at),
  standsOut: piece.standsOut,
})

/** A rule that stops a piece has a limit: "any" cannot come from it. */
function limitOf(rule: WoodRule, near: WoodPiece): Length | 'none' {
  const most = rule.mostOut(near)
  return most === 'any' ? 'none' : most
}

const rank = (most: Length | 'none'): number => (most === 'none' ? -1 : most)
