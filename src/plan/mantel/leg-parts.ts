import { legWidth, mantelThickness } from '../../job/chapters/mantel.ts'
import { within } from '../../things/formula.ts'
import type { Part, Placement } from '../../things/part.ts'
import { type Length, sum, ZERO } from '../../units/length.ts'
import { coreCount, coreLength, legHeight, legReturn, legRoughLength, legRoughReturn } from './leg-sums.ts'
import { bothLegs, type Leg, legId, type MantelLegs } from './mantel-legs.ts'
import type { MantelAt } from './mantel-parts.ts'
import { panelPiece, stickPiece } from './mantel-piece.ts'

/** The pieces of both legs, `M-E2` and `M-E3`: a front, two sides and core blocks; or a flat board packed out. */
export function legParts(at: MantelAt): readonly Part[] {
  const { legs } = at.size
  if (legs === undefined) return []
  return bothLegs(legs).flatMap((leg, i) =>
    within(legId(at.wall.bay.id, leg.side), () => partsOf({ ...at, legs, leg, number: i + FIRST_LEG })),
  )
}

/** The beam is the mantel's first thing, `E1`; its legs are the second and third. */
export const FIRST_LEG = 2

interface LegAt extends MantelAt {
  readonly legs: MantelLegs
  readonly leg: Leg
  readonly number: number
}

const partsOf = (at: LegAt): readonly Part[] =>
  at.leg.at.height <= 0
    ? []
    : [front(at), ...(at.legs.make === 'box' && at.legs.return > 0 ? [sides(at), ...cores(at)] : [])]

const assemblyOf = ({ wall, leg, legs, number, waitsFor }: LegAt) => ({
  wall,
  number,
  id: legId(wall.bay.id, leg.side),
  waitsFor: [...waitsFor, ...legs.waitsFor],
})

const roughLength = ({ context: { figures, cut }, leg }: LegAt): Length =>
  legRoughLength({ legHeight: leg.at.height, footLong: figures.length('leg.foot-long'), cut })

function front(at: LegAt): Part {
  const { context, size, leg, legs } = at
  const { show } = context
  const packed = legs.make === 'flat board' && legs.return > 0
  return panelPiece(assemblyOf(at), {
    piece: 'front',
    name: `mantel leg, ${leg.side}`,
    length: leg.at.height,
    width: legs.width,
    thickness: size.panel,
    roughLength: roughLength(at),
    leaveLong: `foot, cut to the ${leg.foot} on site`,
    shows: 'front face and both edges',
    details: [
      `Outer edge under the end of the frieze; stands ${show.withUnit(legs.standsOut)} out of the face, on the ${leg.foot}.`,
      ...(straddles(at)
        ? ['Its foot reaches over the hearth’s edge: scribed over it where the stone stands higher.']
        : []),
      ...(packed ? [`Packed out ${show.withUnit(legs.return)} from the face with strips that do not burn.`] : []),
      `Anchored into the masonry’s bricks, none in joints; the long edges scribed or closed with caulk.`,
    ],
    coat: { surface: 'built-in', faces: 1 },
    placement: inLeg(at, { dx: legs.width, dy: size.panel, fromFace: legs.return, dz: leg.at.height }),
    from: { length: legHeight, width: legWidth, thickness: mantelThickness, roughLength: legRoughLength },
  })
}

/** Part of the leg stands on the stone, part beyond it. */
const straddles = ({ leg, legs }: LegAt): boolean => leg.offHearth.side > 0 && leg.offHearth.side < legs.width

function sides(at: LegAt): Part {
  const { context, size, leg, legs } = at
  const { figures, cut } = context
  return panelPiece(assemblyOf(at), {
    piece: 'side',
    name: `mantel leg side, ${leg.side}`,
    quantity: 2,
    length: leg.at.height,
    width: legs.return,
    thickness: size.panel,
    roughLength: roughLength(at),
    roughWidth: legRoughReturn({ legReturn: legs.return, backScribe: figures.length('back.scribe'), cut }),
    leaveLong: `foot, cut to the ${leg.foot} on site; back edge, scribed to the face`,
    shows: 'outer face',
    details: ['Behind the front board, flush with its edges, glued.'],
    coat: { surface: 'built-in', faces: 1 },
    placement: inLeg(at, { dx: size.panel, dy: legs.return, fromFace: ZERO, dz: leg.at.height }),
    from: { length: legHeight, width: legReturn, roughLength: legRoughLength, roughWidth: legRoughReturn },
  })
}

function cores(at: LegAt): readonly Part[] {
  const { context, size, leg, legs } = at
  const { figures, cut, show } = context
  const length = coreLength({ legWidth: legs.width, mantelThickness: size.panel, cut })
  if (length < figures.length('leg.core-least')) return []
  const pitch = figures.length('leg.block-pitch')
  const height = figures.length('leg.block-height')
  return [
    stickPiece(assemblyOf(at), {
      piece: 'core',
      name: `mantel leg core block, ${leg.side}`,
      quantity: coreCount({ legHeight: leg.at.height, blockPitch: pitch }),
      length,
      width: height,
      thickness: legs.return,
      section: { width: height, thickness: legs.return },
      details: [
        `Anchored to the face, the first and the last ${show.withUnit(height)} from foot and head, one every ${show.withUnit(pitch)} or less; the leg slides over them and is pinned.`,
      ],
      placement: {
        ...inLeg(at, { dx: length, dy: legs.return, fromFace: ZERO, dz: height }),
        x: sum(at.wall.originX, leg.at.x, size.panel),
      },
      from: { length: coreLength, width: { id: 'leg.block-height' }, thickness: legReturn },
    }),
  ]
}

function inLeg(
  { wall, leg }: LegAt,
  of: { readonly dx: Length; readonly dy: Length; readonly dz: Length; readonly fromFace: Length },
): Placement {
  return {
    x: sum(wall.originX, leg.at.x),
    y: sum(wall.projection, of.fromFace),
    z: leg.at.z,
    dx: of.dx,
    dy: of.dy,
    dz: of.dz,
  }
}
