import { mantelDepth, mantelFrieze, mantelLength } from '../../job/chapters/mantel.ts'
import type { QuestionKey } from '../../things/field.ts'
import { within } from '../../things/formula.ts'
import type { Coat, CutOut, Part } from '../../things/part.ts'
import { type Length, less, over, sum, times, ZERO } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { fromLevelLine } from '../level-line.ts'
import type { BreastWall } from '../survey/survey.ts'
import { legParts } from './leg-parts.ts'
import { panelPiece, stickPiece } from './mantel-piece.ts'
import type { MantelSize } from './mantel-size.ts'
import {
  beamLength,
  behindFrieze,
  blockCount,
  blockLength,
  firstBlock,
  ledgerHeight,
  ledgerLength,
  soffitLength,
  topRoughDepth,
  topRoughLength,
} from './mantel-sums.ts'

export interface MantelAt {
  readonly context: PlanContext
  readonly wall: BreastWall
  readonly size: MantelSize
  /** Cable holes through the top and through an end, when there are any. */
  readonly holes: { readonly top: readonly CutOut[]; readonly end: readonly CutOut[] }
  /** What the holes' places still wait for: the screen's. */
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

/** All pieces of a mantel: one glued beam, `M-E1`, the ledger and blocks that hold it, and its legs. */
export const mantelParts = (at: MantelAt): readonly Part[] => [
  ...within(`${at.wall.bay.id}/mantel`, () =>
    [...topLayers(at), frieze(at), ...ends(at), soffit(at), ledger(at), ...blocks(at)].filter(hasSize),
  ),
  ...legParts(at),
]

/** A mantel below the least that can be built is stopped; a piece that nothing is left of is not in the cut list. */
const hasSize = ({ length, width, thickness }: Part): boolean => length > 0 && width > 0 && thickness > 0

const beamOf = ({ wall, waitsFor }: MantelAt) => ({ wall, waitsFor, number: 1, id: `${wall.bay.id}/mantel` })

/** The layers are coated as one slab: its two faces on the outer layers, its edges on every layer. */
function topLayers(at: MantelAt): readonly Part[] {
  const { size } = at
  const outer = size.layers === 1 ? layer(at, 1, 2) : layer(at, 2, 1)
  return size.layers > 2 ? [outer, { ...layer(at, size.layers - 2, 0), id: `${outer.id}-inner` }] : [outer]
}

function layer(at: MantelAt, quantity: number, faces: Coat['faces']): Part {
  const { context, wall, size, holes, holeWaits } = at
  const { figures, cut } = context
  const part = panelPiece(beamOf(at), {
    piece: 'top',
    name: 'mantel top layer',
    quantity,
    length: size.length,
    width: size.depth,
    thickness: size.panel,
    roughLength: topRoughLength({ mantelLength: size.length, topLong: figures.length('top.long'), cut }),
    roughWidth: topRoughDepth({ mantelDepth: size.depth, backScribe: figures.length('back.scribe'), cut }),
    leaveLong: 'length and back edge, trimmed after glue-up and scribed to the face',
    shows: 'top, front and both ends',
    details: [
      `Glue ${size.layers} ${size.layers === 1 ? 'layer' : 'layers'} to one slab, edges flush after glue-up; coat it as one piece on both faces.`,
    ],
    coat: { surface: 'built-in', faces },
    placement: {
      x: sum(wall.originX, size.x),
      y: wall.projection,
      z: sum(size.underside, size.frieze),
      dx: size.length,
      dy: size.depth,
      dz: times(size.panel, size.layers),
    },
    from: { length: mantelLength, width: mantelDepth, roughLength: topRoughLength, roughWidth: topRoughDepth },
  })
  return holed(part, holes.top, holeWaits)
}

const holed = (part: Part, holes: readonly CutOut[], waits: readonly QuestionKey[]): Part =>
  holes.length === 0 ? part : { ...part, cutOuts: holes, waitsFor: [...part.waitsFor, ...waits] }

const frieze = (at: MantelAt): Part =>
  panelPiece(beamOf(at), {
    piece: 'frieze',
    name: 'mantel frieze',
    length: at.size.beamLength,
    width: at.size.frieze,
    thickness: at.size.panel,
    shows: 'front face and lower edge',
    details: ['In front of the ends and the soffit.'],
    coat: { surface: 'built-in', faces: 1 },
    placement: beamBox(at, { fromFront: ZERO, dy: at.size.panel, dz: at.size.frieze, dx: at.size.beamLength }),
    from: { length: beamLength, width: mantelFrieze },
  })

const behind = ({ size }: MantelAt): Length => behindFrieze({ beamDepth: size.beamDepth, mantelThickness: size.panel })

/** Two alike, or one of them with the cable's hole. */
const ends = (at: MantelAt): readonly Part[] => {
  const depth = behind(at)
  const part = panelPiece(beamOf(at), {
    piece: 'end',
    name: 'mantel end',
    quantity: 2,
    length: depth,
    width: at.size.frieze,
    thickness: at.size.panel,
    shows: 'outer face',
    details: ['Its back edge dies on the face: scribe it, or close it with caulk.'],
    coat: { surface: 'built-in', faces: 1 },
    placement: beamBox(at, { fromFront: at.size.panel, dy: depth, dz: at.size.frieze, dx: at.size.panel }),
    from: { length: behindFrieze, width: mantelFrieze },
  })
  if (at.holes.end.length === 0) return [part]
  const cabled = { ...part, id: `${part.id}-cable`, quantity: 1 }
  return [{ ...part, quantity: 1 }, holed(cabled, at.holes.end, at.holeWaits)]
}

const soffit = (at: MantelAt): Part => {
  const length = soffitLength({ beamLength: at.size.beamLength, mantelThickness: at.size.panel })
  const depth = behind(at)
  return panelPiece(beamOf(at), {
    piece: 'soffit',
    name: 'mantel soffit',
    length,
    width: depth,
    thickness: at.size.panel,
    shows: 'lower face',
    details: ['Between the ends, behind the frieze, flush with their lower edges.'],
    coat: { surface: 'built-in', faces: 1 },
    placement: {
      ...beamBox(at, { fromFront: at.size.panel, dy: depth, dz: at.size.panel, dx: length }),
      x: sum(at.wall.originX, at.size.beamX, at.size.panel),
    },
    from: { length: soffitLength, width: behindFrieze },
  })
}

/** What ledger and blocks share: their height under the top, their thickness, and the ledger's length. */
const carrying = ({ context: { figures, cut }, size }: MantelAt) => ({
  length: ledgerLength({
    beamLength: size.beamLength,
    mantelThickness: size.panel,
    ledgerEase: figures.length('mantel.ledger-ease'),
    cut,
  }),
  height: ledgerHeight({
    mantelFrieze: size.frieze,
    mantelThickness: size.panel,
    ledgerMost: figures.length('mantel.ledger-most'),
  }),
  thick: figures.length('mantel.ledger-thick'),
})

function ledger(at: MantelAt): Part {
  const { context, wall, size } = at
  const { length, height, thick } = carrying(at)
  const top = sum(size.underside, size.frieze)
  return stickPiece(beamOf(at), {
    piece: 'ledger',
    name: 'mantel ledger',
    length,
    width: height,
    thickness: thick,
    section: { width: height, thickness: thick },
    details: [
      `Screwed to the breast, level, its upper edge ${context.show.length(top)} above the highest floor point (${fromLevelLine(context, top)}).`,
      'Masonry: anchors by their maker’s published load, halved; none in joints, none over the flue.',
    ],
    placement: {
      x: sum(wall.originX, size.beamX, size.panel, over(context.figures.length('mantel.ledger-ease'), 2)),
      y: wall.projection,
      z: less(top, height),
      dx: length,
      dy: thick,
      dz: height,
    },
    from: { length: ledgerLength, width: ledgerHeight },
  })
}

function blocks(at: MantelAt): readonly Part[] {
  const { context, size } = at
  const { figures, show, cut } = context
  const { length: along, height, thick } = carrying(at)
  const length = blockLength({ beamDepth: size.beamDepth, mantelThickness: size.panel, ledgerThick: thick })
  if (length <= 0 || along <= 0) return []
  const quantity = blockCount({ ledgerLength: along, blockPitch: figures.length('mantel.block-pitch') })
  const first = firstBlock({ ledgerLength: along, blocks: quantity })
  const rail = ledger(at).placement
  return [
    stickPiece(beamOf(at), {
      piece: 'block',
      name: 'mantel block',
      quantity,
      length,
      width: height,
      thickness: thick,
      section: { width: height, thickness: thick },
      details: [
        `Glued and screwed behind the frieze; they meet the ledger. Middle of the first ${show.withUnit(cut.near(first))} from the ledger’s end, then every ${show.withUnit(cut.near(times(first, 2)))}.`,
      ],
      placement: {
        ...rail,
        x: sum(rail.x, less(first, over(thick, 2))),
        y: sum(rail.y, thick),
        dx: thick,
        dy: length,
      },
      from: { length: blockLength, width: ledgerHeight },
    }),
  ]
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
