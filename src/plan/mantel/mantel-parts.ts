import type { QuestionKey } from '../../things/field.ts'
import type { Coat, CutOut, Part } from '../../things/part.ts'
import { type Length, less, longest, shortest, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { fromLevelLine } from '../level-line.ts'
import { mdf, softwood } from '../materials.ts'
import type { BreastWall } from '../survey/survey.ts'
import type { MantelSize } from './mantel-size.ts'

export interface MantelAt {
  readonly context: PlanContext
  readonly wall: BreastWall
  readonly size: MantelSize
  /** A cable hole through the top, when there is one. */
  readonly hole: CutOut | undefined
  /** What the hole's place still waits for: the screen's. */
  readonly holeWaits: readonly QuestionKey[]
  readonly waitsFor: readonly QuestionKey[]
}

/** Least depth and frieze a mantel of this panel can be built with: a ledger on the wall, blocks, and a board before them. */
export const leastMantel = (
  { figures }: PlanContext,
  panel: Length,
): { readonly depth: Length; readonly frieze: Length } => ({
  depth: sum(panel, figures.length('mantel.ledger-thick'), figures.length('mantel.over-front')),
  frieze: sum(panel, figures.length('mantel.ledger-thick')),
})

/** All pieces of a mantel: one glued thing, `M-E1`, and the ledger and blocks that hold it. */
export const mantelParts = (at: MantelAt): readonly Part[] => [
  ...topLayers(at),
  frieze(at),
  ends(at),
  soffit(at),
  ledger(at),
  ...blocks(at),
]

/** Height of the ledger: under the top, over the soffit. */
const ledgerHeight = ({ context, size }: MantelAt): Length =>
  shortest(less(size.frieze, size.panel), context.figures.length('mantel.ledger-most'))

/** The layers are coated as one slab: its two faces on the outer layers, its edges on every layer. */
function topLayers(at: MantelAt): readonly Part[] {
  const { size } = at
  const outer = size.layers === 1 ? layer(at, 1, 2) : layer(at, 2, 1)
  return size.layers > 2 ? [outer, { ...layer(at, size.layers - 2, 0), id: `${outer.id}-inner` }] : [outer]
}

function layer(at: MantelAt, quantity: number, faces: Coat['faces']): Part {
  const { context, wall, size, hole, holeWaits, waitsFor } = at
  const { figures, cut } = context
  return {
    ...pieceOf(at, {
      piece: 'top',
      name: 'mantel top layer',
      length: size.length,
      width: size.depth,
      thickness: size.panel,
    }),
    quantity,
    roughLength: cut.up(sum(size.length, figures.length('top.long'))),
    roughWidth: cut.up(sum(size.depth, figures.length('back.scribe'))),
    leaveLong: 'length and back edge, trimmed after glue-up and scribed to the face',
    shows: 'top, front and both ends',
    details: [
      `Glue ${size.layers} ${size.layers === 1 ? 'layer' : 'layers'} to one slab, edges flush after glue-up; coat it as one piece on both faces.`,
    ],
    cutOuts: hole === undefined ? [] : [hole],
    waitsFor: hole === undefined ? waitsFor : [...waitsFor, ...holeWaits],
    coat: { surface: 'built-in', faces },
    placement: {
      x: sum(wall.originX, size.x),
      y: wall.projection,
      z: sum(size.underside, size.frieze),
      dx: size.length,
      dy: size.depth,
      dz: times(size.panel, size.layers),
    },
  }
}

const frieze = (at: MantelAt): Part => ({
  ...pieceOf(at, {
    piece: 'frieze',
    name: 'mantel frieze',
    length: at.size.beamLength,
    width: at.size.frieze,
    thickness: at.size.panel,
  }),
  shows: 'front face and lower edge',
  details: ['In front of the ends and the soffit.'],
  coat: { surface: 'built-in', faces: 1 },
  placement: beamBox(at, { fromFront: ZERO, dy: at.size.panel, dz: at.size.frieze, dx: at.size.beamLength }),
})

const ends = (at: MantelAt): Part => {
  const depth = less(at.size.beamDepth, at.size.panel)
  return {
    ...pieceOf(at, {
      piece: 'end',
      name: 'mantel end',
      length: depth,
      width: at.size.frieze,
      thickness: at.size.panel,
    }),
    quantity: 2,
    shows: 'outer face',
    details: ['Its back edge dies on the face: scribe it, or close it with caulk.'],
    coat: { surface: 'built-in', faces: 1 },
    placement: beamBox(at, { fromFront: at.size.panel, dy: depth, dz: at.size.frieze, dx: at.size.panel }),
  }
}

const soffit = (at: MantelAt): Part => {
  const length = less(at.size.beamLength, times(at.size.panel, 2))
  const depth = less(at.size.beamDepth, at.size.panel)
  return {
    ...pieceOf(at, { piece: 'soffit', name: 'mantel soffit', length, width: depth, thickness: at.size.panel }),
    shows: 'lower face',
    details: ['Between the ends, behind the frieze, flush with their lower edges.'],
    coat: { surface: 'built-in', faces: 1 },
    placement: {
      ...beamBox(at, { fromFront: at.size.panel, dy: depth, dz: at.size.panel, dx: length }),
      x: sum(at.wall.originX, at.size.beamX, at.size.panel),
    },
  }
}

function ledger(at: MantelAt): Part {
  const { context, wall, size } = at
  const length = ledgerLength(at)
  const width = ledgerHeight(at)
  const thickness = context.figures.length('mantel.ledger-thick')
  return {
    ...pieceOf(at, { piece: 'ledger', name: 'mantel ledger', length, width, thickness }),
    material: softwood(width, thickness),
    grain: 'length',
    details: [
      `Screwed to the breast, level, its upper edge ${context.show.length(sum(size.underside, size.frieze))} above the highest floor point (${fromLevelLine(context, sum(size.underside, size.frieze))}).`,
      'Masonry: anchors by their maker’s published load, halved; none in joints, none over the flue.',
    ],
    placement: {
      x: sum(wall.originX, size.beamX, size.panel, context.figures.length('mantel.ledger-ease')),
      y: wall.projection,
      z: less(sum(size.underside, size.frieze), width),
      dx: length,
      dy: thickness,
      dz: width,
    },
  }
}

const ledgerLength = ({ context, size }: MantelAt): Length =>
  context.cut.down(less(size.beamLength, times(size.panel, 2), context.figures.length('mantel.ledger-ease')))

function blocks(at: MantelAt): readonly Part[] {
  const { context, size } = at
  const { figures } = context
  const thickness = figures.length('mantel.ledger-thick')
  const length = less(size.beamDepth, size.panel, thickness)
  if (length <= 0) return []
  const width = ledgerHeight(at)
  const rail = ledger(at)
  return [
    {
      ...pieceOf(at, { piece: 'block', name: 'mantel block', length, width, thickness }),
      quantity: Math.max(2, Math.ceil(longest(rail.length, ZERO) / figures.length('mantel.block-pitch'))),
      material: softwood(width, thickness),
      grain: 'length',
      details: [
        `Glued and screwed behind the frieze, one every ${context.show.withUnit(figures.length('mantel.block-pitch'))} or less; they meet the ledger.`,
      ],
      placement: { ...rail.placement, y: sum(rail.placement.y, thickness), dx: thickness, dy: length },
    },
  ]
}

interface Piece {
  readonly piece: string
  readonly name: string
  readonly length: Length
  readonly width: Length
  readonly thickness: Length
}

/** What all pieces share: cut to size from the mantel's panel, nothing left long. */
function pieceOf({ wall, waitsFor }: MantelAt, piece: Piece): Omit<Part, 'placement'> {
  return {
    ...piece,
    id: `${wall.bay.id}/mantel/${piece.piece}`,
    mark: `${wall.bay.letter}-E1`,
    bay: wall.bay.id,
    goesTo: `${wall.bay.name}, mantel`,
    quantity: 1,
    roughLength: piece.length,
    roughWidth: piece.width,
    leaveLong: '',
    material: mdf(piece.thickness),
    grain: 'none',
    shows: '',
    details: [],
    cutOuts: [],
    supply: 'made',
    waitsFor,
  }
}

const beamBox = (
  { wall, size }: MantelAt,
  of: { readonly fromFront: Length; readonly dx: Length; readonly dy: Length; readonly dz: Length },
) => ({
  x: sum(wall.originX, size.beamX),
  y: less(sum(wall.projection, size.beamDepth), of.fromFront, of.dy),
  z: size.underside,
  dx: of.dx,
  dy: of.dy,
  dz: of.dz,
})
