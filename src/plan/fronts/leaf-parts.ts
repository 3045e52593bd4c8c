import type { LeafPiece } from '../../kinds/front/contract.ts'
import type { Part } from '../../things/part.ts'
import { type Length, less, sum } from '../../units/length.ts'
import type { PlanContext } from '../context.ts'
import { madePart } from '../made-part.ts'
import { mdf } from '../materials.ts'
import type { Leaf } from './fronts.ts'
import type { LeafMake } from './leaves.ts'

/** The pieces of one leaf as parts; they share the leaf's mark. Both faces and all edges are coated alike, or it warps. */
export function leafParts(context: PlanContext, make: LeafMake, leaf: Leaf): readonly Part[] {
  const { width, height, thickness } = leaf
  const pieces = make.kind.pieces({ width, height, thickness, frame: make.frame, figures: context.figures })
  return pieces.map((piece) => leafPart(context, make, leaf, piece))
}

function leafPart(context: PlanContext, make: LeafMake, leaf: Leaf, piece: LeafPiece): Part {
  const { show } = context
  const { run, number } = leaf.box
  const upright = piece.lies === 'upright'
  const front = sum(leaf.box.backGap, leaf.box.depth, context.figures.length('door.bumper'))
  return madePart({
    id: piece.id === 'blank' ? leaf.id : `${leaf.id}/${piece.id}`,
    mark: leaf.mark,
    ...(piece.piece === undefined ? {} : { piece: piece.piece }),
    name: piece.piece === undefined ? 'door' : `door ${piece.piece}`,
    bay: run.bay.id,
    goesTo: `${run.bay.name}, box ${number}, hinged ${leaf.hingeSide}`,
    length: piece.length,
    width: piece.width,
    thickness: piece.thickness,
    roughLength: piece.roughLength,
    leaveLong: piece.leftLong > 0 ? `${show.withUnit(piece.leftLong)} in length, trimmed after glue-up` : '',
    material: mdf(piece.thickness),
    shows: 'both faces, all edges',
    details: [
      ...piece.details.map((d) => (d.length === undefined ? d.says : `${d.says} ${show.withUnit(d.length)}`)),
      ...drilling(context, make, leaf, piece),
    ],
    coat: { surface: 'built-in', faces: 2 },
    placement: {
      x: sum(run.wall.originX, leaf.x, piece.at.x),
      y: sum(front, piece.at.y),
      z: sum(leaf.z, piece.at.z),
      dx: upright ? piece.width : piece.length,
      dy: piece.thickness,
      dz: upright ? piece.length : piece.width,
    },
    waitsFor: leaf.waitsFor,
  })
}

function drilling(context: PlanContext, make: LeafMake, leaf: Leaf, piece: LeafPiece): readonly string[] {
  const { show } = context
  const handleSide = leaf.hingeSide === 'left' ? 'right' : 'left'
  const carries = (side: 'left' | 'right') => piece.carries === 'whole' || piece.carries === `${side} edge`
  const row = (lengths: readonly Length[]) => lengths.map((l) => show.length(l)).join(', ')
  const { diameter, fromEdge, depth } = make.cup
  const overlay = overlayOf(make, leaf)
  return [
    ...(carries(leaf.hingeSide)
      ? [
          `hinge cups ${show.withUnit(diameter)} wide, ${show.withUnit(depth)} deep, at ${row(leaf.cups)} from the lower end, centre ${show.withUnit(fromEdge)} from the ${leaf.hingeSide} edge: check against the hinge’s sheet`,
          `hinges for an overlay of ${show.withUnit(overlay)}`,
        ]
      : []),
    ...(carries(handleSide)
      ? leaf.handleHoles.map(
          (hole) =>
            `handle hole ${show.withUnit(hole.fromTop)} from the top, ${show.withUnit(hole.fromHandleEdge)} from the ${handleSide} edge`,
        )
      : []),
  ]
}

/** How far the leaf covers the box side it hangs on: what hinges are ordered for. */
const overlayOf = (make: LeafMake, leaf: Leaf): Length => {
  const { box, hingeSide } = leaf
  const margin = hingeSide === 'left' ? less(leaf.x, box.x) : less(sum(box.x, box.width), sum(leaf.x, leaf.width))
  return less(make.carcass, margin)
}
